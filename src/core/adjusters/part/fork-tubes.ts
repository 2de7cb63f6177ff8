/** Fork tubes above the top clamp: the fork slid in its clamps. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const forkTubes = {
  key: 'forkTubes',
  formerly: 'forkHeight',
  kind: 'part',
  group: 'rideHeight',
  label: 'Fork tubes above clamp [yoke]',
  holds: 'number',
  part: 'the fork',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: -20, most: 40, step: 1 },
  moves: { end: 'front', more: 'down', turnedAsHeight: true },
  more: 'tubes up',
  less: 'tubes down',
  figure: 'tubes up',
  help: 'How far the fork tubes stand out above the top clamp [top yoke]. Tubes further up through the clamps lower the front. Keep the tube’s minimum engagement in both clamps, and check tyre, mudguard and radiator with the fork bottomed.',
} as const satisfies NumberDefinition;
