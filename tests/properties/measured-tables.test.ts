/** Tables read off random linkages within a ±: more rows make the curve better, and its ± says how good it is. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wheelRate } from '../../src/core/linkage/leverage.ts';
import { measuredCurve, spreadAt, type Spread } from '../../src/core/linkage/measured-curve.ts';
import { suspension, suspensionAt, type Suspension } from '../../src/core/linkage/suspension.ts';
import { AS_DELIVERED } from '../../src/core/linkage/link-adjustments.ts';
import { curveAt, monotoneCurve } from '../../src/core/numeric/monotone-curve.ts';
import type { TravelRow } from '../../src/core/parts/rear-layout.ts';
import { cases } from '../support/cases.ts';
import { randomLinkage } from '../support/random-layouts.ts';
import { ARM_LENGTH } from '../support/rear-layouts.ts';
import { evenly } from '../support/rear-made.ts';

/** Read to 1 mm at the wheel and to 0.5 mm at the shock, mm either way. */
const WHEEL = 0.5;
const SHOCK = 0.25;
const ROWS = [5, 11, 21, 41];
/** Places of the travel at which curve and truth are compared. */
const PLACES = 25;
/** A shock spring for the wheel rate, N/mm and mm. */
const RATE = 100;
const PRELOAD = 8;
/** 95 % of a normal distribution lie within this many standard deviations. */
const BAND = 1.96;

/** Motorcycles' rear wheels travel so far, mm, and the ratio changes by no more over the travel. */
const TRAVEL = [80, 300] as const;
const RATIO = [0.2, 1.2] as const;
const MOST_CHANGE = 1.6;

interface True {
  readonly stroke: number;
  readonly ratio: number;
  readonly change: number;
}

function trueAt(of: Suspension, travel: number): True | null {
  const at = suspensionAt(of, travel);
  return at.ok ? { stroke: at.shockStroke, ratio: at.motionRatio, change: at.motionRatioSlope } : null;
}

/** The suspension where it is like one of a motorcycle. */
function motorcycles(of: ReturnType<typeof suspension>): Suspension | null {
  if (!of.ok || of.wheelTravel < TRAVEL[0] || of.wheelTravel > TRAVEL[1]) return null;
  const ratios = evenly(0, of.wheelTravel, PLACES).map((travel) => trueAt(of, travel)?.ratio ?? NaN);
  const [least, most] = [Math.min(...ratios), Math.max(...ratios)];
  return least > RATIO[0] && most < RATIO[1] && most / least < MOST_CHANGE ? of : null;
}

/** Errors anywhere within ±1 are equally likely: whole parts of one, since random doubles favour what is near zero. */
const PARTS = 1_000_000;
const errors = fc
  .noBias(fc.array(fc.integer({ min: -PARTS, max: PARTS }), { minLength: 82, maxLength: 82 }))
  .map((list) => list.map((each) => each / PARTS));
const rears = fc
  .noBias(randomLinkage)
  .map(({ layout }) => motorcycles(suspension(layout, ARM_LENGTH, AS_DELIVERED)))
  .filter((of) => of !== null);

/** The table that a mechanic reads: each figure off by its own error, and all by those of the readings hanging. */
function readOff(of: Suspension, count: number, off: readonly number[]): TravelRow[] {
  const plusMinus = { wheelTravelPlusMinus: WHEEL, shockStrokePlusMinus: SHOCK };
  return evenly(0, of.wheelTravel, count).map((travel, i) => ({
    wheelTravel: i === 0 ? 0 : travel + WHEEL * (off[2 * i] - off[0]),
    shockStroke: i === 0 ? 0 : (trueAt(of, travel)?.stroke ?? NaN) + SHOCK * (off[2 * i + 1] - off[1]),
    ...plusMinus,
  }));
}

const rateOf = ({ stroke, ratio, change }: True): number =>
  wheelRate(RATE, RATE * (PRELOAD + stroke), ratio, change);

/** Standard deviation of the wheel rate by what it depends on. */
function rateDeviation({ stroke, ratio, change }: True, spread: Spread): number {
  const byRatio = 2 * RATE * ratio;
  const byChange = RATE * (PRELOAD + stroke);
  const byStroke = RATE * change;
  return Math.sqrt(
    byRatio ** 2 * spread.ratio +
      byChange ** 2 * spread.change +
      byStroke ** 2 * spread.stroke +
      2 *
        (byRatio * byChange * spread.ratioChange +
          byRatio * byStroke * spread.strokeRatio +
          byChange * byStroke * spread.strokeChange),
  );
}

/** Of one figure at one place of one table: how far off, and half the band's width, both as part of the truth. */
interface Compared {
  readonly off: number;
  readonly half: number;
}

