/** Teeth of the front sprocket. */
import { ANY_TEETH } from '../../parts/bounds.ts';
import { onRuns } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const frontTeeth = {
  key: 'frontTeeth',
  kind: 'part',
  group: 'gearing',
  label: 'Front sprocket',
  holds: 'wholeNumber',
  part: 'the front sprocket',
  quantity: 'teeth',
  saved: ANY_TEETH,
  default: 'essential',
  range: { least: 'leastFrontTeeth', most: 40, step: 1 },
  ends: { least: 'A smaller one does not go over the countershaft.' },
  applies: onRuns,
  reading: 'antiSquat',
  more: 'bigger',
  less: 'smaller',
  help: 'Teeth of the front sprocket, the one on the countershaft.',
} as const satisfies NumberDefinition;
