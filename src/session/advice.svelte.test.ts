/** Tests of what a rider is warned of while the bike is changed. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { setAdjuster } from '../document/edits.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { lowestUpright } from '../core/standing/touch-height.ts';
import { RIDE_STATES, type RideStateKey } from '../core/riding/states/all-ride-states.ts';
import { standBike } from '../core/riding/stand-bike.ts';
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

it('a warning of another ride state comes last, once, and names that state', async () => {
  const { bike, setup } = first;
  const lowestIn = (state: RideStateKey) => {
    const on = standBike(bike, setup, state);
    return on.ok ? (lowestUpright(on) ?? null) : null;
  };
  const rested = lowestIn('riderUp');
  if (rested === null) throw new Error('The first bike has measured parts.');
  const heights = RIDE_STATES.map(({ key }) => lowestIn(key)?.height ?? Infinity);
  expect(Math.min(...heights)).toBeLessThan(rested.height - 5);
  // Lowered so far that only a ride state deeper than at rest puts the part on the ground.
  const place = bike.frame.touching[rested.key];
  const down = (rested.height + Math.min(...heights)) / 2;
  const touching = { ...bike.frame.touching, [rested.key]: { ...place, y: place.y - down } };
  const low = { ...first, bike: { ...bike, frame: { ...bike.frame, touching } } };
  const bench = new Workbench({ ...low, baseline: { ...first.baseline, bike: low.bike } });
  expect(bench.advice.warnings).toEqual([]);
  await bench.advice.fetch();
  const told = bench.advice.warnings.filter(({ key }) => key === 'partOnGround');
  expect(told).toHaveLength(1);
  const states = RIDE_STATES.map(({ label }) => label.toLowerCase());
  expect(states.some((label) => told[0].lead.endsWith(`, ${label}`))).toBe(true);
  expect(told[0].lead).toMatch(/^Ground clearance −/);
});

it('no demonstration bike is warned of in any ride state', async () => {
  for (const demo of DEMO_BIKES) {
    const bench = new Workbench(demo);
    await bench.advice.fetch();
    expect(bench.advice.warnings, demo.bike.name).toEqual([]);
  }
});
