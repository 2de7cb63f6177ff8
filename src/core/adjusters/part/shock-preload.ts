/** Shock preload: how far a shock’s spring is pressed with the wheel hanging. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import { onShockSpring } from '../definition/fitting.ts';
import { inTurns, type NumberDefinition } from '../definition/adjuster.ts';

export const shockPreload = {
  key: 'shockPreload',
  kind: 'part',
  group: 'springs',
  label: 'Shock preload',
  holds: 'number',
  part: 'the shock’s preload',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: 0, most: 40, step: 1 },
  minutes: 5,
  aside: (value, bike) => inTurns(value, bike.shock.ends.preloadThread),
  applies: onShockSpring,
  moves: { end: 'rear', more: 'up' },
  more: 'more',
  less: 'less',
  help: 'How far a shock’s spring is pressed with the wheel hanging. It changes how high the rear sits, not how stiff it is.',
} as const satisfies NumberDefinition;
