/** Tests of the reading chainSliderClearance: the worked number, with and without a guide. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, withFrame } from '../../../tests/support/plain-bike.ts';
import { chainSliderClearance } from './chain-slider-clearance.ts';

it('of a run 40 above the pivot with a guide of 32 is 8', () => {
  expect(chainSliderClearance.read(stanceWith({ upperRunLever: 40, machine: { guideRadius: 32 } }))).toBe(8);
});

it('is measured from the pivot centre without a guide', () => {
  expect(chainSliderClearance.read(stanceWith({ upperRunLever: 40, machine: { guideRadius: null } }))).toBe(
    40,
  );
});

it('is negative on a standing bike whose chain bends over its guide', () => {
  const on = standing(withFrame(plainBike, { guideRadius: 45 }));
  expect(chainSliderClearance.read(on)).toBeLessThan(0);
  expect(on.pullLever).toBe(45);
});
