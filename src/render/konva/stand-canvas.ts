/** The Stand on the screen: one canvas for each layer of the scene, drawn again only where something changed. */
import { Konva } from 'konva/lib/Core.js';
import { Shape } from 'konva/lib/Shape.js';
import type { PlotLayer } from '../../scene/plotter.ts';
import type { LayerName, Scene, SceneLayer } from '../../scene/shape.ts';
import type { Theme } from '../../scene/theme.ts';
import type { View } from '../../scene/view.ts';
import { CanvasPlotter } from './canvas-plotter.ts';

export interface StandCanvas {
  /** Takes the window's size and the screen's present pixel ratio; the next `draw` draws everything. */
  resize(widthPx: number, heightPx: number): void;
  /** Draws at once the layers that are not the same objects as last time; all when view or theme is another. */
  draw(scene: Scene, view: View, theme: Theme): void;
  /** What was drawn last, on the theme's background, `pixelRatio` pixels of the picture to each px. */
  picture(pixelRatio: number): HTMLCanvasElement;
  destroy(): void;
}

/** What a layer's canvas shows. */
interface Drawn {
  readonly layer: SceneLayer;
  readonly view: View;
  readonly theme: Theme;
}

/** `plotLayer` is the scene's; a renderer itself knows lines and words only. */
export function createStandCanvas(container: HTMLDivElement, plotLayer: PlotLayer): StandCanvas {
  // The caller draws within its own animation frame; Konva must not add one.
  Konva.autoDrawEnabled = false;
  const stage = new Konva.Stage({ container, width: 0, height: 0, listening: false });
  const drawn = new Map<LayerName, Drawn>();
  const canvases = new Map<LayerName, InstanceType<typeof Konva.Layer>>();

  const canvasOf = (name: LayerName): InstanceType<typeof Konva.Layer> => {
    const known = canvases.get(name);
    if (known !== undefined) return known;
    const layer = new Konva.Layer({ listening: false });
    layer.add(
      new Shape({
        listening: false,
        perfectDrawEnabled: false,
        sceneFunc: (context) => {
          const what = drawn.get(name);
          if (what === undefined) return;
          plotLayer(what.layer, what.view, what.theme, new CanvasPlotter(context._context));
        },
      }),
    );
    stage.add(layer);
    canvases.set(name, layer);
    return layer;
  };

  return {
    resize(widthPx, heightPx) {
      stage.size({ width: widthPx, height: heightPx });
      for (const layer of canvases.values()) layer.getCanvas().setPixelRatio(window.devicePixelRatio);
      drawn.clear();
    },

    draw(scene, view, theme) {
      container.style.backgroundColor = theme.background;
      for (const layer of scene) {
        const before = drawn.get(layer.name);
        if (before?.layer === layer && before.view === view && before.theme === theme) continue;
        const wasEmpty = before === undefined || before.layer.shapes.length === 0;
        const canvas = canvasOf(layer.name);
        drawn.set(layer.name, { layer, view, theme });
        if (before?.layer.ink !== layer.ink)
          canvas.getNativeCanvasElement().style.opacity = String(layer.ink);
        if (wasEmpty && before !== undefined && layer.shapes.length === 0) continue;
        canvas.drawScene();
      }
    },

    picture(pixelRatio) {
      const size = { widthPx: stage.width(), heightPx: stage.height(), pixelRatio };
      const { canvas, context } = emptyPicture(size);
      const scene = [...drawn.values()];
      if (scene.length > 0) {
        context.fillStyle = scene[0].theme.background;
        context.fillRect(0, 0, size.widthPx, size.heightPx);
      }
      for (const { layer, view, theme } of scene) {
        // A layer is dimmed as a whole, so that nothing shines through from behind it within the layer.
        const own = emptyPicture(size);
        plotLayer(layer, view, theme, new CanvasPlotter(own.context));
        context.globalAlpha = layer.ink;
        context.drawImage(own.canvas, 0, 0, size.widthPx, size.heightPx);
      }
      return canvas;
    },

    destroy() {
      stage.destroy();
      drawn.clear();
      canvases.clear();
    },
  };
}

interface PictureSize {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pixelRatio: number;
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
