/** Chain slack: how far the lower run moves up and down together at its middle. */
import { ANY_LENGTH } from '../../parts/bounds.ts';
import { onRuns } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const chainSlack = {
  key: 'chainSlack',
  formerly: 'chainPlay',
  kind: 'part',
  group: 'gearing',
  label: ({ Loop }) => `${Loop} slack`,
  holds: 'number',
  part: ({ loop }) => `the ${loop}’s slack`,
  quantity: 'length',
  saved: ANY_LENGTH,
  default: 30,
  range: { least: 0, most: 80, step: 1 },
  applies: onRuns,
  reading: 'freeTravel',
  more: 'slacker',
  less: 'tighter',
  help: ({ loop }) =>
    `Up and down together at the middle of the lower run, frame held up and wheel hanging; a stand under the swingarm does not hang it. The manual’s figure is often for the side stand: type it here only if the manual measures with the wheel hanging. The ${loop}’s length then places the axle.`,
} as const satisfies NumberDefinition;
