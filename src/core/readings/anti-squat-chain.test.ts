/** Tests of the reading antiSquatChain: the worked number. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { chainSlope } from '../drive/squat-slope.ts';
import { antiSquatChain } from './anti-squat-chain.ts';
import { absent } from './absent.ts';

it('of wheel 315, sprocket 113.8, run 40 above a pivot 570 ahead and load-transfer slope 0.4 is −48.56', () => {
  const on = stanceWith({
    chainSlope: chainSlope(570, 40, 315, 113.8),
    centre: { y: 560 },
    pose: { wheelbase: 1400 },
  });
  expect(antiSquatChain.read(on)).toBeCloseTo(-48.56, 2);
});

it('pulls the rear of a standing bike down while the run passes above the pivot', () => {
  expect(standing().pullLever).toBeGreaterThan(0);
  expect(antiSquatChain.read(standing())).toBeLessThan(0);
});

it('has no number without a mass', () => {
  expect(antiSquatChain.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
});
