/** Tests of which groups of dials are open. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../document/demo-bikes.ts';
import { newDocument } from '../document/document.ts';
import { FIRST_OPEN_DIALS, Preferences } from './preferences.svelte.ts';
import { Workbench } from './workbench.svelte.ts';

it('opens and folds groups of dials without touching the others', () => {
  const preferences = new Preferences();
  expect(preferences.dialsOpen('rideHeight')).toBe(true);
  expect(preferences.dialsOpen('gearing')).toBe(false);
  preferences.openDials(['gearing', 'load'], true);
  preferences.openDials(['rideHeight'], false);
  preferences.openDials(['load'], true);
  expect(preferences.data.openDials).toEqual(['gearing', 'load']);
});

it('opens the group of a dial that is asked for, once, and leaves it open', () => {
  const [{ bike, setup }] = DEMO_BIKES;
  const bench = new Workbench(newDocument(bike, setup));
  bench.showDial('leanDeg');
  bench.showDial('leanDeg');
  expect(bench.preferences.data.openDials).toEqual([...FIRST_OPEN_DIALS, 'riding']);
  bench.preferences.openDials(['riding'], false);
  bench.mode.change('edit');
  bench.mode.change('dials');
  expect(bench.preferences.dialsOpen('riding')).toBe(false);
});
