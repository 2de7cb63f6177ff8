/** The side view on the screen: all layers of the scene on one canvas, because every further one is blended anew each frame. */
import { Konva } from 'konva/lib/Core.js';
import { Shape } from 'konva/lib/Shape.js';
import type { PlotLayer } from '../../scene/plotter.ts';
import type { Scene } from '../../scene/shape.ts';
import type { Theme } from '../../scene/theme.ts';
import type { View } from '../../scene/view.ts';
import { drawingList, type Drawn } from '../canvas/drawing-list.ts';
import { paintList, type CanvasSize, type MakeCanvas } from '../canvas/paint-list.ts';
import { startPainting, type PaintingThread } from '../canvas/painting-thread.ts';
import { watchPixelRatio } from '../canvas/watch-pixel-ratio.ts';

export interface SideViewCanvas {
  /** Takes the window's size and the screen's present pixel ratio; the next `draw` fills it. */
  resize(widthPx: number, heightPx: number): void;
  /** Draws at once, or as soon as the drawing before is painted; of several that wait, the last. */
  draw(scene: Scene, view: View, theme: Theme): void;
  /** What was drawn last, on the theme's background, `pixelRatio` pixels of the picture to each px. */
  picture(pixelRatio: number): HTMLCanvasElement;
  destroy(): void;
}

/**
 * `plotLayer` is the scene's; a renderer itself knows lines and words only. Konva paints the first sight, what is saved
 * as a picture, and everything where the browser lends no canvas to another thread; elsewhere that thread goes on.
 */
export function createSideViewCanvas(container: HTMLDivElement, plotLayer: PlotLayer): SideViewCanvas {
  // The caller draws within its own animation frame; Konva must not add one.
  Konva.autoDrawEnabled = false;
  const stage = new Konva.Stage({ container, width: 0, height: 0, listening: false });
  const layer = new Konva.Layer({ listening: false, clearBeforeDraw: false });
  let drawn: Drawn | null = null;
  let thread: PaintingThread | null = null;
  let starting: number | null = null;
  /** Whether what the thread has painted is in sight instead of what Konva has. */
  let handedOver = false;

  layer.add(
    new Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => {
        if (drawn === null) return;
        const size = sizeNow(context.getCanvas().getPixelRatio());
        paintList(drawingList(drawn, plotLayer), drawn.theme.background, context, size, emptyCanvas);
      },
    }),
  );
  stage.add(layer);
  layer.getNativeCanvasElement().addEventListener('contextrestored', drawAnew);
  const unwatch = watchPixelRatio(drawAnew);

  /** For the size and the pixels that the screen has now. */
  function takePixels(): void {
    layer.getCanvas().setPixelRatio(window.devicePixelRatio);
  }

  /** A canvas with other pixels, or one that the system took away for a while, is empty. */
  function drawAnew(): void {
    takePixels();
    if (!handedOver) layer.drawScene();
    paintByThread();
  }

  function sizeNow(pixelRatio: number): CanvasSize {
    return { widthPx: stage.width(), heightPx: stage.height(), pixelRatio };
  }

  function handOver(over: boolean): void {
    handedOver = over;
    layer.getNativeCanvasElement().style.display = over ? 'none' : 'block';
  }

  function start(): void {
    thread = startPainting(container, {
      onshown: () => handOver(true),
      onended: () => {
        thread = null;
        handOver(false);
        layer.drawScene();
      },
    });
    paintByThread();
  }

  function paintByThread(): void {
    if (drawn === null || thread === null) return;
    const size = sizeNow(window.devicePixelRatio);
    thread.paint(drawingList(drawn, plotLayer), drawn.theme.background, size);
  }

  return {
    resize(widthPx, heightPx) {
      stage.size({ width: widthPx, height: heightPx });
      takePixels();
    },

    draw(scene, view, theme) {
      drawn = { scene, view, theme };
      if (!handedOver) layer.drawScene();
      paintByThread();
      // The thread is no part of the first sight, so it starts once that is drawn.
      starting ??= window.setTimeout(start);
    },

    picture(pixelRatio) {
      return layer.toCanvas({ x: 0, y: 0, width: stage.width(), height: stage.height(), pixelRatio });
    },

    destroy() {
      if (starting !== null) window.clearTimeout(starting);
      unwatch();
      thread?.end();
      stage.destroy();
      drawn = null;
    },
  };
}

const emptyCanvas: MakeCanvas = ({ widthPx, heightPx, pixelRatio }) => {
  const canvas = document.createElement('canvas');
  canvas.width = Math.trunc(widthPx * pixelRatio);
  canvas.height = Math.trunc(heightPx * pixelRatio);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('this browser has no 2D canvas');
  context.scale(pixelRatio, pixelRatio);
  return { canvas, context };
};
