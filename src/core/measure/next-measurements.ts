/** Which one more measurement would help a reading most, and how much. */
import { forwardSolved, lowerFactor } from '../numeric/lower-factor.ts';
import { READINGS } from '../readings/all-readings.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import { candidateRows, type Candidate } from './candidate-rows.ts';
import type { Fit } from './fit-values.ts';
import type { NextMeasurement } from './measured-bike.ts';
import { readingSlopes, widestOf } from './measured-readings.ts';
import { moved, rowFigures, roughSlopes } from './row-figures.ts';

/** How many are named. */
const BEST = 5;
/** What is taken to be known of an unknown that no row touches: so little that a row outweighs it, mm, mrad or kg. */
const UNKNOWN_SD = 1e4;
/** Step of the differences, mm or mrad. */
const STEP = 0.01;

/**
 * The best five for a reading, best first: each with the u that the reading would have with that row at its usual sd.
 * One more row r takes (g·C·r)²/(sd² + r·C·r) off the variance, C being the covariance of all unknowns; those that no
 * row touches are nearly unknown, so that a row which fixes one of them counts. Empty where the bike has no such
 * reading.
 */
export function nextMeasurements(fit: Fit, wanted: string): readonly NextMeasurement[] {
  const reading = READINGS.find(({ key }) => key === wanted);
  if (reading === undefined) return [];
  const { origin, values } = fit;
  const slopes = values.map((_, place) => readingSlopes(origin, values, place, [reading])[0]);
  const factor = lowerFactor(informationOf(fit));
  if (factor === null || slopes.includes(null)) return [];
  const aim = forwardSolved(
    factor,
    slopes.map((slope) => slope ?? 0),
  );
  const variance = dot(aim, aim);
  const candidates = candidateRows(fit).filter((each) => rowFigures(origin, [each], values) !== null);
  const rowsOf = candidateSlopes(fit, candidates);
  const widest = widestOf(QUANTITIES[reading.quantity].fileUnit);
  return candidates
    .map((candidate, i) => {
      const along = forwardSolved(factor, rowsOf[i]);
      const left = variance - dot(aim, along) ** 2 / (candidate.kind.sd ** 2 + dot(along, along));
      return { candidate, u: Math.sqrt(Math.max(0, left)) };
    })
    .sort((a, b) => a.u - b.u)
    .slice(0, BEST)
    .map(({ candidate: { kind, row }, u }) => ({
      kind: kind.key,
      parts: row.parts,
      state: row.state,
      otherState: row.otherState,
      u: u <= widest ? u : null,
    }));
}

/** What the rows and the little that is known of the rest say of all unknowns: the inverse of their covariance. */
function informationOf({ origin, rows, values }: Fit): number[][] {
  const columns = values.map((_, place) => {
    const slopes = roughSlopes(origin, rows, values, place);
    return rows.map(({ sd }, i) => (slopes?.[i] ?? 0) / sd);
  });
  return columns.map((a, i) => columns.map((b, j) => dot(a, b) + (i === j ? UNKNOWN_SD ** -2 : 0)));
}

/** Slopes of each candidate by all unknowns. */
function candidateSlopes({ origin, values }: Fit, candidates: readonly Candidate[]): readonly number[][] {
  const slopes = candidates.map((): number[] => []);
  for (let place = 0; place < values.length; place++) {
    const ahead = rowFigures(origin, candidates, moved(values, place, STEP));
    const back = rowFigures(origin, candidates, moved(values, place, -STEP));
    for (const [i, each] of slopes.entries())
      each.push(ahead === null || back === null ? 0 : (ahead[i] - back[i]) / (2 * STEP));
  }
  return slopes;
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}
