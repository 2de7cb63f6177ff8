/** What a hand on the Stand does: turn dials, edit the bike, or read a dimension; parts are locked unless editing. */
import type { PointKey } from '../core/sketch/points.ts';
import type { RideState } from '../core/springs/ride-state.ts';

export type StandMode = 'dials' | 'edit' | 'measure';

export class Mode {
  current = $state<StandMode>('dials');
  /** The point that the next tap places. */
  chosenPoint = $state<PointKey | null>(null);
  /** The point whose figures are shown: the one last held or chosen. */
  shownPoint = $state<PointKey>('pivot');
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
