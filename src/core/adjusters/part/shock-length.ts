/** Shock length: the shock made longer or shorter than as delivered. */
import { ANY_PLACE } from '../../parts/bounds.ts';
import type { Bike } from '../../parts/bike.ts';
import { inTurns, type NumberDefinition } from '../definition/adjuster.ts';

/** Half a turn of the shock's thread, mm; half a millimetre where there is none. */
const halfTurn = ({ swingarm: { shockThread } }: Bike): number =>
  shockThread === null ? 0.5 : shockThread / 2;

export const shockLength = {
  key: 'shockLength',
  kind: 'part',
  group: 'rideHeight',
  label: 'Shock length',
  holds: 'number',
  part: 'the shock',
  quantity: 'length',
  saved: ANY_PLACE,
  default: 0,
  range: { least: 'shortestShock', most: 'longestShock', step: halfTurn },
  aside: (value, bike) => inTurns(value, bike.swingarm.shockThread),
  moves: { end: 'rear', more: 'up', turnedAsHeight: true },
  more: 'longer',
  less: 'shorter',
  help: 'Shock longer (+) or shorter (−) than as delivered, eye to eye. Longer raises the rear. Keep the thread’s minimum engagement by the maker’s manual. Shorter: check the rear tyre against mudguard and exhaust, bottomed.',
} as const satisfies NumberDefinition;
