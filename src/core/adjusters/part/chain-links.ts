/** Chain length: the chain on the bike, which then places the axle; none leaves the axle where it is set. */
import { ANY_LINKS } from '../../parts/bounds.ts';
import { hasRuns } from '../../parts/drive-kind.ts';
import type { NumberOrNoneDefinition } from '../definition/adjuster.ts';

export const chainLinks = {
  key: 'chainLinks',
  kind: 'part',
  group: 'gearing',
  label: ({ Loop }) => `${Loop} length`,
  holds: 'wholeNumberOrNone',
  part: ({ loop }) => `the ${loop}’s length`,
  quantity: 'links',
  saved: ANY_LINKS,
  default: null,
  // A belt has no links to count; where one still has a length in links, it can be cleared.
  applies: ({ drive }, held) => drive.kind === 'chain' || (hasRuns(drive.kind) && held !== null),
  reading: 'wheelbase',
  help: ({ loop, units }) =>
    `The ${loop} on the bike, in ${units}: the axle then stands where ${loop} and slack put it, and follows every change. Without one the axle stands where it is set.`,
} as const satisfies NumberOrNoneDefinition;
