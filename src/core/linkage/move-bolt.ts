/** Moves one bolt of the links by hand and leaves the swingarm where it is. */
import type { FramePoint } from '../parts/frame-point.ts';
import type { LinkLayout } from '../parts/rear-layout.ts';
import { radians } from '../units/convert.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import type { LinkPointKey } from './link-drawing.ts';
import { hangShock } from './hang-shock.ts';
import { redrawLinks, takeAdjustersOut, withLinkPoint } from './redraw-links.ts';
import type { NoLinkage } from './no-linkage.ts';

/** The posture in which a bolt is seen: the arm's line, and its line hanging, radians below the frame's x axis. */
export interface SeenArm {
  readonly angle: number;
  readonly hanging: number;
}

/**
 * The layout with the bolt `key` at `place`, frame coordinates from the pivot as it stands, mm, with these adjusters
 * and the arm as seen. No other bolt moves and the arm hangs where it hung: the shock is measured anew, its stroke
 * stays. Refused where the links cannot close, hanging or as seen, or the layout has no such bolt.
 */
export function moveBolt(
  layout: LinkLayout,
  key: LinkPointKey,
  place: FramePoint,
  { angle, hanging }: SeenArm,
  adjusters: RearAdjusters,
): LinkLayout | NoLinkage {
  const seen = redrawLinks(layout, angle, adjusters);
  if ('ok' in seen) return seen;
  const moved = withLinkPoint(seen, key, place, angle);
  if ('ok' in moved) return moved;
  const hung = hangShock(moved, hanging, adjusters.shockLength);
  return 'ok' in hung ? hung : takeAdjustersOut(hung, radians(layout.drawnAngleDeg), adjusters);
}
