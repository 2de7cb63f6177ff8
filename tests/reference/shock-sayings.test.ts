/** What mechanics say about the shock's length, tried on a linkage of usual leverage. */
import { expect, it } from 'vitest';
import { MM_PER_INCH } from '../../src/core/units/convert.ts';
import { ARM_LENGTH, rockerToArm } from '../support/rear-layouts.ts';
import { madeRear, rearAt } from '../support/rear-made.ts';

// Source: common practice, no source.
it('half an inch at the shock is about an inch and a half at the wheel of a linkage with a leverage near 3', () => {
  const of = madeRear(rockerToArm);
  const hanging = 1 / rearAt(of, 0).motionRatio;
  expect(hanging).toBeGreaterThan(2.7);
  expect(hanging).toBeLessThan(3.4);
  const longer = madeRear(rockerToArm, { shockLength: MM_PER_INCH / 2 });
  const drop = ARM_LENGTH * (longer.toppedOutSine - of.toppedOutSine);
  expect(drop / MM_PER_INCH).toBeGreaterThan(1.35);
  expect(drop / MM_PER_INCH).toBeLessThan(1.8);
});
