/** What a hand on the side view does: turn adjusters, edit the bike, or read a dimension; parts are locked unless editing. */
import type { AdjusterKey } from '../core/adjusters/setup.ts';
import type { PointKey } from '../core/sketch/points.ts';

/** What lies below the side view. */
export type BelowKey = 'why' | 'ride' | 'chain' | 'sprockets' | 'curves' | 'springs';

export const BELOW: readonly { readonly key: BelowKey; readonly label: string }[] = [
  { key: 'why', label: 'Why' },
  { key: 'ride', label: 'Ride' },
  { key: 'springs', label: 'Springs' },
  { key: 'chain', label: 'Chain' },
  { key: 'sprockets', label: 'Sprockets' },
  { key: 'curves', label: 'Curves' },
];

export type SideViewMode = 'adjusters' | 'edit' | 'measure';

export class Mode {
  current = $state<SideViewMode>('adjusters');
  /** The point that the next tap places. */
  chosenPoint = $state<PointKey | null>(null);
  /** The point whose figures are shown: the one last held or chosen. */
  shownPoint = $state<PointKey>('pivot');
  below = $state<BelowKey>('why');
  /** The adjuster that was asked for last; a new object each time, so that asking again goes there again. */
  wantedAdjuster = $state.raw<{ readonly key: AdjusterKey } | null>(null);
  /** The reading whose construction is lit. */
  chosenReading = $state<string | null>(null);

  change(mode: SideViewMode): void {
    this.current = mode;
    if (mode !== 'edit') this.chosenPoint = null;
  }
}
