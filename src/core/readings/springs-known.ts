/** Whether springs can be told of at a place of the travel. */
import type { SprungMachine } from '../springs/sprung-machine.ts';
import { absent, type Absent } from './absent.ts';

/** Travel this little beyond the end is rounding, mm. */
const ROUNDING = 1e-6;

/** Why springs have no number at this travel: their coils would have closed before. Null when they have one. */
export function withoutSprings(
  sprung: SprungMachine,
  travelUsed: number,
  end: 'front' | 'rear',
): Absent | null {
  return travelUsed > sprung.most[end] + ROUNDING ? absent('coilsClosed') : null;
}
