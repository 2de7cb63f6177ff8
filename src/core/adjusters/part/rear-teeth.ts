/** Teeth of the rear sprocket. */
import { ANY_TEETH } from '../../parts/bounds.ts';
import { onRuns } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const rearTeeth = {
  key: 'rearTeeth',
  kind: 'part',
  group: 'gearing',
  label: 'Rear sprocket',
  holds: 'wholeNumber',
  part: 'the rear sprocket',
  quantity: 'teeth',
  saved: ANY_TEETH,
  default: 'essential',
  range: { least: 28, most: 90, step: 1 },
  applies: onRuns,
  reading: 'antiSquat',
  more: 'bigger',
  less: 'smaller',
  help: 'Teeth of the rear sprocket.',
} as const satisfies NumberDefinition;
