/** The steps of two adjusters that bring one place of each end nearest to its wanted height, both at once. */
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import type { StandWith } from './adjuster-effect.ts';
import { heightsAt, type HeightPlace } from './height-places.ts';
import { reachHeight, type HeightNotReached } from './reach-height.ts';

/** A place, and by how much it shall stand higher than with the reference, mm, positive upward. */
export interface AskedHeight {
  readonly place: HeightPlace;
  readonly wanted: number;
}

/** A place with what was wanted of it, the step of its adjuster, in its metric unit, and its height above the ground with the reference and now, mm. */
export interface HeightMet extends AskedHeight {
  readonly value: number;
  readonly before: number;
  readonly after: number;
}

export interface BothReached {
  readonly ok: true;
  /** In the order in which they were asked. */
  readonly met: readonly HeightMet[];
}

/** Turns of both adjusters, one after the other, before the last steps are tried; each brings the ends some ten times nearer. */
const TURNS = 8;
/** Last steps tried at most. */
const LAST_STEPS = 20;

/**
 * The setting of a front and a rear adjuster, in whole steps from `reference`, with which the sum of the squares of what
 * the two heights miss is smaller than with any step beside it; every other adjuster as in `setup`. Each end is met in
 * turn until none moves, then the steps round about are tried. Refused where one end cannot reach its height.
 */
export function reachBothHeights(
  bike: Bike,
  setup: Setup,
  reference: Setup,
  asked: readonly AskedHeight[],
  stand: StandWith,
): BothReached | HeightNotReached {
  let now = setup;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const last = now;
    for (const { place, wanted } of asked) {
      const found = reachHeight(bike, now, reference, place, wanted, stand);
      if (!found.ok) return found;
      now = { ...now, [place.adjuster]: found.step.value };
    }
    if (asked.every(({ place }) => last[place.adjuster] === now[place.adjuster])) break;
  }
  const from = stand(reference);
  const met = (at: Setup): readonly HeightMet[] | null => {
    const to = stand(at);
    if (from === null || to === null) return null;
    return asked.map(({ place, wanted }) => ({
      place,
      wanted,
      value: at[place.adjuster],
      ...heightsAt(place, from, to),
    }));
  };
  const missed = (at: Setup): number =>
    met(at)?.reduce((sum, { before, after }, i) => sum + (after - before - asked[i].wanted) ** 2, 0) ??
    Infinity;
  let least = missed(now);
  for (let tried = 0; tried < LAST_STEPS; tried += 1) {
    const [best] = setupsBeside(bike, now, asked)
      .map((at) => ({ at, miss: missed(at) }))
      .sort((a, b) => a.miss - b.miss);
    if (best === undefined || best.miss >= least) break;
    now = best.at;
    least = best.miss;
  }
  const heights = met(now);
  return heights === null ? { ok: false, reason: 'noHeight' } : { ok: true, met: heights };
}

/** The setups a step away in one adjuster or in both, within their ranges. */
function setupsBeside(bike: Bike, setup: Setup, asked: readonly AskedHeight[]): Setup[] {
  let found: Setup[] = [setup];
  for (const { place } of asked) {
    const { least, most, step } = adjusterRange(adjusterOf(place.adjuster), bike, setup);
    found = found.flatMap((at) =>
      [-step, 0, step]
        .map((by) => Number((at[place.adjuster] + by).toFixed(6)))
        .filter((value) => value >= least && value <= most)
        .map((value) => ({ ...at, [place.adjuster]: value })),
    );
  }
  return found;
}
