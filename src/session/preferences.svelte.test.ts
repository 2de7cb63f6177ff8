/** Tests of which groups of adjusters are open. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { newDocument } from '../../tests/support/new-document.ts';
import { FIRST_OPEN_ADJUSTERS, Preferences } from './preferences.svelte.ts';
import { Workbench } from './workbench.svelte.ts';

it('opens and folds groups of adjusters without touching the others', () => {
  const preferences = new Preferences();
  expect(preferences.adjustersOpen('rideHeight')).toBe(true);
  expect(preferences.adjustersOpen('gearing')).toBe(false);
  preferences.openAdjusters(['gearing', 'load'], true);
  preferences.openAdjusters(['rideHeight'], false);
  preferences.openAdjusters(['load'], true);
  expect(preferences.data.openAdjusters).toEqual(['gearing', 'load']);
});

it('opens the group of an adjuster that is asked for, once, and leaves it open', () => {
  const [{ bike, setup }] = DEMO_BIKES;
  const bench = new Workbench(newDocument(bike, setup));
  bench.showAdjuster('leanDeg');
  bench.showAdjuster('leanDeg');
  expect(bench.preferences.data.openAdjusters).toEqual([...FIRST_OPEN_ADJUSTERS, 'riding']);
  bench.preferences.openAdjusters(['riding'], false);
  bench.changeMode('edit');
  bench.changeMode('adjusters');
  expect(bench.preferences.adjustersOpen('riding')).toBe(false);
});
