/** What a hand on the side view does: turn adjusters, edit the bike, or read a dimension; parts are locked unless editing. */
import type { AdjusterKey } from '../core/adjusters/setup.ts';
import type { PointKey } from '../core/sketch/points.ts';

export type SideViewMode = 'adjusters' | 'edit' | 'measure';

export class Mode {
  current = $state<SideViewMode>('adjusters');
  /** The point that was chosen in Edit. */
  chosenPoint = $state<PointKey | null>(null);
  /** The next tap places the chosen point. */
  placing = $state(false);
  /** The point whose figures are shown: the one last held or chosen. */
  shownPoint = $state<PointKey>('pivot');
  /** The adjuster that the page went to last; a new object each time, so that it goes there again. */
  wantedAdjuster = $state.raw<{ readonly key: AdjusterKey } | null>(null);
  /** The reading whose construction is lit. */
  chosenReading = $state<string | null>(null);

  /** Whether the view for a room lies over the page. */
  projecting = $state(false);

  change(mode: SideViewMode): void {
    this.current = mode;
    if (mode !== 'edit') this.choosePoint(null);
  }

  /** Chooses a point, or none; the next tap places it only once that is asked for. */
  choosePoint(key: PointKey | null): void {
    this.chosenPoint = key;
    this.placing = false;
  }
}
