/** Fuel weight. */
import { ANY_MASS } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const fuelMass = {
  key: 'fuelMass',
  kind: 'load',
  group: 'load',
  label: 'Fuel weight',
  holds: 'number',
  part: 'the fuel',
  quantity: 'mass',
  saved: ANY_MASS,
  default: 0,
  range: { least: 0, most: 40, step: 1 },
  reading: 'seatHeight',
  more: 'heavier',
  less: 'lighter',
  help: 'Fuel in the tank, beside the bike’s own weight. Four litres of petrol [gasoline] weigh about 3 kg.',
} as const satisfies NumberDefinition;
