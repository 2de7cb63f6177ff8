/** What a hand on the Stand does: turn dials, edit the bike, or read a dimension; parts are locked unless editing. */
import type { PointKey } from '../core/sketch/points.ts';
import type { RideState } from '../core/springs/ride-state.ts';

export type StandMode = 'dials' | 'edit' | 'measure';

export class Mode {
  current = $state<StandMode>('dials');
  /** The point that a tap elsewhere places, and whose figures can be typed. */
  chosenPoint = $state<PointKey | null>(null);
  /** The reading whose construction is lit. */
  chosenReading = $state<string | null>(null);

  change(mode: StandMode): void {
    this.current = mode;
    if (mode !== 'edit') this.chosenPoint = null;
  }
}

export const RIDE_STATE_WORDS: Readonly<Record<RideState, string>> = {
  toppedOut: 'Topped out',
  asDialled: 'As dialled',
};
