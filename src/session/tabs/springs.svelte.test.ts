/** Tests of fitting springs from stock to the bike on the page. */
import { expect, it } from 'vitest';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { Springs } from './springs.svelte.ts';
import { Workbench } from '../workbench.svelte.ts';

it('a pair of unlike rates goes one into each fork leg, sags as promised, and one undo takes both out', () => {
  const bench = new Workbench(DEMO_BIKES[0]);
  const springs = new Springs(bench);
  const before = bench.session.document;
  springs.setRates('front', [8, 9, 10, 11]);
  const found = springs.choices('front');
  if (found === null || !found.ok) throw new Error('no choices');
  const pair = found.choices.find(({ otherRate, inRange }) => otherRate !== undefined && inRange);
  if (pair === undefined) throw new Error('no pair');
  springs.fitSpring('front', { kind: 'coil', ...pair });
  const { bike, setup } = bench.session.document;
  expect(setup.forkSpringRate).toBe(pair.rate);
  expect(bike.fork.otherLeg).toMatchObject({ rate: pair.otherRate, preload: pair.preload });
  // The rear keeps its own spring here, which the promise leaves out, and the bike pitches by it.
  expect(Math.abs((springs.now?.rider.front ?? NaN) - pair.riderSag)).toBeLessThan(1);
  bench.session.undo();
  expect(bench.session.document).toBe(before);
});
