/** Why setups side by side read otherwise than the first of them that stands. */
import { partsApart } from '../../core/effects/compare-setups.ts';
import { splitByAdjuster } from '../../core/effects/split-by-adjuster.ts';
import { why } from '../../core/effects/why.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import type { BikeWithSetup } from '../../document/document.ts';
import type { Compared } from './comparison.svelte.ts';
import type { Found } from './reasons.svelte.ts';

/** For each setup the reasons against the one at `from`; null for that one, for another bike, and where either does not stand. */
export function comparedReasons(
  compared: readonly Compared[],
  from: number,
  stand: (asSet: BikeWithSetup) => StandingBike | null,
): readonly (Found | null)[] {
  const first = compared[from]?.stood;
  return compared.map(({ stood }, at) => {
    if (at === from || !('stance' in first) || !('stance' in stood)) return null;
    if (partsApart(first.bike, stood.bike).length > 0) return null;
    return {
      splits: splitByAdjuster(first, stood, stand),
      mechanism: why(first.stance, stood.stance),
      from: first.setup,
      to: stood.setup,
    };
  });
}
