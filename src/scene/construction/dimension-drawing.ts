/** A dimension read between any two places: how far apart, how far along and how far up. */
import { distance, type Point } from '../../core/plane/point.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import type { WantedLabel } from '../shapes/label-placing.ts';
import { segment } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

export function dimensionShapes(from: Point, to: Point): Shape[] {
  const corner = { x: to.x, y: from.y };
  return [
    segment('snapGuide', from, corner),
    segment('snapGuide', corner, to),
    segment('dimension', from, to, { arrows: 'both' }),
  ];
}

/** The distance alone, which finds room on any drawing; the line below the side view has the rest. */
export function dimensionLabel(
  from: Point,
  to: Point,
  { style, sizePx }: { style: NumberStyle; sizePx: number },
): WantedLabel {
  return {
    role: 'dimension',
    text: writeNumber(distance(from, to), 'length', style).text,
    at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    spot: 'above',
    sizePx,
  };
}
