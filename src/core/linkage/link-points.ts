/** Where every point of a linkage is at an angle of the arm, for drawing it, and the layout with a point elsewhere. */
import type { FramePoint } from '../chassis/frame-point.ts';
import { turned, type Point } from '../plane/point.ts';
import { degrees } from '../units/convert.ts';
import { AS_DELIVERED } from './adjusters.ts';
import { drawnPoints, framePointOnArm, type LinkPoint, type LinkPointKey } from './drawn-links.ts';
import type { LinkLayout } from '../chassis/rear-layout.ts';
import { links, type Links } from './links.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';
import { loopAt } from './rocker-loop.ts';

/**
 * Every point of the linkage, frame coordinates from the pivot as it stands, mm, with the arm at `angle` radians
 * below the frame's x axis. Null where the links cannot close.
 */
export function linkPoints(of: Links, angle: number): readonly LinkPoint[] | null {
  if (of.kind === 'direct')
    return [
      { key: 'shockOnFrame', part: 'frame', place: of.mount },
      { key: 'shockOnArm', part: 'arm', place: turned(of.eye, angle) },
    ];
  const { loop, sense } = of;
  const at = loopAt(loop, sense * angle);
  if (at === null) return null;
  const onFrame = sense > 0;
  const place = (p: Point): Point => (onFrame ? p : turned(p, angle));
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

/**
 * How far the rocker has turned from where it was drawn, radians counter-clockwise in frame coordinates, from −π
 * to π. Null without a rocker and where the links cannot close.
 */
export function rockerTurn(of: Links, angle: number): number | null {
  if (of.kind === 'direct') return null;
  const at = loopAt(of.loop, of.sense * angle);
  if (at === null) return null;
  const { toRod } = of.loop;
  const own = Math.atan2(
    toRod.x * at.toRod.y - toRod.y * at.toRod.x,
    toRod.x * at.toRod.x + toRod.y * at.toRod.y,
  );
  const turn = own + (of.sense > 0 ? 0 : angle - of.drawnAngle);
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}

/**
 * The same linkage drawn in another posture of the arm: every length and side stays, only the drawn angle and the
 * rocker's points change. So that a hand can take a point where it is seen. Refused where the links cannot
 * close at that angle.
 */
export function redrawn(layout: LinkLayout, angle: number): LinkLayout | NoLinkage {
  const of = links(layout, AS_DELIVERED);
  if (!of.ok) return of;
  if (!Number.isFinite(angle)) return noLinkage('inputNotANumber');
  const drawnAngleDeg = degrees(angle);
  if (layout.kind === 'direct' || of.kind === 'direct') return { ...layout, drawnAngleDeg };
  const at = loopAt(of.loop, of.sense * angle);
  if (at === null) return noLinkage('armBeyondLinks', { found: angle, because: 'rodAndRockerInLine' });
  const { pivot } = of.loop;
  const rod = { x: pivot.x + at.toRod.x, y: pivot.y + at.toRod.y };
  const shock = { x: pivot.x + at.toShock.x, y: pivot.y + at.toShock.y };
  return layout.kind === 'rockerOnFrame'
    ? { ...layout, drawnAngleDeg, rodOnRocker: rod, shockOnRocker: shock }
    : {
        ...layout,
        drawnAngleDeg,
        rodOnRocker: framePointOnArm(rod, 0),
        shockOnRocker: framePointOnArm(shock, 0),
      };
}

/**
 * The layout with one point elsewhere: `place` in frame coordinates while the arm stands at `angle` radians, with
 * no adjuster turned. The layout given back is drawn at that angle, so the point is exactly where it was put.
 * Refused where the links cannot close at that angle, or the layout has no such point.
 */
export function withLinkPoint(
  layout: LinkLayout,
  key: LinkPointKey,
  place: FramePoint,
  angle: number,
): LinkLayout | NoLinkage {
  const seen = redrawn(layout, angle);
  if ('ok' in seen) return seen;
  const onArm = framePointOnArm(place, angle);
  if (key === 'shockFarEnd' && seen.kind !== 'direct')
    return {
      ...seen,
      shockFarEnd: seen.shockFarEnd.on === 'frame' ? { on: 'frame', at: place } : { on: 'arm', at: onArm },
    };
  if (!drawnPoints(seen, angle).some((point) => point.key === key)) return noLinkage('pointUnknown');
  const carried = key === 'shockOnFrame' || key === 'rodOnFrame';
  const asFrame = carried || (seen.kind === 'rockerOnFrame' && key !== 'rodOnArm');
  return { ...seen, [key]: asFrame ? place : onArm };
}
