/** Why the bike reads as it does: what the last change did, or all changes since the baseline, split among their causes. */
import { splitByAdjuster, type AdjusterSplit } from '../../core/effects/split-by-adjuster.ts';
import type { Setup } from '../../core/adjusters/setup.ts';
import { why, type Why } from '../../core/effects/why.ts';
import type { Standing, Stood } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

export type Since = 'baseline' | 'last';
/** What a change is put down to: the adjusters turned, or the mechanism behind; or whole sentences from cause to effect, to be read out. */
export type By = 'adjuster' | 'mechanism' | 'readOut';

/** A change with its causes: by adjuster, and by the mechanism behind. */
export interface Found {
  readonly splits: readonly AdjusterSplit[];
  readonly mechanism: Why;
  /** What the adjusters stood at before the change, and stand at now. */
  readonly from: Setup;
  readonly to: Setup;
}

export class Reasons {
  readonly #standing: Standing;
  since = $state<Since>('baseline');
  by = $state<By>('adjuster');
  /** All causes by mechanism are shown, not the main ones only. */
  whole = $state(false);
  readonly #from: Stood | null = $derived.by(() =>
    this.since === 'baseline' ? this.#standing.baseline : this.#standing.before,
  );
  /** Null when nothing was changed, or either side does not stand. */
  readonly found: Found | null = $derived.by(() => {
    const from = this.#from;
    const { problem, live } = this.#standing;
    if (from === null || problem !== null || live === null) return null;
    const splits = splitByAdjuster(from, live, (asSet) => {
      const found = this.#standing.stand(asSet);
      return 'stance' in found ? found.stance : null;
    });
    return { splits, mechanism: why(from.stance, live.stance), from: from.setup, to: live.setup };
  });

  constructor({ standing }: Pick<Workbench, 'standing'>) {
    this.#standing = standing;
  }
}
