/** Tests of choosing among sprocket pairs and telling them apart. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { describe, expect, it } from 'vitest';
import { ANY_CHAIN, pairIn, pairsOf } from '../../../tests/support/pairs-asked.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import {
  filteredPairs,
  pairDifference,
  sortedPairs,
  type PairFilter,
} from '../../core/effects/pair-choice.ts';
import { pairAxleWords, pairWords, squatEndsWords } from './pair-words.ts';
import type { SprocketPair } from '../../core/effects/sprocket-pairs.ts';
import { absent } from '../../core/readings/absent.ts';

const pairs = pairsOf({
  bike: plainBike,
  setup: { ...plainSetup, axlePosition: 12 },
  ride: { front: 40, rear: 40 },
  front: { least: 13, most: 17 },
  rear: { least: 38, most: 52 },
  ...ANY_CHAIN,
  leastFront: 14,
});
const NO_FILTER: PairFilter = { ratio: null, links: null, fits: false, leastGap: null };
const style: NumberStyle = { system: 'metric', decimal: '.' };

const pair = (front: number, rear: number) => pairIn(pairs, front, rear);

const names = (found: readonly SprocketPair[]): string[] =>
  found.map((p) => `${p.frontTeeth}/${p.rearTeeth}`);

describe('filters', () => {
  it('keep all without one', () => expect(filteredPairs(pairs, NO_FILTER)).toEqual(pairs));

  it('keep the same ratio, or one within a tolerance', () => {
    const wanted = { wanted: 45 / 15, tolerancePercent: 0 };
    expect(names(filteredPairs(pairs, { ...NO_FILTER, ratio: wanted }))).toEqual([
      '13/39',
      '14/42',
      '15/45',
      '16/48',
      '17/51',
    ]);
    const near = filteredPairs(pairs, { ...NO_FILTER, ratio: { wanted: 3, tolerancePercent: 1 } });
    for (const { ratio } of near) expect(Math.abs(ratio / 3 - 1)).toBeLessThanOrEqual(0.01 + 1e-12);
    expect(names(near)).toEqual(['13/39', '14/42', '15/45', '16/48', '17/51']);
  });

  it('keep what a chain in hand fits', () => {
    const found = filteredPairs(pairs, { ...NO_FILTER, links: [112] });
    expect(found.length).toBeGreaterThan(3);
    expect(found.length).toBeLessThan(pairs.length);
    for (const { fitting } of found) expect(fitting).toContain(112);
  });

  it('keep what can be fitted, and what stays clear of the pivot', () => {
    const fitted = filteredPairs(pairs, { ...NO_FILTER, fits: true });
    expect(fitted.map((p) => p.frontTeeth)).not.toContain(13);
    expect(fitted.length).toBe(4 * 15);
    const leastGap = pair(15, 45).pivotGap ?? NaN;
    const clear = filteredPairs(pairs, { ...NO_FILTER, leastGap });
    expect(clear.length).toBeGreaterThan(0);
    expect(clear.length).toBeLessThan(pairs.length);
    for (const { pivotGap } of clear) expect(pivotGap).toBeGreaterThanOrEqual(leastGap);
  });
});

describe('order', () => {
  it('goes by the column, up and down, ties by teeth', () => {
    const rising = sortedPairs(pairs, 'antiSquat', 'rising').map((p) => p.antiSquat as number);
    expect(rising).toEqual([...rising].sort((a, b) => a - b));
    const falling = sortedPairs(pairs, 'ratio', 'falling');
    expect(names(falling)[0]).toBe('13/52');
    const threes = falling.filter((p) => p.ratio === 3);
    expect(names(threes)).toEqual(['13/39', '14/42', '15/45', '16/48', '17/51']);
  });

  it('puts what has no number last, both ways', () => {
    const mixed = [{ ...pair(13, 39), antiSquat: null }, pair(17, 51), pair(14, 42)];
    for (const direction of ['rising', 'falling'] as const)
      expect(sortedPairs(mixed, 'antiSquat', direction)[2].antiSquat).toBeNull();
  });
});

describe('the difference of two pairs', () => {
  it('is the one less the other, and nothing for the same ratio', () => {
    const difference = pairDifference(pair(13, 39), pair(17, 51));
    expect(difference.ratioPercent).toBe(0);
    expect(difference.antiSquat).toBeCloseTo(
      (pair(17, 51).antiSquat as number) - (pair(13, 39).antiSquat as number),
      12,
    );
    expect(pairDifference(pair(13, 39), pair(15, 46)).ratioPercent).toBeCloseTo(2.2222, 4);
    expect(pairDifference({ ...pair(13, 39), wheelbase: null }, pair(15, 46)).wheelbase).toBeNull();
  });

  it('names its cause: the chain’s torque about the pivot', () => {
    const words = pairWords(pair(13, 39), pair(17, 51), CHAIN, style);
    const { antiSquat, chainMoment } = pairDifference(pair(13, 39), pair(17, 51));
    expect(antiSquat).toBeLessThan(0);
    expect(chainMoment).toBeGreaterThan(0);
    expect(words).toBe(
      `Same ratio, less anti-squat (−${Math.abs(antiSquat ?? NaN).toFixed(1)}\u00a0points): on the gas the chain pulls the rear down harder.`,
    );
  });

  it('names the chain as working against the change when its torque goes the other way', () => {
    const from = pair(13, 39);
    const to = { ...pair(17, 51), antiSquat: (from.antiSquat as number) + 2 };
    expect(pairWords(from, to, CHAIN, { ...style, decimal: ',' })).toMatch(
      /^Same ratio, more anti-squat \(\+2,0\u00a0points\)\. The axle’s new place outweighs the chain, which pulls the rear down harder on the gas\.$/,
    );
    expect(pairWords(from, { ...to, chainMoment: from.chainMoment }, CHAIN, style)).toMatch(
      /\): the axle’s new place does that\.$/,
    );
  });

  it('gives a change that nobody notices its figure and no direction', () => {
    const from = pair(13, 39);
    const to = { ...pair(17, 51), antiSquat: (from.antiSquat as number) - 0.2 };
    expect(pairWords(from, to, CHAIN, style)).toBe(
      'Same ratio, almost the same anti-squat (−0.2\u00a0points).',
    );
    const near = { ...to, rearTeeth: 50, ratio: from.ratio * 1.004 };
    expect(pairWords(from, near, CHAIN, style)).toMatch(/^Almost the same ratio \(\+0\.4\u00a0%\), /);
  });

  it('tells a change too small for the usual digits as none', () => {
    const to = {
      ...pair(17, 51),
      antiSquat: (pair(13, 39).antiSquat as number) - 0.013,
      chainMoment: (pair(13, 39).chainMoment ?? NaN) + 0.2,
    };
    expect(pairWords(pair(13, 39), to, CHAIN, style)).toBe('Same ratio, almost the same anti-squat.');
  });

  it('says only the ratio where there is no anti-squat, and that it stays where it does', () => {
    const { antiSquat, chainMoment } = pair(13, 39);
    expect(pairWords(pair(13, 39), { ...pair(15, 46), antiSquat: absent('noMass') }, CHAIN, style)).toBe(
      'Shorter gearing (+2.2\u00a0%).',
    );
    expect(pairWords(pair(13, 39), { ...pair(15, 44), antiSquat, chainMoment }, CHAIN, style)).toBe(
      'Taller gearing (−2.2\u00a0%), same anti-squat.',
    );
  });
});

it('say what chain a pair takes and which way its axle moves, as the figures do', () => {
  const from = pair(15, 45);
  for (const to of pairs) {
    const text = pairAxleWords(from, to, CHAIN, style);
    if (to.links === null || to.axlePosition === null || from.axlePosition === null) {
      expect(text).toBe('');
      continue;
    }
    expect(text.includes('another chain')).toBe(to.links !== from.links);
    const moved = Number(to.axlePosition.toFixed(1)) - Number(from.axlePosition.toFixed(1));
    expect(text.includes(' back in its slot')).toBe(moved > 0.05);
    expect(text.includes(' forward in its slot')).toBe(moved < -0.05);
    const told = /moves (\d+\.\d)/u.exec(text)?.[1];
    expect(Number(told ?? 0)).toBeCloseTo(Math.abs(moved), 6);
  }
});

it('the least and the most anti-squat name every pair that reads so, and say nothing where all read alike', () => {
  const one = pair(15, 45);
  const at = (frontTeeth: number, rearTeeth: number, antiSquat: number) => ({
    ...one,
    frontTeeth,
    rearTeeth,
    antiSquat,
  });
  const metric = { system: 'metric', decimal: '.' } as const;
  const told = (...pairs: ReturnType<typeof at>[]): string =>
    squatEndsWords(pairs, metric).replace(/\s/gu, ' ');
  expect(told(at(14, 42, 96.52), at(15, 45, 96.48), at(16, 38, 86.4))).toBe(
    'Squats most on the gas: 16/38, anti-squat 86.4 %. Least: 14/42 and 15/45, 96.5 %.',
  );
  const many = [12, 13, 14, 15].map((teeth) => at(teeth, 45, 96.5));
  expect(told(at(16, 38, 86.4), ...many)).toBe(
    'Squats most on the gas: 16/38, anti-squat 86.4 %. Least: 4 pairs, 96.5 %.',
  );
  expect(told(at(14, 42, 96.52), at(16, 48, 96.3))).toBe(
    'All squat almost alike on the gas: anti-squat 96.3 % to 96.5 %.',
  );
  expect(told(...many)).toBe('');
  expect(told()).toBe('');
});
