/** Laying a layer of the scene on the screen by means of a plotter, so that canvas, SVG and print never disagree. */
import { plotLabel } from './plot-label.ts';
import { plotMark } from './plot-mark.ts';
import { plotPath } from './plot-path.ts';
import type { PlotLayer } from './plotter.ts';

/** Plots the shapes from back to front. The layer's `ink` is left to the renderer, which dims the layer as a whole. */
export const plotLayer: PlotLayer = ({ shapes }, view, theme, plotter) => {
  for (const shape of shapes) {
    switch (shape.kind) {
      case 'path':
        plotPath(shape, theme.roles[shape.role], view, plotter);
        break;
      case 'mark':
        plotMark(shape, theme, view, plotter);
        break;
      case 'label':
        plotLabel(shape, theme, view, plotter);
        break;
    }
  }
};
