/** A taut chain by hulls: circles of many points, the least convex line below them, and wraps by turns of its ends. */
import type { ChainLoop } from '../../src/core/drive/chain-loop.ts';
import type { Circle } from '../../src/core/plane/circle.ts';
import type { Point } from '../../src/core/plane/point.ts';

/** Points on a circle: what a hull cuts off between two of them is below 1e-6 mm on sprockets. */
const POINTS = 20_000;

function around({ centre, radius }: Circle): Point[] {
  if (radius === 0) return [centre];
  return Array.from({ length: POINTS }, (_, i) => {
    const angle = (2 * Math.PI * i) / POINTS;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}

/** The convex line that passes below all points (1), or above them (−1), from left to right. */
function hull(points: readonly Point[], side: 1 | -1): Point[] {
  const line: Point[] = [];
  for (const p of [...points].sort((a, b) => a.x - b.x || side * (a.y - b.y))) {
    for (;;) {
      const [a, b] = line.slice(-2);
      if (b === undefined || side * ((b.x - a.x) * (p.y - b.y) - (b.y - a.y) * (p.x - b.x)) > 0) break;
      line.pop();
    }
    line.push(p);
  }
  return line;
}

const on = (p: Point, { centre, radius }: Circle): boolean =>
  Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - radius) < 1e-9;

/** From where it leaves the first circle to where it meets the last: its length and both places. */
function between(circles: readonly Circle[], side: 1 | -1): { length: number; from: Point; to: Point } {
  const line = hull(circles.flatMap(around), side);
  const first = line.findLastIndex((p) => on(p, circles[0]));
  const last = line.findIndex((p, i) => i > first && on(p, circles[circles.length - 1]));
  let length = 0;
  for (let i = first; i < last; i++)
    length += Math.hypot(line[i + 1].x - line[i].x, line[i + 1].y - line[i].y);
  return { length, from: line[first], to: line[last] };
}

/**
 * Links of a chain over both sprockets that passes below a guide, its upper run straight; with `held`, a place of the
 * lower run between them that a hand holds. Wraps count in teeth.
 */
export function chainByHull(
  loop: ChainLoop,
  rear: Point,
  front: Point,
  guide: Circle,
  held: Point | null = null,
): number {
  const big = { centre: rear, radius: loop.rearRadius };
  const little = { centre: front, radius: loop.frontRadius };
  const top = between([big, little], -1);
  const hand = held === null ? null : { centre: held, radius: 0 };
  // A guide that lies ahead of the hand bends what runs ahead of it.
  const bottom =
    hand === null
      ? [between([big, guide, little], 1)]
      : [between([big, hand], 1), between([hand, guide, little], 1)];
  const turn = (centre: Point, from: Point, to: Point): number => {
    const sweep =
      Math.atan2(to.y - centre.y, to.x - centre.x) - Math.atan2(from.y - centre.y, from.x - centre.x);
    return (((sweep / (2 * Math.PI)) % 1) + 1) % 1;
  };
  const straight = bottom.reduce((sum, piece) => sum + piece.length, top.length);
  return (
    straight / loop.pitch +
    loop.rearTeeth * turn(rear, top.from, bottom[0].from) +
    loop.frontTeeth * turn(front, bottom[bottom.length - 1].to, top.to)
  );
}
