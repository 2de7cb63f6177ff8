/** Shock air gap: how long the air space of a shock still is when it is closed. */
import { ANY_LENGTH } from '../../parts/bounds.ts';
import { onShockAir } from '../definition/fitting.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const shockAirGap = {
  key: 'shockAirGap',
  kind: 'part',
  group: 'springs',
  label: 'Shock air gap',
  holds: 'number',
  part: 'the shock’s air gap',
  quantity: 'length',
  saved: ANY_LENGTH,
  default: 20,
  range: { least: 5, most: 100, step: 1 },
  applies: onShockAir,
  moves: { end: 'rear', more: 'down' },
  more: 'more',
  less: 'less',
  help: 'Length of the air space that is left with the shock closed. Less stiffens the last part of the stroke.',
} as const satisfies NumberDefinition;
