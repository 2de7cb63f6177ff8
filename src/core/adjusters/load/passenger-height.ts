/** Height of the passenger’s centre of gravity above the passenger’s seat, square to the ground. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { NumberDefinition } from '../definition/adjuster.ts';

export const passengerHeight = {
  key: 'passengerHeight',
  kind: 'load',
  group: 'load',
  label: 'Passenger’s centre of gravity above seat',
  holds: 'number',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 250,
  range: { least: 0, most: 600, step: 10 },
  reading: 'centreHeight',
  needs: 'passengerMass',
  more: 'higher',
  less: 'lower',
  help: 'Passenger’s centre of gravity above the passenger’s seat.',
} as const satisfies NumberDefinition;
