/** Tests of the reading rearWheelForce: the worked number and its absences. */
import { expect, it } from 'vitest';
import { ridden, sprungAt } from '../../../tests/support/ridden-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';
import { rearWheelForce } from './rear-wheel-force.ts';
import { absent } from './absent.ts';

it('of a spring that pushes with 3000 at a motion ratio of 0.4 is 1200', () => {
  const on = sprungAt({ front: 40, rear: 30 });
  const shock = { ...on.sprung.shock, rate: 100, preload: 12, bumpStart: Infinity, topOutLength: 0 };
  const arm = { ...on.arm, shockStroke: 18, lever: 0.4 * on.pose.pivot.x };
  expect(rearWheelForce.read({ ...on, arm, sprung: { ...on.sprung, shock } })).toBeCloseTo(1200, 9);
});

it('at rest is the rear wheel’s load less the weight of what the springs do not carry', () => {
  const on = ridden('riderUp');
  const unsprung = on.machine.rearUnsprung * STANDARD_GRAVITY;
  expect(rearWheelForce.read(on)).toBeCloseTo(on.equilibrium.rear.wheelLoad - unsprung, 5);
});

it('has no number without springs, nor beyond closed coils', () => {
  expect(rearWheelForce.read(standing())).toBe(absent('noSprings'));
  const on = sprungAt({ front: 40, rear: 30 });
  const short = { ...on, sprung: { ...on.sprung, most: { front: 120, rear: 29 } } };
  expect(rearWheelForce.read(short)).toBe(absent('coilsClosed'));
});
