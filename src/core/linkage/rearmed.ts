/** The same links on a swingarm that is measured anew: its pivot or its axle put elsewhere, every bolt left in its place. */
import { degrees, radians } from '../units/convert.ts';
import type { FramePoint } from '../chassis/frame-point.ts';
import type { ArmPoint, LinkLayout, ShockFarEnd } from '../chassis/rear-layout.ts';
import { armPointInFrame, framePointOnArm } from './drawn-links.ts';
import { redrawn } from './link-points.ts';
import type { NoLinkage } from './no-linkage.ts';

/** The swingarm's line before and after, radians below the frame's x axis, and the new pivot in old frame coordinates. */
export interface NewArm {
  readonly angle: number;
  readonly newAngle: number;
  readonly pivot: FramePoint;
}

/**
 * The layout with every bolt where it was in the frame while the arm stood at `angle`, told from the new pivot and
 * along the new line. Drawn in that posture. Refused where the links cannot close at that angle.
 */
export function rearmed(layout: LinkLayout, { angle, newAngle, pivot }: NewArm): LinkLayout | NoLinkage {
  const seen = redrawn(layout, angle);
  if ('ok' in seen) return seen;
  const drawn = radians(seen.drawnAngleDeg);
  const onFrame = ({ x, y }: FramePoint): FramePoint => ({ x: x - pivot.x, y: y - pivot.y });
  const onArm = (point: ArmPoint): ArmPoint =>
    framePointOnArm(onFrame(armPointInFrame(point, drawn)), newAngle);
  const farEnd = (end: ShockFarEnd): ShockFarEnd =>
    end.on === 'frame' ? { on: 'frame', at: onFrame(end.at) } : { on: 'arm', at: onArm(end.at) };
  const drawnAngleDeg = degrees(newAngle);
  switch (seen.kind) {
    case 'direct':
      return {
        ...seen,
        drawnAngleDeg,
        shockOnFrame: onFrame(seen.shockOnFrame),
        shockOnArm: onArm(seen.shockOnArm),
      };
    case 'rockerOnFrame':
      return {
        ...seen,
        drawnAngleDeg,
        rockerPivot: onFrame(seen.rockerPivot),
        rodOnRocker: onFrame(seen.rodOnRocker),
        shockOnRocker: onFrame(seen.shockOnRocker),
        rodOnArm: onArm(seen.rodOnArm),
        shockFarEnd: farEnd(seen.shockFarEnd),
      };
    case 'rockerOnArm':
      return {
        ...seen,
        drawnAngleDeg,
        rockerPivot: onArm(seen.rockerPivot),
        rodOnRocker: onArm(seen.rodOnRocker),
        shockOnRocker: onArm(seen.shockOnRocker),
        rodOnFrame: onFrame(seen.rodOnFrame),
        shockFarEnd: farEnd(seen.shockFarEnd),
      };
  }
}
