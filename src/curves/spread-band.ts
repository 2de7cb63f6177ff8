/** The band about the present curve in which the true one lies in 95 of 100, as an area of the chart. */
import type { Curve } from '../core/effects/sweep.ts';
import type { Point } from '../core/plane/point.ts';
import type { Shape } from '../scene/shapes/shape.ts';
import { BAND_REACH } from '../words/measure/spread-words.ts';
import type { ChartField } from './chart-field.ts';
import { stepsAlong } from './chart-line.ts';

/** Standard deviations of the present curve at places along the axis, metric; null where it is not fixed. */
export interface SpreadBand {
  readonly x: readonly number[];
  readonly u: readonly (number | null)[];
}

/** Lower and upper edge at a place of the axis. */
interface Edges {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** The edges at each place of the curve that has a number and a ±, in stretches without a gap. */
export function bandEdges(
  { x: xs, y: ys }: Pick<Curve, 'x' | 'y'>,
  band: SpreadBand,
): readonly (readonly Edges[])[] {
  const stretches: Edges[][] = [[]];
  for (const [i, x] of xs.entries()) {
    const y = ys[i];
    const u = deviationAt(band, x);
    if (typeof y === 'number' && u !== null)
      stretches[stretches.length - 1].push({ x, low: y - BAND_REACH * u, high: y + BAND_REACH * u });
    else if (stretches[stretches.length - 1].length > 0) stretches.push([]);
  }
  return stretches.filter((stretch) => stretch.length > 1);
}

/** One standard deviation at a place of the axis: between two places in proportion; null beside one that is not fixed, and beyond the ends. */
export function deviationAt({ x: xs, u: us }: SpreadBand, x: number): number | null {
  const after = xs.findIndex((each) => each >= x);
  if (after < 0) return null;
  if (xs[after] === x) return us[after];
  if (after === 0) return null;
  const [a, b] = [us[after - 1], us[after]];
  if (a === null || b === null) return null;
  return a + ((b - a) * (x - xs[after - 1])) / (xs[after] - xs[after - 1]);
}

/** The band as areas, kept within the field. */
export function bandShapes(
  { xAxis, yAxis, at }: ChartField,
  curve: Pick<Curve, 'x' | 'y'>,
  band: SpreadBand,
): Shape[] {
  const px = (x: number, y: number): Point =>
    at(xAxis.px(x), yAxis.px(Math.min(yAxis.most, Math.max(yAxis.least, y))));
  return bandEdges(curve, band).map((stretch) => ({
    kind: 'path',
    role: 'curveBand',
    steps: [
      ...stepsAlong([
        ...stretch.map(({ x, high }) => px(x, high)),
        ...stretch.map(({ x, low }) => px(x, low)).reverse(),
      ]),
      { op: 'close' },
    ],
  }));
}
