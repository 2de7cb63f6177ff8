/** Where the rider sits along the frame's x axis, from the seat mark. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

// Fixed to the frame: were it level with the ground, pitching the bike would shift the rider without work, and no rest
// would be one of least energy.
export const riderForward = {
  key: 'riderForward',
  kind: 'load',
  group: 'load',
  label: 'Rider forward on the seat',
  holds: 'number',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: -300, most: 300, step: 10 },
  reading: 'frontWeightShare',
  needs: 'riderMass',
  more: 'further forward',
  less: 'further back',
  help: 'Rider’s centre of gravity moved forward (+) or back (−) on the seat, from the seat mark.',
} as const satisfies NumberDefinition;
