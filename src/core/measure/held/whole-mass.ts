/** The whole bike's mass and centre, with its fuel and nobody on it, and what of it is unsprung. */
import type { Bike } from '../../parts/bike.ts';
import { rotate, type Point } from '../../plane/point.ts';

/** A mass times its place, kg and kg·mm. */
export interface Moment {
  readonly mass: number;
  readonly x: number;
  readonly y: number;
}

/** Where the unsprung parts are: axles and pivot, mm, and the arm's line below horizontal, radians. */
export interface UnsprungPlaces {
  readonly front: Point;
  readonly rear: Point;
  readonly pivot: Point;
  readonly armAngle: number;
}

/** Wheels and swingarm of a bike, in the frame that their places are in. */
export function unsprungMoment(
  { frontWheel, rearWheel, swingarm }: Bike,
  { front, rear, pivot, armAngle }: UnsprungPlaces,
): Moment {
  const onArm = rotate({ x: -swingarm.centreAlong, y: swingarm.centreAbove }, armAngle);
  return sumOf([
    [frontWheel.unsprungMass, front],
    [rearWheel.unsprungMass, rear],
    [swingarm.mass, { x: pivot.x + onArm.x, y: pivot.y + onArm.y }],
  ]);
}

/** Masses at their places, added up. */
export function sumOf(masses: readonly (readonly [number, Point])[]): Moment {
  let mass = 0;
  let x = 0;
  let y = 0;
  for (const [part, at] of masses) {
    mass += part;
    x += part * at.x;
    y += part * at.y;
  }
  return { mass, x, y };
}
