/** The side view on the screen: all layers of the scene on one canvas, because every further one is blended anew each frame. */
import type { PlotLayer } from '../../scene/plot/plotter.ts';
import type { Scene } from '../../scene/shapes/shape.ts';
import type { Theme } from '../../scene/shapes/theme.ts';
import type { View } from '../../scene/shapes/view.ts';
import { drawingList, type Drawn } from '../canvas/drawing-list.ts';
import type { CanvasSize } from '../canvas/paint-list.ts';
import { startPainting, type PaintingThread } from '../canvas/painting-thread.ts';
import { watchPixelRatio } from '../canvas/watch-pixel-ratio.ts';
import type { KonvaCanvas } from './konva-canvas.ts';

export interface SideViewCanvas {
  /** Takes the window's size; the next `draw` fills it. */
  resize(widthPx: number, heightPx: number): void;
  /** Draws at once, or as soon as the drawing before is painted; of several that wait, the last. */
  draw(scene: Scene, view: View, theme: Theme): void;
  destroy(): void;
}

/**
 * `plotLayer` is the scene's; a renderer itself knows lines and words only. A thread paints; Konva is fetched and paints
 * where the browser lends no canvas to a thread.
 */
export function createSideViewCanvas(container: HTMLDivElement, plotLayer: PlotLayer): SideViewCanvas {
  let widthPx = 0;
  let heightPx = 0;
  let drawn: Drawn | null = null;
  let thread: PaintingThread | null = startPainting(container, () => {
    thread = null;
    paint();
  });
  /** What paints on the page where no thread does. */
  let onPage: KonvaCanvas | null = null;
  let fetching = false;
  let destroyed = false;
  const unwatch = watchPixelRatio(paint);

  function sizeNow(): CanvasSize {
    return { widthPx, heightPx, pixelRatio: window.devicePixelRatio };
  }

  function paint(): void {
    if (drawn === null) return;
    if (thread !== null) thread.paint(drawingList(drawn, plotLayer), drawn.theme.background, sizeNow());
    else if (onPage !== null) onPage.draw(drawn, sizeNow());
    else void paintOnPage();
  }

  async function paintOnPage(): Promise<void> {
    if (fetching) return;
    fetching = true;
    const konva = await fetchKonva();
    fetching = false;
    // Where it could not be fetched, the next drawing tries again.
    if (konva === null || destroyed) return;
    onPage = konva.konvaCanvas(container, plotLayer);
    paint();
  }

  return {
    resize(width, height) {
      widthPx = width;
      heightPx = height;
    },

    draw(scene, view, theme) {
      drawn = { scene, view, theme };
      paint();
    },

    destroy() {
      destroyed = true;
      unwatch();
      thread?.end();
      onPage?.destroy();
      drawn = null;
    },
  };
}

/** Null without a network; asked again, the browser tries again. */
async function fetchKonva(): Promise<typeof import('./konva-canvas.ts') | null> {
  try {
    return await import('./konva-canvas.ts');
  } catch {
    return null;
  }
}
