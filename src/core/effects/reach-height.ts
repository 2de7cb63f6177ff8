/** The step of an adjuster that brings a place of the bike nearest to a wanted height. */
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import { refuse, type Refusal } from '../numeric/refusal.ts';
import type { Bike } from '../parts/bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import type { StandWith } from './adjuster-effect.ts';
import { heightsAt, type HeightPlace } from './height-places.ts';

export interface HeightStep {
  /** Where the adjuster stands, in its metric unit. */
  readonly value: number;
  /** What the place rises by, mm, positive upward. */
  readonly rise: number;
  /** How high the place stands above the ground without the step and with it, mm. */
  readonly before: number;
  readonly after: number;
}

export interface HeightReached {
  readonly ok: true;
  readonly step: HeightStep;
  /** The step on the other side of what was wanted; null where the wanted height is met, or no step lies there. */
  readonly other: HeightStep | null;
}

export type HeightNotReached = Refusal<'heightOutOfReach' | 'noHeight' | 'inputNotANumber'>;

/** A height met this nearly is met, mm. */
const MET = 1e-6;

/** Decimals kept of a value, as of every adjuster's. */
const DECIMALS = 6;

/**
 * The whole step of the place's adjuster, counted from `reference`, at which the place stands nearest to `wanted` mm
 * above where it stands with the setup `reference`; every other adjuster as in `setup`. Every step in the range is
 * tried. Refused beyond the reach of the range (`found` is what was wanted, `limit` the furthest rise toward it), and
 * where the bike stands at no step.
 */
export function reachHeight(
  bike: Bike,
  setup: Setup,
  reference: Setup,
  place: HeightPlace,
  wanted: number,
  stand: StandWith,
): HeightReached | HeightNotReached {
  const from = stand(reference);
  if (from === null) return refuse('noHeight');
  const { least, most, step } = adjusterRange(adjusterOf(place.adjuster), bike, setup);
  const zero = reference[place.adjuster];
  const steps: HeightStep[] = [];
  for (let n = Math.ceil((least - zero) / step); n <= Math.floor((most - zero) / step); n += 1) {
    const value = Number((zero + n * step).toFixed(DECIMALS));
    const to = stand({ ...setup, [place.adjuster]: value });
    if (to === null) continue;
    const { before, after } = heightsAt(place, from, to);
    steps.push({ value, rise: after - before, before, after });
  }
  const nearest = best(steps, wanted);
  if (nearest === null) return refuse('noHeight');
  const beyond = wanted - nearest.rise;
  const other = best(
    steps.filter(({ rise }) => (beyond > 0 ? rise > wanted : rise < wanted)),
    wanted,
  );
  if (Math.abs(beyond) <= MET) return { ok: true, step: nearest, other: null };
  if (other === null && Math.abs(beyond) > gapBeside(steps, nearest) / 2)
    return refuse('heightOutOfReach', { end: place.end, found: wanted, limit: nearest.rise });
  return { ok: true, step: nearest, other };
}

function best(steps: readonly HeightStep[], wanted: number): HeightStep | null {
  let found: HeightStep | null = null;
  for (const each of steps)
    if (found === null || Math.abs(each.rise - wanted) < Math.abs(found.rise - wanted)) found = each;
  return found;
}

/** How far one step goes where no further one lies, mm. */
function gapBeside(steps: readonly HeightStep[], end: HeightStep): number {
  const others = steps.filter((each) => each !== end).map(({ rise }) => Math.abs(rise - end.rise));
  return others.length === 0 ? 0 : Math.min(...others);
}
