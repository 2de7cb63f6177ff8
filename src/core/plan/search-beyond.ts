/** Beyond the ranges: which single range has to be let out, and by how many steps, before there is a plan. */
import { combinations } from './combinations.ts';
import { compareRanked, rank, type Ranked } from './choose-plans.ts';
import type { judgeFor } from './judge.ts';
import type { Plan, WiderRange } from './plan.ts';
import { planTo } from './plan-steps.ts';
import type { Prepared, PreparedAdjuster } from './prepared.ts';

/** A search that goes outward from the ranges, step by step, over all adjusters at once. */
export interface BeyondSearch {
  readonly tried: () => number;
  /** Whether a plan was found, or there is nothing further out, or as many were tried as may be. */
  readonly isDone: () => boolean;
  /** Whether it came to its end without being cut short. */
  readonly isWhole: () => boolean;
  /** Tries so many more combinations, or fewer where it is done. */
  readonly advance: (count: number) => void;
  readonly hasFound: () => boolean;
  readonly found: () => WiderRange | null;
}

/** All combinations of the other adjusters with one of them at a value outside its range. */
interface Shell {
  readonly adjuster: PreparedAdjuster;
  readonly steps: number;
  readonly value: number;
  readonly prepared: Prepared;
}

interface Found {
  readonly shell: Shell;
  readonly ranked: Ranked;
  readonly plan: () => Plan;
}

/**
 * Tries what lies one step outside each range, then two, until some combination meets every target and raises no
 * warning, or `most` were tried; all others stay within the ranges. Of those equally far out the better plan is found.
 */
export function searchBeyond(
  prepared: Prepared,
  judge: ReturnType<typeof judgeFor>,
  most: number,
): BeyondSearch {
  const { adjusters } = prepared;
  const furthest = Math.max(0, ...adjusters.map(({ mostBeyond }) => mostBeyond));
  let steps = 0;
  let shells: readonly Shell[] = [];
  let shell = -1;
  let combination = 0;
  let all = combinations(prepared);
  let tried = 0;
  let found: Found | null = null;
  let isAtEnd = false;

  /** Goes on to the next shell; to the end where this one gave a plan. */
  const goOn = (): void => {
    combination = 0;
    shell += 1;
    while (shell >= shells.length) {
      if (found !== null || steps >= furthest) {
        isAtEnd = true;
        return;
      }
      steps += 1;
      shells = shellsAt(prepared, steps);
      shell = 0;
    }
    all = combinations(shells[shell].prepared);
  };
  goOn();

  const tryOne = (): void => {
    const at = shells[shell];
    const setup = all.setupAt(combination);
    const { stop, off } = judge(setup, -1);
    tried += 1;
    combination += 1;
    if (stop !== null) return;
    const ranked = rank(at.prepared, all, { combination: combination - 1, off });
    if (found === null || isBetter(ranked, at, found))
      found = { shell: at, ranked, plan: () => planTo(at.prepared, setup, off) };
  };
  const isDone = (): boolean => isAtEnd || tried >= most;

  return {
    tried: () => tried,
    isDone,
    isWhole: () => isAtEnd,
    advance: (count) => {
      for (let left = count; left > 0 && !isDone(); left -= 1) {
        tryOne();
        if (combination >= shells[shell].prepared.total) goOn();
      }
    },
    hasFound: () => found !== null,
    found: () => {
      if (found === null) return null;
      const { adjuster, steps: out, value } = found.shell;
      const { least, most } = adjuster.ends ?? { least: value, most: value };
      const by = Math.max(least - value, value - most);
      return { adjuster: adjuster.key, to: value, by, steps: out, plan: found.plan() };
    },
  };
}

/** In working order, the lower end first. */
function shellsAt(prepared: Prepared, steps: number): Shell[] {
  const { adjusters, total } = prepared;
  return adjusters.flatMap((adjuster) =>
    adjuster.beyond(steps).map((value): Shell => {
      const side = value < (adjuster.ends?.least ?? value) ? 'first' : 'last';
      const inRange = adjuster.steps[side === 'first' ? 0 : adjuster.steps.length - 1];
      const held: PreparedAdjuster = {
        ...adjuster,
        values: [value],
        steps: [inRange + (side === 'first' ? -steps : steps)],
      };
      return {
        adjuster,
        steps,
        value,
        prepared: {
          ...prepared,
          adjusters: adjusters.map((each) => (each === adjuster ? held : each)),
          total: total / adjuster.values.length,
        },
      };
    }),
  );
}

/** Within one shell as plans are ranked; of two shells the earlier one wins a tie. */
function isBetter(ranked: Ranked, shell: Shell, than: Found): boolean {
  if (shell === than.shell) return compareRanked(ranked, than.ranked) < 0;
  const { cost, steps } = ranked;
  return cost < than.ranked.cost || (cost === than.ranked.cost && steps < than.ranked.steps);
}
