/** Tests of the reading rearAxleHeight: half the outside diameter of the rear tyre. */
import { expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { rearAxleHeight } from './rear-axle-height.ts';

it('on a 180/55-17 is 314.9', () => {
  const on = standing(plainBike, { ...plainSetup, rearTyre: { code: '180/55-17' } });
  expect(rearAxleHeight.read(on)).toBeCloseTo(314.9, 10);
});
