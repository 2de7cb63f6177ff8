/** Pivot forward: the swingarm pivot moved along the frame by an eccentric. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import { onLinks } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const pivotForward = {
  key: 'pivotForward',
  kind: 'part',
  group: 'links',
  label: 'Pivot forward',
  holds: 'number',
  part: 'the pivot, moved forward or back',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: -10, most: 10, step: 0.5 },
  applies: onLinks,
  reading: 'wheelbase',
  more: 'further forward',
  less: 'further back',
  help: ({ loop }) =>
    `Swingarm pivot moved forward (+) or back (−) by an eccentric. Everything bolted to the frame stays; the swingarm, its links and the ${loop} follow.`,
} as const satisfies NumberDefinition;
