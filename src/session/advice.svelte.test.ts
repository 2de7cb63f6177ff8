/** Tests of what a rider is warned of while the bike is changed. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { setAdjuster } from '../document/edits.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { Workbench } from './workbench.svelte.ts';

const [first] = DEMO_BIKES;
type NumberKey = 'shockLength' | 'frontTeeth' | 'chainSlack';

async function opened(): Promise<Workbench> {
  const bench = new Workbench(first);
  await bench.advice.fetch();
  return bench;
}

function turn(bench: Workbench, key: NumberKey, value: Setup[NumberKey]): void {
  bench.session.commit((from) => setAdjuster(from, key, value), key);
}

const isTight = (bench: Workbench): boolean =>
  bench.advice.warnings.some(({ key }) => key === 'chainBarTight');

it('a longer shock does not make a chain bar tight that stays as it was, slack set anew after it does', async () => {
  const bench = await opened();
  turn(bench, 'shockLength', 10);
  expect(isTight(bench)).toBe(false);
  turn(bench, 'frontTeeth', first.setup.frontTeeth - 1);
  expect(isTight(bench)).toBe(true);
  turn(bench, 'chainSlack', 60);
  expect(isTight(bench)).toBe(false);
});

it('a chain that was bar tight at the baseline is warned of whatever else changes', async () => {
  const tight = { ...first, setup: { ...first.setup, chainSlack: 5 } };
  const bench = new Workbench({ ...tight, baseline: { ...first.baseline, setup: tight.setup } });
  await bench.advice.fetch();
  expect(isTight(bench)).toBe(true);
  turn(bench, 'shockLength', 3);
  expect(isTight(bench)).toBe(true);
});

it('what a hand holds is not searched until it lets go', async () => {
  const bench = await opened();
  const { session } = bench;
  session.preview((from) => setAdjuster(from, 'chainSlack', 5));
  expect(isTight(bench)).toBe(false);
  turn(bench, 'chainSlack', 5);
  expect(isTight(bench)).toBe(true);
});
