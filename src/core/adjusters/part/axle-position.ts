/** Axle position: how far back the rear axle is clamped in its slot. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import { onRuns } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const axlePosition = {
  key: 'axlePosition',
  kind: 'part',
  group: 'gearing',
  label: 'Axle position',
  holds: 'number',
  part: 'the axle’s place',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: 0, most: 'slot', step: 1 },
  ends: { least: 'Its slot begins there.', most: 'Its slot ends there.' },
  applies: onRuns,
  placedBy: 'chainLinks',
  aside: (value, { drive }) => ({
    amount: (2 * value) / drive.chainPitch,
    counted: drive.kind === 'belt' ? 'teeth' : 'links',
  }),
  runsBack: true,
  reading: 'wheelbase',
  more: 'further back',
  less: 'further forward',
  help: ({ loop, unit }) =>
    `Rear axle back from the front end of its slot. One ${loop} ${unit} more lets it stand about half a pitch further back. Set both sides alike.`,
} as const satisfies NumberDefinition;
