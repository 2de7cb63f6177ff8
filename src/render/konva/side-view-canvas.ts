/** The side view on the screen: all layers of the scene on one canvas, because every further one is blended anew each frame. */
import { Konva } from 'konva/lib/Core.js';
import { Shape } from 'konva/lib/Shape.js';
import type { PlotLayer } from '../../scene/plotter.ts';
import type { Scene } from '../../scene/shape.ts';
import type { Theme } from '../../scene/theme.ts';
import type { View } from '../../scene/view.ts';
import { CanvasPlotter } from './canvas-plotter.ts';

export interface SideViewCanvas {
  /** Takes the window's size and the screen's present pixel ratio; the next `draw` fills it. */
  resize(widthPx: number, heightPx: number): void;
  /** Draws at once. */
  draw(scene: Scene, view: View, theme: Theme): void;
  /** What was drawn last, on the theme's background, `pixelRatio` pixels of the picture to each px. */
  picture(pixelRatio: number): HTMLCanvasElement;
  destroy(): void;
}

/** What the canvas shows. */
interface Drawn {
  readonly scene: Scene;
  readonly view: View;
  readonly theme: Theme;
}

/** A size in px of the screen, with the pixels to each. */
interface PictureSize {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pixelRatio: number;
}

/** `plotLayer` is the scene's; a renderer itself knows lines and words only. */
export function createSideViewCanvas(container: HTMLDivElement, plotLayer: PlotLayer): SideViewCanvas {
  // The caller draws within its own animation frame; Konva must not add one.
  Konva.autoDrawEnabled = false;
  const stage = new Konva.Stage({ container, width: 0, height: 0, listening: false });
  const canvas = new Konva.Layer({ listening: false, clearBeforeDraw: false });
  let drawn: Drawn | null = null;

  const size = (pixelRatio: number): PictureSize => ({
    widthPx: stage.width(),
    heightPx: stage.height(),
    pixelRatio,
  });

  const paint = (context: CanvasRenderingContext2D, { scene, view, theme }: Drawn, of: PictureSize): void => {
    context.fillStyle = theme.background;
    context.fillRect(0, 0, of.widthPx, of.heightPx);
    for (const layer of scene) {
      if (layer.shapes.length === 0) continue;
      if (layer.ink === 1) {
        plotLayer(layer, view, theme, new CanvasPlotter(context));
        continue;
      }
      // A dimmed layer is dimmed as a whole, so that nothing shines through from behind it within the layer.
      const own = emptyPicture(of);
      plotLayer(layer, view, theme, new CanvasPlotter(own.context));
      context.globalAlpha = layer.ink;
      context.drawImage(own.canvas, 0, 0, of.widthPx, of.heightPx);
      context.globalAlpha = 1;
    }
  };

  canvas.add(
    new Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => {
        if (drawn !== null) paint(context._context, drawn, size(window.devicePixelRatio));
      },
    }),
  );
  stage.add(canvas);

  return {
    resize(widthPx, heightPx) {
      stage.size({ width: widthPx, height: heightPx });
      canvas.getCanvas().setPixelRatio(window.devicePixelRatio);
    },

    draw(scene, view, theme) {
      drawn = { scene, view, theme };
      canvas.drawScene();
    },

    picture(pixelRatio) {
      const picture = emptyPicture(size(pixelRatio));
      if (drawn !== null) paint(picture.context, drawn, size(pixelRatio));
      return picture.canvas;
    },

    destroy() {
      stage.destroy();
      drawn = null;
    },
  };
}

function emptyPicture({ widthPx, heightPx, pixelRatio }: PictureSize): {
  canvas: HTMLCanvasElement;
  context: CanvasRenderingContext2D;
} {
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(widthPx * pixelRatio);
  canvas.height = Math.round(heightPx * pixelRatio);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('this browser has no 2D canvas');
  context.scale(pixelRatio, pixelRatio);
  return { canvas, context };
}
