/** How long a workshop takes to turn an adjuster: common practice, no source, so a person may set other minutes. */
import type { Adjuster } from '../adjusters/all-adjusters.ts';
import type { AdjusterGroup } from '../adjusters/definition/adjuster-groups.ts';

const BY_GROUP: Readonly<Record<AdjusterGroup, number>> = {
  rideHeight: 10,
  gearing: 30,
  steering: 60,
  links: 45,
  springs: 45,
  wheels: 45,
  forkLength: 30,
  travel: 0,
  load: 0,
  riding: 0,
};

/** Minutes of work for one change of an adjuster, however far: its own, or those of its group. */
export function usualMinutes(adjuster: Adjuster): number {
  const own = adjuster.holds === 'number' ? adjuster.minutes : undefined;
  return own ?? BY_GROUP[adjuster.group];
}
