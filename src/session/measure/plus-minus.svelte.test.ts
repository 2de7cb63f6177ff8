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

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Longer than anything here waits, ms. */
const LONG = 2000;

function quiet(): void {
  flushSync();
  vi.advanceTimersByTime(LONG);
  flushSync();
}

it('stands beside each measured reading and its change, follows the adjusters, and goes when it is not wanted', () => {
  const bench = new Workbench(FIRST_DEMO);
  bench.stateOf(PlusMinus);
  const tape = bench.stateOf(Tape);
  tape.fitter = fitter;
  const beside = (key: string) => bench.standing.rows.find(({ reading }) => reading.key === key)?.plusMinus;
  bench.ride('toppedOut');
  quiet();
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
  quiet();
  // The bike on the page is not yet the one that was measured.
  expect(beside('rake')).toBeNull();
  tape.apply('Bike as measured');
  bench.session.commit((from) => succeed(setBaseline(from)), 'Baseline');
  quiet();
  const measured = tape.found?.readings;
  expect(measured?.rake.fixed).toBe(true);

  bench.ride('travelByHand');
  quiet();
  expect(beside('rake')?.value).toMatch(/^24\.50 ± 0\.\d+°$/);
  expect(beside('trail')?.value).toMatch(/^[\d.]+ ±\s[\d.]+\smm$/);
  // Nobody measured where the pivot is.
  expect(beside('pivotHeight')).toEqual({
    value: expect.stringMatching(/mm$/) as string,
    change: ' · ± not fixed',
  });

  bench.session.commit((from) => setAdjuster(from, 'forkTubes', from.setup.forkTubes + 8), 'Fork tubes');
  flushSync();
  // What was worked out for another setup goes at once.
  expect(beside('rake')).toBeNull();
  quiet();
  // What was measured wrong is wrong before and after.
  expect(beside('trail')).toEqual({
    value: expect.stringMatching(/^[\d.]+ ±\s1\.9\smm$/) as string,
    change: ' · change sure to its last digit',
  });

  bench.preferences.change({ plusMinus: false });
  quiet();
  expect(beside('rake')).toBeNull();
});
