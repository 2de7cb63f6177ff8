/** Tests of the ± beside the readings of a measured bike. */
import { flushSync } from 'svelte';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { FIRST_DEMO } from '../../document/demos/first-demo.ts';
import { setAdjuster, setBaseline } from '../../document/edits.ts';
import { succeed } from '../../core/numeric/result.ts';
import { Workbench } from '../workbench.svelte.ts';
import { PlusMinus } from './plus-minus.svelte.ts';
import * as fitter from './tape-fit.ts';
import { Tape } from './tape.svelte.ts';
import '../../workers/run-measuring.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Longer than anything here waits, ms. */
const LONG = 2000;

async function quiet(): Promise<void> {
  flushSync();
  await vi.advanceTimersByTimeAsync(LONG);
  // Where there is no thread the answer comes a few turns later.
  for (let turn = 0; turn < 50; turn++) await Promise.resolve();
  flushSync();
}

it('stands beside each measured reading and its change, follows the adjusters, and goes when it is not wanted', async () => {
  const bench = new Workbench(FIRST_DEMO);
  bench.stateOf(PlusMinus);
  const tape = bench.stateOf(Tape);
  tape.fitter = fitter;
  const beside = (key: string) => bench.standing.rows.find(({ reading }) => reading.key === key)?.plusMinus;
  bench.ride('toppedOut');
  await quiet();
  expect(beside('wheelbase')).toBeNull();

  for (const [kind, parts, figure] of [
    ['horizontal', ['rearAxle', 'frontAxle'], '1450'],
    ['angle', ['forkLeg'], '24.5'],
    ['axleHeight', ['frontWheel'], '300'],
    ['axleHeight', ['rearWheel'], '315'],
    ['offset', [], '35'],
  ] as const) {
    tape.add(kind);
    tape.change(tape.rows.length - 1, { parts, figure }, 'row');
  }
  await quiet();
  // The bike on the page is not yet the one that was measured.
  expect(beside('rake')).toBeNull();
  tape.apply('Bike as measured');
  bench.session.commit((from) => succeed(setBaseline(from)), 'Baseline');
  await quiet();
  const measured = tape.found?.readings;
  expect(measured?.rake.fixed).toBe(true);

  bench.ride('travelByHand');
  await quiet();
  // So do the points on the side view, in words and outlines.
  const spreads = bench.drawing.spreads();
  expect(spreads?.shapes.length).toBeGreaterThan(1);
  expect(spreads?.label.text).toMatch(/^± of points/);
  const asked = [{ setup: bench.session.history.present.setup, travel: { front: 0, rear: 0 } }];
  expect(await bench.standing.bandAlong?.('finalDriveRatio', 'toppedOut', asked)).toEqual([0]);
  expect(beside('rake')?.value).toMatch(/^24\.50 ± 0\.\d+°$/);
  expect(beside('trail')?.value).toMatch(/^[\d.]+ ±\s[\d.]+\smm$/);
  // The word on the side view has as many digits as the reading beside it, and no more.
  const rake = { key: 'rake', quantity: 'angle', place: 'front', read: () => 0 } as const;
  expect(bench.drawing.figureText(24.5, rake)).toBe(beside('rake')?.value.replace(/ ± [\d.]+/, ''));
  const trail = { key: 'trail', quantity: 'length', place: 'front', read: () => 0 } as const;
  expect(bench.drawing.figureText(101.26, trail)).toBe('101.3\u00a0mm');
  const pivot = { key: 'pivotHeight', quantity: 'length', place: 'rear', read: () => 0 } as const;
  expect(bench.drawing.figureText(375.5, pivot)).toBeNull();
  // Nobody measured where the pivot is.
  expect(beside('pivotHeight')).toEqual({
    value: expect.stringMatching(/mm$/) as string,
    error: null,
    change: ' · ± not fixed',
  });

  bench.session.commit((from) => setAdjuster(from, 'forkTubes', from.setup.forkTubes + 8), 'Fork tubes');
  flushSync();
  // What was worked out for another setup goes at once.
  expect(beside('rake')).toBeNull();
  await quiet();
  // What was measured wrong is wrong before and after.
  expect(beside('trail')).toEqual({
    value: expect.stringMatching(/^[\d.]+ ±\s1\.9\smm$/) as string,
    error: expect.stringMatching(/^±\s1\.9\smm$/) as string,
    change: ' · change sure to its last digit',
  });
  const byState = await bench.standing.spreadsByState?.(bench.session.history.present.setup);
  expect(byState?.travelByHand.trail).toBeCloseTo(0.95, 1);
  expect(byState?.riderUp.trail).toBeGreaterThan(0.95);
  expect(byState?.riderUp.frontWheelLoad).toBeUndefined();

  bench.preferences.change({ plusMinus: false });
  await quiet();
  expect(beside('rake')).toBeNull();
  // One switch takes them all away.
  expect(bench.drawing.spreads()).toBeNull();
  expect(bench.standing.bandAlong).toBeNull();
  // A setup sheet keeps it all the same.
  expect(bench.standing.spreadsByState).not.toBeNull();
});
