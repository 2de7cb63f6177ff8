/** The pose against a general constraint solver that is given points and distances and knows no motorcycles. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { cases } from '../support/cases.ts';
import { machine, type Machine } from '../../src/core/standing/machine.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { constraintSolver, type ConstraintSolver } from '../support/constraint-solver.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { poseConstraints, posePoints, worstDistance } from '../support/pose-constraints.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { standing, TOPPED_OUT } from '../support/standing.ts';

/** The solvers agree to a millionth of a millimetre. */
const AGREED = 1e-6;

/** Centre of gravity this far or less beside the line pivot to steering head is placed badly by two distances, mm. */
const LEAST_BESIDE = 1;

function besideHeadLine({ front, places }: Machine): number {
  const { head } = front;
  const { sprungCentre } = places;
  return Math.abs(head.x * sprungCentre.y - head.y * sprungCentre.x) / Math.hypot(head.x, head.y);
}

describe('planegcs, begun from the bike topped out', () => {
  let solver: ConstraintSolver;
  beforeAll(async () => {
    solver = await constraintSolver();
  });
  afterAll(() => solver.close());

  it('finds the same points as the core through the whole travel of the plain bike', () => {
    const near = posePoints(standing(plainBike, plainSetup, TOPPED_OUT));
    for (let travel = 0; travel <= 100; travel += 10) {
      const on = standing(plainBike, plainSetup, { front: travel, rear: travel });
      solver.setUp(poseConstraints(on), near);
      solver.solve();
      expect(worstDistance(solver.points(), posePoints(on))).toBeLessThan(AGREED);
    }
  });

  it('finds them too when only its measures are changed', () => {
    solver.setUp(poseConstraints(standing()), posePoints(standing()));
    for (const travel of [10, 40, 70, 20]) {
      const on = standing(plainBike, plainSetup, { front: travel, rear: 100 - travel });
      solver.measure(poseConstraints(on));
      solver.solve();
      expect(worstDistance(solver.points(), posePoints(on))).toBeLessThan(AGREED);
    }
  });

  it('finds the same points as the core for many likely bikes', () => {
    let compared = 0;
    fc.assert(
      fc.property(likelyBike, ({ bike, setup, travel }) => {
        const parts = machine(bike, setup);
        if (!parts.ok) return;
        const on = stance(parts, travel);
        const near = stance(parts, {
          front: travel.front + 3 > bike.fork.travel ? 0 : travel.front + 3,
          rear: travel.rear,
        });
        if (!on.ok || !near.ok) return;
        const answer = posePoints(on);
        const centre = answer.get('instantCentre');
        // A crossing far away is found as badly as it is defined.
        if (centre === undefined || Math.hypot(centre.x, centre.y) > 5000) return;
        // Two distances place a point badly that lies nearly in line with where they are measured from.
        if (besideHeadLine(parts) < LEAST_BESIDE) return;
        solver.setUp(poseConstraints(on), posePoints(near));
        solver.solve();
        expect(worstDistance(solver.points(), answer)).toBeLessThan(AGREED);
        compared++;
      }),
      { numRuns: cases(200) },
    );
    expect(compared).toBeGreaterThan(cases(100));
  });
});
