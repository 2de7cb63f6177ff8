/** The adjusters of a measured bike as they are set: what the sheet has found stays as found. */
import { isAdjusterChanged } from '../../adjusters/changed-adjusters.ts';
import type { Setup } from '../../adjusters/setup.ts';

/** Adjusters that a sheet finds: teeth that were counted, and the travel that the bike was measured at. */
const MEASURED = ['frontTeeth', 'rearTeeth', 'frontTravelUsed', 'rearTravelUsed'] as const;

interface Setups {
  readonly asked: Setup;
  readonly found: Setup;
  readonly measuredAs: Setup;
}

/** The adjusters of the measured bike as they are set; tyres, sprockets and travel that stay are as measured and counted. */
export function setupAs({ asked, found, measuredAs }: Setups): Setup {
  const stays = (key: (typeof MEASURED)[number]): boolean => !isAdjusterChanged(key, asked, measuredAs);
  return {
    ...asked,
    ...Object.fromEntries(MEASURED.filter(stays).map((key) => [key, found[key]])),
    ...(isAdjusterChanged('frontTyre', asked, measuredAs) ? {} : { frontTyre: found.frontTyre }),
    ...(isAdjusterChanged('rearTyre', asked, measuredAs) ? {} : { rearTyre: found.rearTyre }),
  };
}
