/** Points and directions in the plane. */

/** A place or a direction in a plane, in mm; whoever holds it says in which frame. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The angle of a direction, counter-clockwise from the x axis, radians. */
export function angleOf({ x, y }: Point): number {
  return Math.atan2(y, x);
}

/** The point turned counter-clockwise about the origin by an angle in radians. */
export function rotate(p: Point, angle: number): Point {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { x: c * p.x - s * p.y, y: s * p.x + c * p.y };
}
