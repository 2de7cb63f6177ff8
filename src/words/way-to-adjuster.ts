/** What the way to an adjuster is called. */
import type { AdjusterKey } from '../core/adjusters/setup.ts';
import type { DriveKind } from '../core/parts/drive-kind.ts';
import { adjusterLabel } from '../core/adjusters/named-adjusters.ts';

/** Such as "Go to Acceleration". */
export function wayToAdjuster(adjuster: AdjusterKey, kind: DriveKind): string {
  return `Go to ${adjusterLabel(adjuster, kind)}`;
}
