/** Gives links the shock that hangs the arm at a wanted angle. */
import type { LinkLayout } from '../parts/rear-layout.ts';
import { radians } from '../units/convert.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { linkRange } from './link-range.ts';
import { links, shockAt } from './links.ts';
import { noLinkage, type NoLinkage } from './no-linkage.ts';

/** An angle this little beyond the way of the links is rounding, radians. */
const ROUNDING = 1e-9;

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
  // No further than to that length, on whichever side of the drawing it lies.
  const asHung = { ...of, fullLength: at.length, closedLength: at.length };
  const way = linkRange(asHung, radians(layout.framePitchDeg), 'stroke');
  if (!way.ok) return way;
  const end = hanging > way.high.angle ? way.high : way.low;
  if (Math.abs(hanging - end.angle) > ROUNDING && (hanging > way.high.angle || hanging < way.low.angle))
    return noLinkage('armBeyondLinks', { found: hanging, limit: end.angle, because: end.why });
  const { fullLength, closedLength } = layout.shock;
  const longer = at.length - shockLength - fullLength;
  const shock = { fullLength: fullLength + longer, closedLength: closedLength + longer };
  return shock.closedLength > 0
    ? { ...layout, shock }
    : noLinkage('strokeImpossible', { found: shock.closedLength, limit: 0 });
}
