/** Tests of what a machine carries. */
import { describe, expect, it } from 'vitest';
import { reached, sprung } from '../../../tests/support/plain-springs.ts';
import { made, standing } from '../../../tests/support/standing.ts';
import { alone, sprungFromWhole } from './loads.ts';
import { stance } from '../standing/stance.ts';

const plain = made();
it('a bike alone has nobody and nothing on it, on the same springs', () => {
  const bike = sprung();
  expect(alone(bike).machine).toMatchObject({ riderMass: 0, passengerMass: 0, loadMass: 0, sprungMass: 160 });
  expect(alone(bike).fork).toBe(bike.fork);
});

describe('what the springs carry', () => {
  it('is the whole bike less its unsprung parts, back in frame coordinates', () => {
    const parts = { ...plain, riderMass: 0, loadMass: 0 };
    const on = reached(stance(parts, { front: 30, rear: 50 }));
    const found = reached(sprungFromWhole(on, on.mass, on.centre.x, on.centre.y));
    expect(found.mass).toBeCloseTo(160, 10);
    expect(found.centre.x).toBeCloseTo(190, 9);
    expect(found.centre.y).toBeCloseTo(120, 9);
  });

  it('is refused when the unsprung parts weigh as much', () => {
    expect(sprungFromWhole(standing(), 38, 700, 500)).toMatchObject({
      reason: 'unsprungTooHeavy',
      found: 38,
    });
    expect(sprungFromWhole(standing(), 200, NaN, 500)).toMatchObject({ reason: 'inputNotANumber' });
  });
});
