/** Redraws a link layout: in another posture, with its adjusters taken in or out, or with a point moved. */
import type { FramePoint } from '../parts/frame-point.ts';
import type { LinkLayout, ShockFarEnd } from '../parts/rear-layout.ts';
import { degrees, radians } from '../units/convert.ts';
import { AS_DELIVERED, type RearAdjusters } from './link-adjustments.ts';
import { drawnPoints, framePointOnArm, type LinkPointKey } from './link-drawing.ts';
import { links } from './links.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';
import { loopAt } from './rocker-loop.ts';

/**
 * The same linkage drawn in another posture, with the arm at `angle` radians below the frame's x axis and with its
 * adjusters taken into the drawing: the new layout with none turned is this one with them turned. So a hand can take
 * a bolt where it is seen. The adjuster of shock length stays out, and the shock's lengths stay. Refused where the
 * links cannot close at that angle.
 */
export function redrawLinks(
  layout: LinkLayout,
  angle: number,
  adjusters: RearAdjusters = AS_DELIVERED,
): LinkLayout | NoLinkage {
  const of = links(layout, { ...adjusters, shockLength: 0 });
  if (!of.ok) return of;
  if (!Number.isFinite(angle)) return noLinkage('inputNotANumber');
  const drawnAngleDeg = degrees(angle);
  if (layout.kind === 'direct' || of.kind === 'direct')
    return of.kind === 'direct' && layout.kind === 'direct'
      ? { ...layout, drawnAngleDeg, shockOnFrame: of.mount }
      : noLinkage('pointUnknown');
  const at = loopAt(of.loop, of.sense * angle);
  if (at === null) return noLinkage('armBeyondLinks', { found: angle, because: 'rodAndRockerInLine' });
  const { pivot, rodEnd, far } = of.loop;
  const rod = { x: pivot.x + at.toRod.x, y: pivot.y + at.toRod.y };
  const shock = { x: pivot.x + at.toShock.x, y: pivot.y + at.toShock.y };
  const shockFarEnd: ShockFarEnd =
    layout.shockFarEnd.on === 'frame' ? { on: 'frame', at: far } : { on: 'arm', at: framePointOnArm(far, 0) };
  const posture = { drawnAngleDeg, shockFarEnd };
  return layout.kind === 'rockerOnFrame'
    ? { ...layout, ...posture, rockerPivot: pivot, rodOnRocker: rod, shockOnRocker: shock }
    : {
        ...layout,
        ...posture,
        rockerPivot: framePointOnArm(pivot, 0),
        rodOnRocker: framePointOnArm(rod, 0),
        shockOnRocker: framePointOnArm(shock, 0),
        rodOnFrame: rodEnd,
      };
}

/**
 * The reverse: the layout to store, drawn at `angle` if the links close there, that with these adjusters is what
 * `seen` is as delivered. The shim is taken out last, along the shock as stored, where putting it in will find it.
 */
export function takeAdjustersOut(
  seen: LinkLayout,
  angle: number,
  adjusters: RearAdjusters,
): LinkLayout | NoLinkage {
  const { shockMountShim, linkLength, pivotForward, pivotUp } = adjusters;
  const backed = {
    ...AS_DELIVERED,
    linkLength: -linkLength,
    pivotForward: -pivotForward,
    pivotUp: -pivotUp,
  };
  const there = redrawLinks(seen, angle, backed);
  const unturned = 'ok' in there ? redrawLinks(seen, radians(seen.drawnAngleDeg), backed) : there;
  if ('ok' in unturned) return unturned;
  const { drawnAngleDeg } = unturned;
  const out = redrawLinks(unturned, radians(drawnAngleDeg), {
    ...AS_DELIVERED,
    shockMountShim: -shockMountShim,
  });
  return 'ok' in out ? out : { ...out, drawnAngleDeg };
}

/**
 * The layout with one point moved: `place` in frame coordinates while the arm stands at `angle` radians, with no
 * adjuster turned. The layout given back is drawn at that angle, so the point is exactly where it was put. Refused
 * where the links cannot close at that angle, or the layout has no such point.
 */
export function withLinkPoint(
  layout: LinkLayout,
  key: LinkPointKey,
  place: FramePoint,
  angle: number,
): LinkLayout | NoLinkage {
  const seen = redrawLinks(layout, angle);
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
