/** Tests of variants: pinned, read beside the baseline, set again, kept through a reload. */
import { expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { newDocument } from '../../../tests/support/new-document.ts';
import { antiSquat } from '../../core/readings/anti-squat.ts';
import { finalDriveRatio } from '../../core/readings/final-drive-ratio.ts';
import { metricReading } from '../../core/readings/metric-reading.ts';
import { rake } from '../../core/readings/rake.ts';
import { trail } from '../../core/readings/trail.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import { setAdjuster } from '../../document/edits.ts';
import { Variants } from './variants.svelte.ts';
import { Workbench } from '../workbench.svelte.ts';

function opened() {
  const bench = new Workbench(newDocument(linkedBike, sprungSetup));
  const variants = new Variants(bench);
  variants.show('one');
  return { bench, variants };
}

const turn = (bench: Workbench, value: number): void =>
  bench.session.commit((from) => setAdjuster(from, 'shockLength', value), 'Shock length');

it('stand beside the baseline with the readings that each has by itself', () => {
  const { bench, variants } = opened();
  for (const value of [3, 6]) {
    turn(bench, value);
    variants.pin();
  }
  const columns = variants.columns([rake, trail]);
  expect(columns.map(({ name }) => name)).toEqual(['Baseline', 'A', 'B']);
  for (const [i, shockLength] of [0, 3, 6].entries()) {
    const on = standBike(linkedBike, { ...sprungSetup, shockLength }, bench.standing.state);
    if (!on.ok) throw new Error(on.reason);
    for (const [k, reading] of [rake, trail].entries())
      expect(columns[i].values[k]).toBeCloseTo(metricReading(reading, on) as number, 6);
  }
});

it('hold three sprocket pairs side by side, each with its ratio and its squat', () => {
  const { bench, variants } = opened();
  const pairs = [
    [15, 45],
    [16, 48],
    [16, 45],
  ] as const;
  for (const [front, rear] of pairs) {
    bench.session.commit((from) => setAdjuster(from, 'frontTeeth', front), 'Front sprocket');
    bench.session.commit((from) => setAdjuster(from, 'rearTeeth', rear), 'Rear sprocket');
    variants.pin();
  }
  const columns = variants.columns([finalDriveRatio, antiSquat]).slice(1);
  const [ratios, squats] = [0, 1].map((row) => columns.map(({ values }) => values[row]));
  for (const [i, [front, rear]] of pairs.entries()) expect(ratios[i]).toBeCloseTo(rear / front, 9);
  expect(new Set(squats).size).toBe(3);
  expect(squats.every((squat) => typeof squat === 'number')).toBe(true);
});

it('are set again as one undo entry, up to four of them, each with a letter of its own', () => {
  const { bench, variants } = opened();
  for (const value of [1, 2, 3, 4]) {
    turn(bench, value);
    variants.pin();
  }
  expect(variants.hasRoom).toBe(false);
  variants.pin();
  expect(variants.pinned.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D']);
  variants.set('B');
  expect(bench.session.document.setup.shockLength).toBe(2);
  expect(bench.session.lastLabel).toBe('Set as variant B');
  bench.undo();
  expect(bench.session.document.setup.shockLength).toBe(4);
  variants.unpin('A');
  turn(bench, 9);
  variants.pin();
  expect(variants.pinned.map(({ letter, setup }) => [letter, setup.shockLength])).toEqual([
    ['B', 2],
    ['C', 3],
    ['D', 4],
    ['A', 9],
  ]);
});

it('belong to their bike', () => {
  const { variants } = opened();
  variants.pin();
  variants.show('two');
  expect(variants.pinned).toEqual([]);
  variants.pin();
  variants.unpin('A');
  variants.show('one');
  expect(variants.pinned).toHaveLength(1);
});
