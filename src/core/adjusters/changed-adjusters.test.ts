/** Tests of telling which adjusters differ from a baseline. */
import { expect, it } from 'vitest';
import { plainSetup } from '../../../tests/support/plain-bike.ts';
import { isAdjusterChanged } from './changed-adjusters.ts';
import type { AdjusterKey, Setup } from './setup.ts';

function changed(setup: Setup, baseline: Setup): string[] {
  const keys = Object.keys(baseline) as AdjusterKey[];
  return keys.filter((key) => isAdjusterChanged(key, setup, baseline));
}

it('counts an adjuster with another value, but not a tyre with the same figures in another object', () => {
  expect(changed({ ...plainSetup, frontTyre: { ...plainSetup.frontTyre } }, plainSetup)).toEqual([]);
  expect(changed({ ...plainSetup, forkTubes: plainSetup.forkTubes + 1 }, plainSetup)).toEqual(['forkTubes']);
});

it('tells tyres apart by what is given: a code, a diameter or a circumference', () => {
  const tyres: readonly Setup['rearTyre'][] = [
    { code: '120/70-17' },
    { code: '190/55-17' },
    { diameter: 600 },
    { diameter: 601 },
    { circumference: 600 },
    { circumference: 1885 },
  ];
  for (const one of tyres)
    for (const other of tyres)
      expect(changed({ ...plainSetup, rearTyre: { ...one } }, { ...plainSetup, rearTyre: other })).toEqual(
        one === other ? [] : ['rearTyre'],
      );
});

it('counts the chain and not the axle that follows it, and the axle again once the chain is off', () => {
  const moved = { ...plainSetup, axlePosition: plainSetup.axlePosition + 2 };
  expect(changed({ ...moved, chainLinks: 112 }, plainSetup)).toEqual(['chainLinks']);
  expect(changed({ ...moved, chainLinks: 112 }, { ...plainSetup, chainLinks: 112 })).toEqual([]);
  expect(changed(moved, plainSetup)).toEqual(['axlePosition']);
});
