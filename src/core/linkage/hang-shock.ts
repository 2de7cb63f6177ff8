/** Gives links the shock that hangs the arm at a wanted angle. */
import type { LinkLayout } from '../parts/rear-layout.ts';
import { radians } from '../units/convert.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { beyondWay, linkRange } from './link-range.ts';
import { links, shockAt } from './links.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';

/**
 * The same links with another shock of the same stroke: set `shockLength` mm longer than as delivered, it hangs the
 * arm `hanging` radians below the frame's x axis. Refused where the links cannot close there, where no such shock
 * exists, and beyond a dead point: there the shock is as long once more, and the arm would hang at the other angle.
 */
export function hangShock(layout: LinkLayout, hanging: number, shockLength: number): LinkLayout | NoLinkage {
  const of = links(layout, AS_DELIVERED);
  if (!of.ok) return of;
  const at = shockAt(of, hanging);
  if (at === null) return noLinkage('armBeyondLinks', { found: hanging, because: 'rodAndRockerInLine' });
  const way = linkRange(of, radians(layout.framePitchDeg));
  if (!way.ok) return way;
  const beyond = beyondWay(way, hanging);
  if (beyond !== null) return beyond;
  const { fullLength, closedLength } = layout.shock;
  const longer = at.length - shockLength - fullLength;
  const shock = { fullLength: fullLength + longer, closedLength: closedLength + longer };
  return shock.closedLength > 0
    ? { ...layout, shock }
    : noLinkage('strokeImpossible', { found: shock.closedLength, limit: 0 });
}
