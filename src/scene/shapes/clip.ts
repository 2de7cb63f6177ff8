/** Cutting straight lines and areas off at the edges of a convex area. */
import type { Point } from '../../core/plane/point.ts';

/** A convex area, its corners counter-clockwise. */
export type Area = readonly Point[];

/** How far a place lies inside an edge: above zero to its left. */
function inside(from: Point, to: Point, place: Point): number {
  return (to.x - from.x) * (place.y - from.y) - (to.y - from.y) * (place.x - from.x);
}

function cut(from: Point, to: Point, fromIn: number, toIn: number): Point {
  const part = fromIn / (fromIn - toIn);
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
}

/** The part of a line from one place to another that lies in an area; null where none does. */
export function clipLine(from: Point, to: Point, area: Area): { from: Point; to: Point } | null {
  let [a, b] = [from, to];
  for (const [i, corner] of area.entries()) {
    const next = area[(i + 1) % area.length];
    const [aIn, bIn] = [inside(corner, next, a), inside(corner, next, b)];
    if (aIn < 0 && bIn < 0) return null;
    if (aIn < 0) a = cut(a, b, aIn, bIn);
    else if (bIn < 0) b = cut(a, b, aIn, bIn);
  }
  return { from: a, to: b };
}

/** The part of a shape with straight edges that lies in an area; without corners where none does. */
export function clipArea(shape: readonly Point[], area: Area): Point[] {
  let left = [...shape];
  for (const [i, corner] of area.entries()) {
    const next = area[(i + 1) % area.length];
    left = left.flatMap((place, j) => {
      const before = left[(j + left.length - 1) % left.length];
      const [beforeIn, placeIn] = [inside(corner, next, before), inside(corner, next, place)];
      const crossing = beforeIn < 0 !== placeIn < 0 ? [cut(before, place, beforeIn, placeIn)] : [];
      return placeIn < 0 ? crossing : [...crossing, place];
    });
  }
  return left;
}
