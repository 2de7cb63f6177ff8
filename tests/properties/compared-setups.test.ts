/** Whatever two setups of a bike are: their table is what each reads to the last digit, and its changes taken over one by one lead from one to the other. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { adjustersBetween, compareSetups, takeAdjuster } from '../../src/core/effects/compare-setups.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { waysBySize } from '../../src/core/readings/change-words.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { writeNumber, type NumberStyle } from '../../src/core/units/number-style.ts';
import { compareReadings, settingRows } from '../../src/words/kept/compare-words.ts';
import { cases } from '../support/cases.ts';
import { turnedDemo } from '../support/turned-demos.ts';

const STYLES: readonly NumberStyle[] = [
  { system: 'metric', decimal: '.' },
  { system: 'inch', decimal: '.' },
];
/** More digits than any figure is written with. */
const DIGITS = 6;

/** The first figure in a text, in its smallest steps. */
function stepsIn(text: string): number {
  const found = /([+−]?)([\d.]+)/.exec(text);
  if (found === null) throw new Error(`no figure in ${text}`);
  return Math.round((found[1] === '−' ? -1 : 1) * Number(found[2]) * 10 ** DIGITS);
}

it('every difference is the one between the two figures beside it, signed and in the word of its sign', () => {
  let differences = 0;
  let worded = 0;
  fc.assert(
    fc.property(turnedDemo, fc.constantFrom(...STYLES), ({ bike, from, to }, style) => {
      const [before, after] = [from, to].map((setup) => standBike(bike, setup, 'riderUp'));
      fc.pre(before.ok && after.ok);
      if (!before.ok || !after.ok) return;
      const { rows, same } = compareReadings(READINGS, [before, after], 0, style);
      expect(rows.length + same).toBe(READINGS.length);
      for (const reading of READINGS) {
        const [was, is] = [metricReading(reading, before), metricReading(reading, after)];
        const row = rows.find(({ key }) => key === reading.key);
        if (typeof was !== 'number' || typeof is !== 'number') {
          expect(row?.cells[1].change ?? '').toBe('');
          continue;
        }
        const [writtenBefore, writtenAfter] = [was, is].map(
          (value) => writeNumber(value, reading.quantity, style).text,
        );
        if (writtenBefore === writtenAfter) {
          expect(row).toBeUndefined();
          continue;
        }
        expect(row?.cells.map(({ text }) => text)).toEqual([writtenBefore, writtenAfter]);
        const change = row?.cells[1].change ?? '';
        const steps = stepsIn(change);
        expect(stepsIn(writtenBefore) + steps).toBe(stepsIn(writtenAfter));
        const { more, less } = waysBySize(reading, was, is);
        expect(change.startsWith(steps > 0 ? '▲ +' : '▼ −')).toBe(true);
        // A change that nobody notices has its figure only.
        if (change.includes(', ')) {
          expect(change.endsWith(`, ${steps > 0 ? more : less}`)).toBe(true);
          worded += 1;
        }
        differences += 1;
      }
    }),
    { numRuns: cases(200) },
  );
  expect(differences).toBeGreaterThan(1000);
  expect(worded).toBeGreaterThan(differences / 2);
});

it('all changes taken over one by one, in any order, are the other setup exactly, and every row shows its change', () => {
  let changes = 0;
  fc.assert(
    fc.property(
      turnedDemo,
      fc.constantFrom(...STYLES),
      fc.infiniteStream(fc.nat()),
      ({ bike, from, to }, style, draws) => {
        const { differing } = compareSetups({ bike, setup: from }, [{ bike, setup: to }]);
        for (const { cells } of settingRows(differing, [from, to], bike.drive.kind, style))
          expect(cells[0]?.text).not.toBe(cells[1]?.text);
        let at = from;
        for (let left = adjustersBetween(at, to); left.length > 0; left = adjustersBetween(at, to)) {
          const key = left[Number(draws.next().value) % left.length];
          at = takeAdjuster(at, to, key);
          expect(at[key]).toEqual(to[key]);
          expect(adjustersBetween(at, to).length).toBeLessThan(left.length);
          changes += 1;
        }
        if (differing.length > 0) expect(at).toBe(to);
      },
    ),
    { numRuns: cases(500) },
  );
  expect(changes).toBeGreaterThan(500);
});
