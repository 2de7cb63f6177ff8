/** Every word for a change agrees with the figures before and after, on whichever side of zero they lie. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../tests/support/cases.ts';
import { plainBike, plainSetup, withFrame, withSwingarm } from '../../tests/support/plain-bike.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { changeWord, type ChangeWords } from '../core/readings/change-words.ts';
import { metricReading } from '../core/readings/metric-reading.ts';
import { standBike, type StandingBike } from '../core/riding/stand-bike.ts';
import { RIDE_COLUMNS } from './ride/ride-columns.ts';
import { sprocketColumns } from './drive/sprocket-columns.ts';

/** What a figure does above zero only, and what one does below zero only. */
const ABOVE =
  /held (up|down)|holds up|^steeper|^flatter|steadier|falls into turns|travel left|room over|^rises (more|less) toward|squats|^rear rises|^springs push|^rear (stiffer|softer)/u;
const BELOW =
  /pull(s|ed) down|pulls off|rises (less|more) (above|in)|^axle rises|falls (less|more) toward|lifted|beyond coil-bound|bends|reaches|hold the wheel up|gives way|^rear drops|negative/u;
const GROWS = /\bmore\b|^steeper|steadier|further beyond|reaches further|push harder|stiffer|^more /u;
const CROSSES = /\bnow\b|no longer/u;

/** Those whose figure grows as what it speaks of shrinks. */
const INVERSE = new Set(['squatRatio']);

const agrees = (word: string, before: number, after: number): boolean => {
  if (CROSSES.test(word)) return before * after < 0;
  if (ABOVE.test(word)) return before >= 0 && after >= 0 && GROWS.test(word) === after > before;
  if (BELOW.test(word)) {
    const depth = (figure: number): number => Math.max(0, -figure);
    return Math.min(before, after) < 0 && GROWS.test(word) === depth(after) > depth(before);
  }
  return true;
};

const WORDED: readonly (readonly [string, ChangeWords])[] = [
  ...READINGS.filter(({ key }) => !INVERSE.has(key)).map((reading) => [reading.key, reading] as const),
  // Of a rake the smaller figure is the steeper axis.
  ...RIDE_COLUMNS.filter(({ key }) => key !== 'rake').map(
    (column) => [`ride table, ${column.key}`, column] as const,
  ),
  ...sprocketColumns('chain').map((column) => [`sprockets, ${column.key}`, column] as const),
];

const figure = fc.integer({ min: -50, max: 50 });
const tenth = (least: number, most: number) =>
  fc.integer({ min: 10 * least, max: 10 * most }).map((tenths) => tenths / 10);

/** Bikes whose swingarm, runs, squat line and trail lie on either side of zero. */
const stances = fc
  .record({
    armAngle: tenth(-20, 20),
    shaftUp: tenth(-120, 60),
    clampOffset: tenth(0, 160),
    rearTeeth: fc.integer({ min: 34, max: 56 }),
  })
  .map(({ armAngle, shaftUp, ...setup }): StandingBike | null => {
    const { countershaft } = plainBike.frame;
    const shaft = { x: countershaft.x, y: countershaft.y + shaftUp };
    const bike = withFrame(withSwingarm(plainBike, { toppedOutAngleDeg: armAngle }), { countershaft: shaft });
    const found = standBike(bike, { ...plainSetup, ...setup }, 'toppedOut');
    return found.ok ? found : null;
  });

describe('the word for a change', () => {
  it.each(WORDED)('of %s agrees with the figures', (_, words) => {
    fc.assert(
      fc.property(figure, figure, (before, after) => {
        fc.pre(before !== after);
        const word = changeWord(words, before, after);
        expect(agrees(word, before, after), `${before} to ${after}: ${word}`).toBe(true);
      }),
      { numRuns: cases(200) },
    );
  });

  it('of the squat ratio agrees with the pull that its inverse has', () => {
    const ratio = READINGS.find(({ key }) => key === 'squatRatio');
    if (ratio === undefined) throw new Error('no squat ratio');
    expect(changeWord(ratio, 1, 2)).toBe('held up less on the gas');
    expect(changeWord(ratio, -5, -2)).toBe('pulled down more on the gas');
    expect(changeWord(ratio, -2, -5)).toBe('pulled down less on the gas');
    expect(changeWord(ratio, 5, -5)).toBe('now pulled down on the gas');
    expect(changeWord(ratio, -5, 5)).toBe('no longer pulled down on the gas');
  });

  it('agrees for every reading between any two bikes, and figures below zero come up among them', () => {
    const below = new Set<string>();
    fc.assert(
      fc.property(stances, stances, (from, to) => {
        fc.pre(from !== null && to !== null);
        if (from === null || to === null) return;
        for (const reading of READINGS.filter(({ key }) => !INVERSE.has(key))) {
          const [before, after] = [metricReading(reading, from), metricReading(reading, to)];
          if (typeof before !== 'number' || typeof after !== 'number' || before === after) continue;
          if (after < 0) below.add(reading.key);
          const word = changeWord(reading, before, after);
          expect(agrees(word, before, after), `${reading.key} ${before} to ${after}: ${word}`).toBe(true);
        }
      }),
      { numRuns: cases(100) },
    );
    for (const key of [
      'trail',
      'swingarmAngle',
      'upperRunAngle',
      'squatAngle',
      'antiSquat',
      'antiSquatChain',
    ])
      expect([...below]).toContain(key);
  });
});
