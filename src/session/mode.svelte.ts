/** What a hand on the Stand does: turn dials, edit the bike, or read a dimension; parts are locked unless editing. */
import type { DialKey } from '../core/chassis/setup.ts';
import type { PointKey } from '../core/sketch/points.ts';

/** What lies below the Stand. */
export type BelowKey = 'why' | 'ride' | 'chain' | 'sprockets' | 'curves' | 'springs';

export const BELOW: readonly { readonly key: BelowKey; readonly label: string }[] = [
  { key: 'why', label: 'Why' },
  { key: 'ride', label: 'Ride' },
  { key: 'springs', label: 'Springs' },
  { key: 'chain', label: 'Chain' },
  { key: 'sprockets', label: 'Sprockets' },
  { key: 'curves', label: 'Curves' },
];

export type StandMode = 'dials' | 'edit' | 'measure';

export class Mode {
  current = $state<StandMode>('dials');
  /** The point that the next tap places. */
  chosenPoint = $state<PointKey | null>(null);
  /** The point whose figures are shown: the one last held or chosen. */
  shownPoint = $state<PointKey>('pivot');
  below = $state<BelowKey>('why');
  /** The dial that was asked for last; a new object each time, so that asking again goes there again. */
  wantedDial = $state.raw<{ readonly key: DialKey } | null>(null);
  /** The reading whose construction is lit. */
  chosenReading = $state<string | null>(null);

  change(mode: StandMode): void {
    this.current = mode;
    if (mode !== 'edit') this.chosenPoint = null;
  }
}
