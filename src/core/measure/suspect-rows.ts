/** Which rows a slip of hand or eye is to be looked for in, and what kind of slip by its size. */
import { chanceOfSquares } from '../numeric/chi-square.ts';
import { KG_PER_POUND, MM_PER_INCH } from '../units/convert.ts';
import { fitAt, fitValues, type Fit, type FitRow } from './fit-values.ts';
import type { LikelySlip, Suspicion } from './measured-bike.ts';
import { spread } from './measured-readings.ts';
import { rowFigures, rowSlopes } from './row-figures.ts';
import { rowWorths, testCorrelation } from './row-outcomes.ts';

/** A test beyond this comes once in a thousand rows by chance. */
const SUSPECT = 3.29;
/** Beyond this a slip bends the whole fit, and only a fit without the row tells which it is. */
const GROSS = 8;
/** How many rows are left out one after another when a slip is gross: with fewer rows, every one of them. */
const MOST_TRIED = 40;
/**
 * Rows of all these fits together. In a longer sheet each row bends the fit less, so that its own test names it and fewer
 * have to be left out.
 */
const MOST_FITTED = MOST_TRIED * MOST_TRIED;
const LEAST_TRIED = 3;
/** Slips looked for in one sheet. */
const MOST_SLIPS = 3;
/** Rows whose tests go together beyond this cannot be told apart. */
const ALIKE = 0.9;
/**
 * A slip in either of two rows explains the figures nearly as well where the sums of squares without one and without the
 * other differ by less than this: 19 to 1, as sure as a ± is.
 */
const AS_LIKELY = 2 * Math.log(19);
/** Rows disagree where chance alone would make them do so less often than this. */
const DISAGREES = 0.01;
/** How near a changed figure has to come to what the others expect, in standard deviations. */
const NEAR = 4;

/** Suspicions by the rows' places in the fit; empty where the rows agree. */
export function suspicions(fit: Fit): ReadonlyMap<number, Suspicion> {
  const found = new Map<number, Suspicion>();
  let left = fit;
  let places = fit.rows.map((_, i) => i);
  for (let place = 1; place <= MOST_SLIPS; place++) {
    if (left.rows.length === 0) break;
    const worths = rowWorths(left);
    const most = Math.max(...worths.map(({ test }) => Math.abs(test)));
    const toSpare = left.rows.length - left.rank;
    if (!(most > SUSPECT) && chanceOfSquares(left.chiSquare, toSpare) >= DISAGREES) break;
    const order = worths
      .map(({ test }, at) => ({ at, test: Math.abs(test) }))
      .sort((a, b) => b.test - a.test);
    if (!(order[0].test > 0)) break;
    const many = Math.min(MOST_TRIED, Math.max(LEAST_TRIED, Math.floor(MOST_FITTED / order.length)));
    const least = Math.sqrt(Math.max(most, SUSPECT) ** 2 - AS_LIKELY);
    const near = order.filter(({ test }, i) => i === 0 || test > least);
    const [best, ...others] = (most > GROSS ? order : near)
      .slice(0, many)
      .flatMap(({ at }): LeftOut[] => {
        const without = fitWithout(left, at);
        return without === null ? [] : [{ at, without }];
      })
      .sort((a, b) => a.without.chiSquare - b.without.chiSquare);
    if (best === undefined) break;
    const { at, without } = best;
    // A gross slip bends the fit, so which rows go together is seen where the others put the bike.
    const seen = fitAt(left.origin, left.rows, without.values) ?? left;
    const asLikely = others.filter((each) => each.without.chiSquare < without.chiSquare + AS_LIKELY);
    const alike = left.rows
      .map((_, j) => j)
      .filter((j) => j !== at && (isAlike(seen, at, j) || asLikely.some((each) => each.at === j)));
    found.set(places[at], suspicion(left, best, { place, alike: alike.map((j) => places[j]) }));
    for (const j of alike) {
      if (found.has(places[j])) continue;
      const twin = others.find((each) => each.at === j)?.without ?? fitWithout(left, j);
      found.set(places[j], suspicion(left, { at: j, without: twin }, { place, alike: [places[at]] }));
    }
    places = places.filter((_, i) => i !== at);
    left = without;
  }
  return found;
}

/** A row of a fit, and the fit of all others. */
interface LeftOut {
  readonly at: number;
  readonly without: Fit;
}

/** What the others make of a row that is suspected; without a fit of the others, what all make of it. */
function suspicion(
  { rows, figures }: Fit,
  { at, without }: { readonly at: number; readonly without: Fit | null },
  where: Pick<Suspicion, 'place' | 'alike'>,
): Suspicion {
  const expected = without === null ? null : expectedOf(rows[at], without);
  return {
    ...where,
    likely: expected === null ? null : likelySlip(rows[at], expected),
    expected: expected?.figure ?? figures[at],
  };
}

function isAlike(fit: Fit, i: number, j: number): boolean {
  return Math.abs(testCorrelation(fit, i, j)) > ALIKE;
}

/** A fit of the other rows: from the present values, and from the start where that comes lower. */
function fitWithout({ origin, rows, values }: Fit, at: number): Fit | null {
  const others = rows.filter((_, i) => i !== at);
  const near = fitValues(origin, others, values);
  // The rows of a long sheet leave one bike only.
  if (near !== null && others.length > MOST_TRIED) return near;
  const fresh = fitValues(
    origin,
    others,
    origin.unknowns.map(({ start }) => start),
  );
  if (near === null || fresh === null) return near ?? fresh;
  return fresh.chiSquare < near.chiSquare ? fresh : near;
}

interface Expected {
  readonly figure: number;
  readonly u: number | null;
}

/** What the fit makes of a row that is not in it. */
function expectedOf(row: FitRow, fit: Fit): Expected | null {
  const figures = rowFigures(fit.origin, [row], fit.values);
  if (figures === null) return null;
  const slopes = fit.touched.map((place) => rowSlopes(fit.origin, [row], fit.values, place)?.[0] ?? null);
  return { figure: figures[0], u: spread(fit, slopes) };
}

function likelySlip({ kind, measured, sd }: FitRow, { figure, u }: Expected): LikelySlip | null {
  if (u === null) return null;
  const turns: (readonly [LikelySlip, number])[] = [];
  if (kind.quantity === 'length')
    turns.push(
      ['inchForMm', measured * MM_PER_INCH],
      ['cmForMm', measured * 10],
      ['mmForInch', measured / MM_PER_INCH],
      ['mmForCm', measured / 10],
    );
  if (kind.quantity === 'mass')
    turns.push(['poundForKg', measured * KG_PER_POUND], ['kgForPound', measured / KG_PER_POUND]);
  if (kind.fromOther !== null) turns.push(['otherReference', kind.fromOther.turn(measured)]);
  for (const [slip, meant] of turns) {
    const grown = measured === 0 ? sd : sd * Math.max(1, Math.abs(meant / measured));
    if (Math.abs(meant - figure) <= NEAR * Math.hypot(grown, u)) return slip;
  }
  return null;
}
