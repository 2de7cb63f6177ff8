/** Laying a sign on the screen, where it keeps its size at every scale. */
import { solid } from './plot-path.ts';
import type { Paint, Plotter } from './plotter.ts';
import type { MarkShape } from '../shapes/shape.ts';
import type { Theme } from '../shapes/theme.ts';
import { toScreen, type View } from '../shapes/view.ts';

/** A corner of an even triangle that stands on its base: how far to the side of its middle it lies, as a part of the radius. */
const CORNER = Math.sqrt(3) / 2;

/** A sign hides the lines under it, except a cross, which has no inside. */
export function plotMark(
  { role, at, sign, radiusPx: r }: MarkShape,
  theme: Theme,
  view: View,
  plotter: Plotter,
): void {
  const { stroke, fill, widthPx } = theme.roles[role];
  const { x, y } = toScreen(view, at);
  const ink = stroke ?? fill ?? theme.labelInk;
  const edged: Paint = {
    fill: fill ?? theme.background,
    fillRule: 'nonZero',
    stroke: ink,
    // Signs of broad lines would be blots.
    widthPx: Math.min(widthPx, r / 3),
    dashPx: [],
    ends: 'round',
  };
  plotter.begin();
  switch (sign) {
    case 'dot':
      circle(plotter, x, y, r);
      plotter.paint(solid(ink));
      break;
    case 'ring':
      circle(plotter, x, y, r);
      plotter.paint(edged);
      break;
    case 'cross':
      plotter.move(x - r, y);
      plotter.line(x + r, y);
      plotter.move(x, y - r);
      plotter.line(x, y + r);
      plotter.paint({ ...edged, fill: null });
      break;
    case 'diamond':
      outline(plotter, [x, y - r, x + r, y, x, y + r, x - r, y]);
      plotter.paint(edged);
      break;
    case 'square': {
      const half = r * Math.SQRT1_2;
      outline(plotter, [x - half, y - half, x + half, y - half, x + half, y + half, x - half, y + half]);
      plotter.paint(edged);
      break;
    }
    case 'triangle':
    case 'wedge': {
      const down = sign === 'triangle' ? r : -r;
      outline(plotter, [x, y - down, x + CORNER * r, y + down / 2, x - CORNER * r, y + down / 2]);
      plotter.paint(edged);
      break;
    }
    case 'quartered':
      circle(plotter, x, y, r);
      plotter.paint(edged);
      plotter.begin();
      for (const from of [-Math.PI / 2, Math.PI / 2]) {
        plotter.move(x, y);
        plotter.arc(x, y, r, from, from + Math.PI / 2);
        plotter.close();
      }
      plotter.paint(solid(ink));
      break;
  }
}

function circle(plotter: Plotter, x: number, y: number, r: number): void {
  plotter.move(x + r, y);
  plotter.arc(x, y, r, 0, 2 * Math.PI);
  plotter.close();
}

/** A closed outline through places given as x, y, x, y, …, px. */
function outline(plotter: Plotter, [x, y, ...rest]: readonly number[]): void {
  plotter.move(x, y);
  for (let i = 0; i < rest.length; i += 2) plotter.line(rest[i], rest[i + 1]);
  plotter.close();
}