/** By place, the tables' comparisons. */
type Comparisons = Compared[][];

const noComparisons = (): Comparisons => Array.from({ length: PLACES }, () => []);

interface Trials {
  readonly ratio: Comparisons;
  readonly rate: Comparisons;
  /** The wheel rate's error where the same rows count as exact, by place. */
  readonly asExact: number[];
}

const trialsByRows = new Map<number, Trials>(
  ROWS.map((rows) => [rows, { ratio: noComparisons(), rate: noComparisons(), asExact: [] }]),
);

function compare(of: Suspension, rows: number, off: readonly number[]): void {
  const table = readOff(of, rows, off);
  const measured = measuredCurve(table);
  if (measured === null) throw new Error(`no curve through ${JSON.stringify(table)}`);
  const exact = monotoneCurve(
    table.map(({ wheelTravel, shockStroke }) => ({ x: wheelTravel, y: shockStroke })),
  );
  const trials = trialsByRows.get(rows);
  if (trials === undefined) throw new Error(`no trials of ${rows} rows`);
  evenly(0, of.wheelTravel, PLACES).forEach((travel, place) => {
    const truth = trueAt(of, travel);
    if (truth === null) throw new Error(`the links end before ${travel} mm`);
    const { value: stroke, slope: ratio, bend: change } = curveAt(measured.curve, travel);
    // At the very end the curve has gone straight on already, and the bend is that of just before.
    const inside = curveAt(measured.curve, Math.min(travel, (measured.curve.x.at(-1) ?? 0) - 1e-6)).bend;
    const found = { stroke, ratio, change: change === 0 ? inside : change };
    const spread = spreadAt(measured, travel);
    trials.ratio[place].push({
      off: Math.abs(ratio - truth.ratio) / truth.ratio,
      half: (BAND * Math.sqrt(spread.ratio)) / truth.ratio,
    });
    const rate = Math.abs(rateOf(truth));
    trials.rate[place].push({
      off: Math.abs(rateOf(found) - rateOf(truth)) / rate,
      half: (BAND * rateDeviation(found, spread)) / rate,
    });
    if (!exact.ok) return;
    const through = curveAt(exact.value, travel);
    const asRead = { stroke: through.value, ratio: through.slope, change: through.bend };
    trials.asExact.push(Math.abs(rateOf(asRead) - rateOf(truth)) / rate);
  });
}

const mean = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0) / list.length;

function quantile(list: readonly number[], part: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
}

const covered = (list: readonly Compared[]): number =>
  mean(list.map(({ off, half }) => (off <= half ? 1 : 0)));

describe('a table read within a ±', () => {
  it('makes a curve at every count of rows', () => {
    fc.assert(
      fc.property(rears, errors, (of, off) => {
        for (const rows of ROWS) compare(of, rows, off);
      }),
      { numRuns: cases(100) },
    );
    for (const { ratio } of trialsByRows.values()) expect(ratio[0]).toHaveLength(cases(100));
  });

  it.each(['ratio', 'rate'] as const)('has a %s that more rows make better', (figure) => {
    const offs = ROWS.map((rows) =>
      quantile(
        (trialsByRows.get(rows)?.[figure] ?? []).flat().map(({ off }) => off),
        0.5,
      ),
    );
    for (let i = 1; i < offs.length; i++) expect(offs[i], offs.join(' ')).toBeLessThan(offs[i - 1]);
    expect(offs[offs.length - 1]).toBeLessThan(0.7 * offs[0]);
  });

  it('has a wheel rate that is nearer to the truth than that of the same rows taken as exact', () => {
    for (const rows of ROWS.slice(1)) {
      const trials = trialsByRows.get(rows);
      const found = quantile(
        (trials?.rate ?? []).flat().map(({ off }) => off),
        0.5,
      );
      expect(found).toBeLessThan(0.5 * quantile(trials?.asExact ?? [], 0.5));
    }
  });

  describe.each(ROWS)('of %i rows', (rows) => {
    it.each(['ratio', 'rate'] as const)(
      'covers the true %s by its band, which is no wider than need be',
      (figure) => {
        const places = trialsByRows.get(rows)?.[figure] ?? [];
        const all = places.flat();
        expect(all.length).toBeGreaterThanOrEqual(PLACES * cases(100));
        expect(covered(all)).toBeGreaterThan(0.93);
        expect(covered(all)).toBeLessThan(0.99);
        for (const place of places) expect(covered(place)).toBeGreaterThan(0.85);
        const spread = quantile(
          all.map(({ off }) => off),
          0.95,
        );
        expect(mean(all.map(({ half }) => half))).toBeLessThan(2 * spread);
      },
    );
  });
});
