/** Passenger weight. */
import { ANY_MASS } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const passengerMass = {
  key: 'passengerMass',
  kind: 'load',
  group: 'load',
  label: 'Passenger weight',
  holds: 'number',
  part: 'the passenger',
  quantity: 'mass',
  saved: ANY_MASS,
  default: 0,
  range: { least: 0, most: 200, step: 1 },
  reading: 'seatHeight',
  more: 'heavier',
  less: 'lighter',
  help: 'Passenger in riding gear.',
} as const satisfies NumberDefinition;
