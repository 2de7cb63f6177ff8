/** Tests of the reading motionRatio: the worked number, and the table's own slope. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { standing } from '../../../tests/support/standing.ts';
import { motionRatio } from './motion-ratio.ts';

it('of a shock that acts with 228 about a pivot 570 ahead is 0.4', () => {
  const { arm } = standing();
  const on = stanceWith({ arm: { ...arm, lever: 228 }, pose: { pivot: { x: 570 } } });
  expect(motionRatio.read(on)).toBeCloseTo(0.4, 12);
});

it('is that of the travel as counted, but for the frame’s pitch', () => {
  const on = standing();
  expect(motionRatio.read(on)).toBeCloseTo(on.arm.motionRatio, 2);
});
