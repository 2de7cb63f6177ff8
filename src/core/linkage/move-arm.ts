/** Moves the pivot or the axle of a swingarm and leaves every bolt of its links in place. */
import { degrees, radians } from '../units/convert.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import type { ArmPoint, LinkLayout } from '../parts/rear-layout.ts';
import { armPointInFrame, framePointOnArm } from './link-drawing.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import { hangShock } from './hang-shock.ts';
import { redrawLinks, takeAdjustersOut } from './redraw-links.ts';
import { mapBolts } from './map-bolts.ts';
import type { NoLinkage } from './no-linkage.ts';

/**
 * The swingarm's line before and after, radians below the frame's x axis; the new pivot in old frame coordinates, from
 * the pivot as it stood; and the line on which the arm is to hang from now on.
 */
export interface NewArm {
  readonly angle: number;
  readonly newAngle: number;
  readonly pivot: FramePoint;
  readonly newHanging: number;
}

/**
 * The layout with every bolt where it was in the frame while the arm stood at `angle` with these adjusters, measured
 * from the new pivot and along the new line, with a shock that hangs the arm on its new line. Refused where the links
 * cannot close.
 */
export function moveArm(layout: LinkLayout, arm: NewArm, adjusters: RearAdjusters): LinkLayout | NoLinkage {
  const { angle, newAngle, newHanging } = arm;
  const seen = redrawLinks(layout, angle, adjusters);
  if ('ok' in seen) return seen;
  const hung = hangShock(onNewArm(seen, arm), newHanging, adjusters.shockLength);
  if ('ok' in hung) return hung;
  return takeAdjustersOut(hung, radians(layout.drawnAngleDeg) + newAngle - angle, adjusters);
}

function onNewArm(seen: LinkLayout, { newAngle, pivot }: NewArm): LinkLayout {
  const drawn = radians(seen.drawnAngleDeg);
  const onFrame = ({ x, y }: FramePoint): FramePoint => ({ x: x - pivot.x, y: y - pivot.y });
  const onArm = (point: ArmPoint): ArmPoint =>
    framePointOnArm(onFrame(armPointInFrame(point, drawn)), newAngle);
  return { ...mapBolts(seen, { onFrame, onArm }), drawnAngleDeg: degrees(newAngle) };
}
