/** Rocker, rod and bolts of real rear links where they are, and the two eyes between which the shock stands. */
import { onGround } from '../../core/chassis/pose.ts';
import { linkPoints } from '../../core/linkage/link-points.ts';
import type { LinkPointKey } from '../../core/linkage/link-drawing.ts';
import { distance, type Point } from '../../core/plane/point.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { along, pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Drawn thicknesses, mm; they carry no measurement. */
const ROD_HALF = 8;
const ROCKER_EYE = 17;
const BOLT = 7;

/** The bolts of the links on the ground frame, by their names; null where only a table is known. */
export function linkPlaces(standing: Stance): ReadonlyMap<LinkPointKey, Point> | null {
  const { rear } = standing.machine;
  const points = rear.kind === 'links' ? linkPoints(rear.links, standing.arm.angle) : null;
  if (points === null) return null;
  return new Map(points.map(({ key, place }) => [key, onGround(standing.pose, place)]));
}

/** The shock's eyes, the one away from the rocker or on the frame first; null where only a table is known. */
export function shockEyes(standing: Stance): { readonly top: Point; readonly bottom: Point } | null {
  const places = linkPlaces(standing);
  const top = places?.get('shockOnFrame') ?? places?.get('shockFarEnd');
  const bottom = places?.get('shockOnArm') ?? places?.get('shockOnRocker');
  return top === undefined || bottom === undefined ? null : { top, bottom };
}

/** Rod and rocker with their bolts; nothing without links. */
export function linkShapes(standing: Stance): Shape[] {
  const places = linkPlaces(standing);
  const pivot = places?.get('rockerPivot');
  const rod = places?.get('rodOnRocker');
  const shock = places?.get('shockOnRocker');
  const end = places?.get('rodOnArm') ?? places?.get('rodOnFrame');
  if (pivot === undefined || rod === undefined || shock === undefined || end === undefined) return [];
  const place = along(rod, end);
  const length = distance(rod, end);
  const plate = pen();
  for (const { x, y } of [pivot, rod, shock]) plate.circle(x, y, ROCKER_EYE);
  return [
    plate.shape('clamp'),
    pen().move(pivot.x, pivot.y).line(rod.x, rod.y, shock.x, shock.y).close().shape('swingarm'),
    pen(place)
      .move(0, -ROD_HALF)
      .line(length, -ROD_HALF, length, ROD_HALF, 0, ROD_HALF)
      .close()
      .shape('shock'),
    ...[pivot, rod, end].map(({ x, y }) => pen().circle(x, y, BOLT).shape('axle')),
  ];
}
