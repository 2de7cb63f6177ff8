/** Where every point of a linkage is at an angle of the arm. */
import { rotate, type Point } from '../plane/point.ts';
import type { LinkPoint } from './link-drawing.ts';
import type { Links } from './links.ts';
import { loopAt } from './rocker-loop.ts';

/**
 * Every point of the linkage, frame coordinates from the pivot as it stands, mm, with the arm at `angle` radians
 * below the frame's x axis. Null where the links cannot close.
 */
export function linkPoints(of: Links, angle: number): readonly LinkPoint[] | null {
  if (of.kind === 'direct')
    return [
      { key: 'shockOnFrame', part: 'frame', place: of.mount },
      { key: 'shockOnArm', part: 'arm', place: rotate(of.eye, angle) },
    ];
  const { loop, sense } = of;
  const at = loopAt(loop, sense * angle);
  if (at === null) return null;
  const onFrame = sense > 0;
  const place = (p: Point): Point => (onFrame ? p : rotate(p, angle));
  const plus = (p: Point): Point => place({ x: loop.pivot.x + p.x, y: loop.pivot.y + p.y });
  return [
    { key: 'rockerPivot', part: onFrame ? 'frame' : 'arm', place: place(loop.pivot) },
    { key: 'rodOnRocker', part: 'rocker', place: plus(at.toRod) },
    { key: 'shockOnRocker', part: 'rocker', place: plus(at.toShock) },
    onFrame
      ? { key: 'rodOnArm', part: 'arm', place: place(at.rodEnd) }
      : { key: 'rodOnFrame', part: 'frame', place: place(at.rodEnd) },
    {
      key: 'shockFarEnd',
      part: onFrame === loop.farTurns ? 'arm' : 'frame',
      place: place(at.far),
    },
  ];
}
