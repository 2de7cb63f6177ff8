/** A dimension read between any two places: how far apart, how far along and how far up. */
import type { Point } from '../core/plane/point.ts';
import { distance } from '../core/plane/point.ts';
import { degrees } from '../core/units/convert.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';
import type { WantedLabel } from './label-placing.ts';
import { segment } from './outline.ts';
import type { Shape } from './shape.ts';

export function dimensionShapes(from: Point, to: Point): Shape[] {
  const corner = { x: to.x, y: from.y };
  return [
    segment('snapGuide', from, corner),
    segment('snapGuide', corner, to),
    segment('dimension', from, to, { arrows: 'both' }),
  ];
}

/** The dimension in words: straight distance, along, up, and the slope toward the front. */
export function dimensionWords(from: Point, to: Point, style: NumberStyle): string {
  const length = (value: number) => writeNumber(value, 'length', style).text;
  const along = Math.abs(to.x - from.x);
  const up = (to.y - from.y) * (to.x >= from.x ? 1 : -1);
  const slope = writeNumber(degrees(Math.atan2(up, along)), 'angle', style).text;
  return `${length(distance(from, to))} (along ${length(along)}, up ${length(Math.abs(up))}, slope ${slope})`;
}

export function dimensionLabel(
  from: Point,
  to: Point,
  { style, sizePx }: { style: NumberStyle; sizePx: number },
): WantedLabel {
  return {
    role: 'dimension',
    text: dimensionWords(from, to, style),
    at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    spot: 'above',
    sizePx,
  };
}
