/** Curves and areas within the field of a chart. */
import type { Point } from '../core/plane/point.ts';
import type { Role, Shape } from '../scene/shapes/shape.ts';
import type { ChartField } from './chart-field.ts';
import { chartLine, chartMark, stepsAlong } from './chart-line.ts';

/** Places along an edge of an area, which bends little. */
const EDGE_PLACES = 25;

/** An edge of an area: its height in the upright axis' unit at a place of the other. */
export type Edge = (x: number) => number;

/** A curve through places with a number each; it breaks where there is none, and a place alone is a dot. */
export function chartCurve(
  role: Role,
  field: ChartField,
  xs: readonly number[],
  ys: readonly unknown[],
): Shape[] {
  const stretches: Point[][] = [];
  let open = false;
  for (const [i, x] of xs.entries()) {
    const y = ys[i];
    if (typeof y !== 'number') {
      open = false;
      continue;
    }
    if (!open) stretches.push([]);
    open = true;
    stretches[stretches.length - 1].push(field.place(x, y));
  }
  return stretches.map((stretch) =>
    stretch.length === 1 ? chartMark(role, 'dot', stretch[0]) : chartLine(role, stretch),
  );
}

/** The area between two edges along the axis, kept within the field; nothing where the upper is nowhere above. */
export function chartArea(
  role: Role,
  field: ChartField,
  { from, to }: { readonly from: number; readonly to: number },
  lower: Edge,
  upper: Edge,
): Shape[] {
  const { xAxis, yAxis, at } = field;
  const within = (y: number): number => Math.min(yAxis.most, Math.max(yAxis.least, y));
  const places = Array.from({ length: EDGE_PLACES }, (_, i) => {
    const x = from + ((to - from) * i) / (EDGE_PLACES - 1);
    return { px: xAxis.px(x), low: within(lower(x)), high: within(upper(x)) };
  });
  if (!places.some(({ low, high }) => high > low)) return [];
  const above = places.map(({ px, high }) => at(px, yAxis.px(high)));
  const below = places.map(({ px, low }) => at(px, yAxis.px(low))).reverse();
  return [{ kind: 'path', role, steps: [...stepsAlong([...above, ...below]), { op: 'close' }] }];
}
