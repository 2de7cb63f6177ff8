/** Fork preload: how far a fork spring is pressed with the fork topped out. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import { onForkSpring } from '../definition/fitting.ts';
import { inTurns, type NumberDefinition } from '../definition/adjuster.ts';

export const forkPreload = {
  key: 'forkPreload',
  kind: 'part',
  group: 'springs',
  label: 'Fork preload',
  holds: 'number',
  part: 'the fork’s preload',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: 0, most: 40, step: 1 },
  minutes: 5,
  aside: (value, bike) => inTurns(value, bike.fork.ends.preloadThread),
  applies: onForkSpring,
  moves: { end: 'front', more: 'up' },
  more: 'more',
  less: 'less',
  help: 'How far a fork spring is pressed with the fork topped out. It changes how high the front sits, not how stiff it is.',
} as const satisfies NumberDefinition;
