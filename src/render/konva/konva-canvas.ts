/** A canvas that Konva paints: on the page where no thread can, and off the page for a picture to save. */
import { Konva } from 'konva/lib/Core.js';
import { Shape } from 'konva/lib/Shape.js';
import type { PlotLayer } from '../../scene/plot/plotter.ts';
import { drawingList, type Drawn } from '../canvas/drawing-list.ts';
import { paintList, type CanvasSize, type MakeCanvas } from '../canvas/paint-list.ts';

export interface KonvaCanvas {
  /** Draws at once, for the caller does so within its own animation frame. */
  draw(drawn: Drawn, size: CanvasSize): void;
  /** What was drawn last, `pixelRatio` pixels of the picture to each px. */
  picture(pixelRatio: number): HTMLCanvasElement;
  destroy(): void;
}

/** `plotLayer` is the scene's; a renderer itself knows lines and words only. */
export function konvaCanvas(container: HTMLDivElement, plotLayer: PlotLayer): KonvaCanvas {
  // The caller draws within its own animation frame; Konva must not add one.
  Konva.autoDrawEnabled = false;
  const stage = new Konva.Stage({ container, width: 0, height: 0, listening: false });
  const layer = new Konva.Layer({ listening: false, clearBeforeDraw: false });
  let shown: { readonly drawn: Drawn; readonly size: CanvasSize } | null = null;

  layer.add(
    new Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => {
        if (shown === null) return;
        const { drawn, size } = shown;
        const pixelRatio = context.getCanvas().getPixelRatio();
        paintList(
          drawingList(drawn, plotLayer),
          drawn.theme.background,
          context,
          { ...size, pixelRatio },
          emptyCanvas,
        );
      },
    }),
  );
  stage.add(layer);
  layer.getNativeCanvasElement().addEventListener('contextrestored', () => {
    // What the system took away for a while comes back empty and without its scale.
    layer.getCanvas().setPixelRatio(window.devicePixelRatio);
    layer.drawScene();
  });

  return {
    draw(drawn, size) {
      const { widthPx: width, heightPx: height, pixelRatio } = size;
      // A canvas that is given a size is emptied, even by the one it has.
      if (stage.width() !== width || stage.height() !== height) stage.size({ width, height });
      if (layer.getCanvas().getPixelRatio() !== pixelRatio) layer.getCanvas().setPixelRatio(pixelRatio);
      shown = { drawn, size };
      layer.drawScene();
    },

    picture(pixelRatio) {
      return layer.toCanvas({ x: 0, y: 0, width: stage.width(), height: stage.height(), pixelRatio });
    },

    destroy() {
      stage.destroy();
      shown = null;
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
