/** The ellipse, or with few points the circle, that lies nearest to points. */
import { backSolved, forwardSolved, lowerFactor } from '../numeric/lower-factor.ts';
import { fail, succeed, type Result } from '../numeric/result.ts';
import { distance, type Point } from './point.ts';

/** Its radius toward an angle t is `size / √(1 + a·cos 2t + b·sin 2t)`; a circle has a and b of zero. */
export interface Ellipse {
  readonly centre: Point;
  readonly size: number;
  readonly a: number;
  readonly b: number;
}

/** `tooFew`: less than three different points; `collinear`: points that lie on a line; `noEllipse`: points that no ellipse passes. */
export type NoEllipse = 'tooFew' | 'collinear' | 'noEllipse';

/** From so many points on the ellipse is free; fewer make a circle. */
export const FREE_ELLIPSE = 5;
/** Points nearer than this part of their spread are one point. */
const SAME = 0.01;
/** Points whose spread across is below this part of that along lie on a line. */
const FLAT = 0.02;

/** The radius toward an angle, counter-clockwise from x in the frame of its points. */
export function radiusToward({ size, a, b }: Ellipse, angle: number): number {
  return size / Math.sqrt(1 + a * Math.cos(2 * angle) + b * Math.sin(2 * angle));
}

/** Shortest over longest radius, 1 for a circle. */
export function roundness({ a, b }: Ellipse): number {
  const out = Math.hypot(a, b);
  return Math.sqrt((1 - out) / (1 + out));
}

/**
 * Least squares of a quadratic in the points' own scale; with three or four points of a circle. Any frame and unit.
 * Source: the conic with its two square terms' sum held at one, which fits near circles without bias.
 */
export function fitEllipse(points: readonly Point[]): Result<Ellipse, NoEllipse> {
  const middle = {
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  };
  const scale = Math.sqrt(points.reduce((sum, p) => sum + distance(p, middle) ** 2, 0) / points.length);
  const different = points.filter(
    (p, i) => !points.slice(0, i).some((before) => distance(p, before) <= SAME * scale),
  );
  if (different.length < 3 || !(scale > 0)) return fail('tooFew');
  const near = points.map((p) => ({ x: (p.x - middle.x) / scale, y: (p.y - middle.y) / scale }));
  if (isFlat(near)) return fail('collinear');
  const free = different.length >= FREE_ELLIPSE;
  const columns = near.map(({ x, y }) => (free ? [x, y, 1, x * x - y * y, 2 * x * y] : [x, y, 1]));
  const matrix = columns[0].map((_, i) =>
    columns[0].map((_, j) => columns.reduce((s, c) => s + c[i] * c[j], 0)),
  );
  const right = columns[0].map((_, i) =>
    columns.reduce((sum, column, k) => sum - column[i] * (near[k].x ** 2 + near[k].y ** 2), 0),
  );
  const factor = lowerFactor(matrix);
  if (factor === null) return fail('noEllipse');
  const [d, e, f, a = 0, b = 0] = backSolved(factor, forwardSolved(factor, right));
  const round = 1 - a * a - b * b;
  if (!(round > 0)) return fail('noEllipse');
  const x = (-d * (1 - a) + e * b) / (2 * round);
  const y = (-e * (1 + a) + d * b) / (2 * round);
  const square = -(f + (d * x + e * y) / 2);
  if (!(square > 0)) return fail('noEllipse');
  const centre = { x: middle.x + scale * x, y: middle.y + scale * y };
  return succeed({ centre, size: scale * Math.sqrt(square), a, b });
}

/** Whether points about their middle lie on a line. */
function isFlat(points: readonly Point[]): boolean {
  let [xx, yy, xy] = [0, 0, 0];
  for (const { x, y } of points) {
    xx += x * x;
    yy += y * y;
    xy += x * y;
  }
  const out = Math.hypot((xx - yy) / 2, xy);
  const half = (xx + yy) / 2;
  return half - out < FLAT ** 2 * (half + out);
}
