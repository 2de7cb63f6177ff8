/** Tests of what a machine carries. */
import { describe, expect, it } from 'vitest';
import { reached, sprung } from '../../../tests/support/plain-springs.ts';
import { made, standing } from '../../../tests/support/standing.ts';
import { alone, sprungFromWhole } from './loads.ts';
import { stance } from '../standing/stance.ts';

const plain = made();

it('with nobody and nothing on it a bike keeps its own mass, its fuel and its springs', () => {
  const bike = sprung();
  const left = alone(bike);
  expect(left.machine.carried.map(({ key, mass }) => [key, mass])).toEqual([
    ['sprung', 160],
    ['fuel', 0],
  ]);
  expect(left.fork).toBe(bike.fork);
});

describe('what the springs carry', () => {
  it('is the whole bike less its unsprung parts, back in frame coordinates', () => {
    const parts = { ...plain, carried: plain.carried.filter(({ aboard }) => !aboard) };
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
