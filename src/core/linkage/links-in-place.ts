/** Links chosen for a bike as it is set: the swingarm stays where it is. */
import type { Swingarm } from '../parts/bike.ts';
import type { LinkLayout } from '../parts/rear-layout.ts';
import { degrees, radians } from '../units/convert.ts';
import { hangShock } from './hang-shock.ts';
import type { RearAdjusters } from './link-adjustments.ts';
import type { NoLinkage } from './no-linkage.ts';
import { takeAdjustersOut } from './redraw-links.ts';
import { startingLinks, type LinkKind } from './starting-links.ts';

/**
 * Links to begin with that, with these adjusters as they are set, hang the arm at `hanging` radians below the frame's x
 * axis: where it hung before, by a table or by other links. The shock is measured for that. Refused where such links
 * cannot close there.
 */
export function linksInPlace(
  kind: LinkKind,
  swingarm: Swingarm,
  hanging: number,
  adjusters: RearAdjusters,
): LinkLayout | NoLinkage {
  const seen = startingLinks(kind, { ...swingarm, toppedOutAngleDeg: degrees(hanging) });
  if ('ok' in seen) return seen;
  const hung = hangShock(seen, hanging, adjusters.shockLength);
  return 'ok' in hung ? hung : takeAdjustersOut(hung, radians(hung.drawnAngleDeg), adjusters);
}
