/** Ranks combinations that meet every target, and chooses the best ones that differ. */
import type { Combinations } from './combinations.ts';
import type { Plan } from './plan.ts';
import type { Prepared } from './prepared.ts';

/** A combination that meets every target, or all but one. */
export interface Candidate {
  readonly combination: number;
  readonly off: number;
}

/** An hour of work counts as much as a miss by a change that a rider just notices. */
const HOUR = 60;

/** At most so many plans are shown. */
const MOST_PLANS = 5;

/** Two plans differ where an adjuster stands at least this part of its searched range apart. */
const APART = 0.25;

/** The plan with less work and miss together, of those that there are; of equal ones the first. */
export function betterPlan(a: Plan | null, b: Plan | null): Plan | null {
  if (a === null || b === null) return a ?? b;
  return b.off + b.minutes / HOUR < a.off + a.minutes / HOUR ? b : a;
}

/** A combination with what it is ranked by. */
export interface Ranked {
  readonly candidate: Candidate;
  /** The place of each adjuster's value, in the order of the problem's adjusters. */
  readonly places: readonly number[];
  /** Work and miss together. */
  readonly cost: number;
  /** How many steps are turned in all. */
  readonly steps: number;
}

export function rank({ adjusters }: Prepared, { placesAt }: Combinations, candidate: Candidate): Ranked {
  const places = placesAt(candidate.combination);
  let minutes = 0;
  let steps = 0;
  for (const [i, adjuster] of adjusters.entries()) {
    const place = places[i];
    if (adjuster.values[place] === adjuster.start) continue;
    minutes += adjuster.minutes;
    steps += Math.abs(adjuster.steps[place]);
  }
  return { candidate, places, cost: candidate.off + minutes / HOUR, steps };
}

/**
 * Below zero where `a` is the better plan: less work and miss together, of equal ones the one with fewer steps turned,
 * then the one with the lower value of the adjuster that is turned first.
 */
export function compareRanked(a: Ranked, b: Ranked): number {
  if (a.cost !== b.cost) return a.cost - b.cost;
  if (a.steps !== b.steps) return a.steps - b.steps;
  const i = a.places.findIndex((place, at) => place !== b.places[at]);
  return i < 0 ? 0 : a.places[i] - b.places[i];
}

/**
 * Whether two combinations are plans of different kinds: each turns an adjuster that the other leaves; or both turn the
 * same ones, and one of those stands at least a quarter of its searched range apart. A plan that turns what another
 * does and something more on top is no other kind.
 */
function doDiffer({ adjusters }: Prepared, a: readonly number[], b: readonly number[]): boolean {
  let onlyA = false;
  let onlyB = false;
  let farApart = false;
  for (const [i, { values, start }] of adjusters.entries()) {
    farApart ||= Math.abs(a[i] - b[i]) >= Math.max(1, APART * (values.length - 1));
    const turnsA = values[a[i]] !== start;
    const turnsB = values[b[i]] !== start;
    onlyA ||= turnsA && !turnsB;
    onlyB ||= turnsB && !turnsA;
  }
  return onlyA === onlyB && (onlyA || farApart);
}

/** The best first; each further one is the best of those that differ from all before it. */
export function choosePlans(
  prepared: Prepared,
  all: Combinations,
  candidates: readonly Candidate[],
): Candidate[] {
  let left = candidates.map((candidate) => rank(prepared, all, candidate));
  const chosen: Candidate[] = [];
  while (left.length > 0 && chosen.length < MOST_PLANS) {
    const best = left.reduce((a, b) => (compareRanked(b, a) < 0 ? b : a));
    chosen.push(best.candidate);
    left = left.filter(({ places }) => doDiffer(prepared, best.places, places));
  }
  return chosen;
}
