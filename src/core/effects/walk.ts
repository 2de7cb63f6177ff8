/** The way from one setup of a bike to another, one adjuster at a time in working order, so that a mechanic can check each step. */
import { ADJUSTERS } from '../adjusters/all-adjusters.ts';
import { isAdjusterChanged } from '../adjusters/changed-adjusters.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import { compareTurns } from '../adjusters/working-order.ts';
import type { StandingBike } from '../riding/stand-bike.ts';

export interface WalkStep {
  /** What is turned in this step: one adjuster, or several where the bike does not stand between them. */
  readonly turned: readonly AdjusterKey[];
  /** How the bike is set once the step is done. */
  readonly setup: Setup;
  /** How it stands then; null only in the last step, where the target itself does not stand. */
  readonly on: StandingBike | null;
}

/**
 * The steps from one setup to another: rear first, front last, sprockets and chain before height. An adjuster after
 * which the bike would not stand is turned together with the next one, such as a bigger sprocket with its longer chain.
 * The last step's setup is `to` itself. `stand` stands the bike in one ride state, or gives null where it does not.
 */
export function walk(from: Setup, to: Setup, stand: (asked: Setup) => StandingBike | null): WalkStep[] {
  const turns = ADJUSTERS.map(({ key }) => key)
    .filter((key) => isAdjusterChanged(key, to, from))
    .sort(compareTurns);
  const steps: WalkStep[] = [];
  let together: AdjusterKey[] = [];
  let at = from;
  for (const [place, key] of turns.entries()) {
    const last = place === turns.length - 1;
    at = last ? to : { ...at, [key]: to[key] };
    together = [...together, key];
    const on = stand(at);
    if (on === null && !last) continue;
    steps.push({ turned: together, setup: at, on });
    together = [];
  }
  return steps;
}
