/** Holds a saying against the bike on the page. */
import { trialFigure, tryOut, type NoTrial, type Tried } from '../core/effects/trial.ts';
import type { AsSet } from '../core/effects/turn.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import type { Saying, SayingTrial } from './saying.ts';

/** `depends`: part of it holds for this bike. `untested`: none of its trials can be made on this bike. */
export type Verdict = 'holds' | 'doesNot' | 'depends' | 'untested';

export interface TrialChecked {
  readonly trial: SayingTrial;
  /** Null holds where the trial cannot be made. */
  readonly tried: Tried | NoTrial;
  readonly holds: boolean | null;
}

export interface Checked {
  readonly verdict: Verdict;
  readonly trials: readonly TrialChecked[];
}

/** Every trial of a saying on a bike as set, and what follows for the saying. Always has an answer. */
export function checkSaying(asSet: AsSet, saying: Saying): Checked {
  const trials = saying.trials.map((trial): TrialChecked => {
    const tried = tryOut(asSet, trial);
    return { trial, tried, holds: tried.ok ? holdsFor(trial, tried) : null };
  });
  const tested = trials.filter(({ holds }) => holds !== null);
  const held = tested.filter(({ holds }) => holds === true).length;
  const verdict =
    tested.length === 0 ? 'untested' : held === tested.length ? 'holds' : held === 0 ? 'doesNot' : 'depends';
  return { verdict, trials };
}

/** What is claimed to stay counts as stayed while a rider would not notice the change. */
function holdsFor(trial: SayingTrial, { way, before, after }: Tried): boolean {
  if ('claims' in trial) {
    const figure = trialFigure(trial.figure);
    if (trial.claims !== 'same' || figure === null) return way === trial.claims;
    return Math.abs(after.value - before.value) < QUANTITIES[figure.quantity].noticed;
  }
  const [least, most] = trial.within;
  return after.value >= least && after.value <= most;
}
