/** Tests of what a machine carries. */
import { describe, expect, it } from 'vitest';
import { reached, sprung } from '../../../tests/support/plain-springs.ts';
import { made, standing } from '../../../tests/support/standing.ts';
import { alone, loaded, NO_LOADS, sprungFromWhole, together, withLoads, type Resting } from './loads.ts';
import { stance } from '../standing/stance.ts';

const plain = made();
const passenger: Resting = { mass: 60, mark: { x: -250, y: 460 }, height: 250 };
const bags: Resting = { mass: 20, mark: { x: -400, y: 300 }, height: 100 };

describe('loads', () => {
  it('weigh together as they do one by one, in every posture', () => {
    const one = together([passenger, bags]);
    expect(one.mass).toBe(80);
    const travel = { front: 50, rear: 20 };
    const both = reached(stance(reached(loaded(plain, { ...NO_LOADS, others: [passenger, bags] })), travel));
    const singly = [passenger, bags].map((each) =>
      reached(stance(reached(loaded(plain, { ...NO_LOADS, others: [each] })), travel)),
    );
    const empty = reached(stance(reached(loaded(plain, NO_LOADS)), travel));
    const moment = (on: typeof empty, key: 'x' | 'y') => on.mass * on.centre[key];
    for (const key of ['x', 'y'] as const) {
      const sum = moment(singly[0], key) + moment(singly[1], key) - moment(empty, key);
      expect(moment(both, key)).toBeCloseTo(sum, 6);
    }
    expect(together([])).toEqual({ mass: 0, mark: { x: 0, y: 0 }, height: 0 });
  });

  it('move the centre with the rider, who leans forward and back on the seat', () => {
    const rider = { mass: 80, height: 200, forward: 0 };
    const at = (forward: number) =>
      reached(
        stance(reached(loaded(plain, { ...NO_LOADS, rider: { ...rider, forward } })), { front: 0, rear: 0 }),
      );
    const { mass, pose } = at(0);
    expect(at(60).centre.x - at(0).centre.x).toBeCloseTo((80 * 60 * pose.cos) / mass, 9);
    expect(at(-60).centre.x).toBeLessThan(at(0).centre.x);
  });

  it('take fuel as a part of what the springs carry', () => {
    const full = reached(loaded(plain, { ...NO_LOADS, fuel: { mass: 15, centre: { x: 150, y: 350 } } }));
    expect(full.sprungMass).toBe(plain.sprungMass + 15);
    expect(full.sprungX).toBeCloseTo((160 * 190 + 15 * 150) / 175, 10);
    expect(full.sprungY).toBeCloseTo((160 * 120 + 15 * 350) / 175, 10);
  });

  it('are refused below zero and as no number', () => {
    const rider = { mass: 80, height: 200, forward: 0 };
    expect(loaded(plain, { ...NO_LOADS, rider: { ...rider, mass: -1 } })).toMatchObject({
      reason: 'massNegative',
      found: -1,
    });
    expect(loaded(plain, { ...NO_LOADS, others: [{ ...bags, mass: NaN }] })).toMatchObject({
      reason: 'inputNotANumber',
    });
    for (const wrong of [
      { ...NO_LOADS, rider: { ...rider, forward: NaN } },
      { ...NO_LOADS, rider: { ...rider, height: Infinity } },
      { ...NO_LOADS, others: [{ ...bags, mark: { x: NaN, y: 0 } }] },
      { ...NO_LOADS, fuel: { mass: 5, centre: { x: 0, y: NaN } } },
    ])
      expect(loaded(plain, wrong)).toMatchObject({ reason: 'inputNotANumber' });
  });

  it('can be taken off, and changed, without touching the springs', () => {
    const bike = sprung();
    expect(alone(bike).machine).toMatchObject({ riderMass: 0, loadMass: 0, sprungMass: 160 });
    const two = reached(withLoads(bike, { ...NO_LOADS, others: [passenger] }));
    expect(two.machine.loadMass).toBe(60);
    expect(two.fork).toBe(bike.fork);
  });
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
