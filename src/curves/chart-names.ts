/** Names of the curves beside where their bikes stand, kept apart from one another, from the signs and within the field. */
import { placeLabels, type Box, type WantedLabel } from '../scene/shapes/label-placing.ts';
import type { LabelShape, MarkShape } from '../scene/shapes/shape.ts';
import type { ChartField } from './chart-field.ts';

/** The largest sign's radius, px. */
export const NOW_RADIUS = 6;

export function chartNames(
  field: ChartField,
  wanted: readonly WantedLabel[],
  signs: readonly MarkShape[],
  widthPx: number,
  heightPx: number,
): LabelShape[] {
  const { leftPx, topPx, bottomPx, view } = field;
  const around: Box[] = [
    { left: 0, top: 0, right: widthPx, bottom: topPx - 2 },
    { left: 0, top: bottomPx, right: widthPx, bottom: heightPx },
    { left: 0, top: 0, right: leftPx, bottom: heightPx },
    ...signs.map(({ at: { x, y } }) => boxAround(x, heightPx - y, NOW_RADIUS)),
  ];
  return placeLabels(wanted, view, widthPx, heightPx, around);
}

function boxAround(xPx: number, yPx: number, halfPx: number): Box {
  return { left: xPx - halfPx, top: yPx - halfPx, right: xPx + halfPx, bottom: yPx + halfPx };
}
