/** Tests of the reading frontAxleHeight: half the outside diameter of the front tyre. */
import { expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { frontAxleHeight } from './front-axle-height.ts';

it('on a 120/70-17 is 299.9', () => {
  const on = standing(plainBike, { ...plainSetup, frontTyre: { code: '120/70-17' } });
  expect(frontAxleHeight.read(on)).toBeCloseTo(299.9, 10);
});
