/** Pivot up: the swingarm pivot moved up or down in the frame by an eccentric. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import { onLinks } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const pivotUp = {
  key: 'pivotUp',
  kind: 'part',
  group: 'links',
  label: 'Pivot up',
  holds: 'number',
  part: 'the pivot, moved up or down',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: -10, most: 10, step: 0.5 },
  applies: onLinks,
  reading: 'swingarmAngle',
  more: 'higher',
  less: 'lower',
  help: 'Swingarm pivot moved up (+) or down (−) by an eccentric. Higher makes the swingarm steeper for the same ride height.',
} as const satisfies NumberDefinition;
