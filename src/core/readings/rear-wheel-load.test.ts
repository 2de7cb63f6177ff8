/** Tests of the reading rearWheelLoad: the worked number and its absences. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { ridden, sprungAt } from '../../../tests/support/ridden-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { STANDARD_GRAVITY } from '../units/convert.ts';
import { AT_REST } from '../riding/equilibrium/ride-forces.ts';
import { steadyLoads } from '../riding/equilibrium/steady-loads.ts';
import { rearWheelLoad } from './rear-wheel-load.ts';
import { absent } from './absent.ts';

it('of 280 kg half-way between the patches is 1372.931', () => {
  const on = ridden('riderUp');
  const even = { ...on, mass: 280, centre: { ...on.centre, x: on.pose.wheelbase / 2 } };
  const loads = steadyLoads(even, AT_REST, { caliper: 'onArm' });
  if (!loads.ok) throw new Error(loads.reason);
  const equilibrium = { ...on.equilibrium, rear: { ...on.equilibrium.rear, wheelLoad: loads.rearLoad } };
  expect(rearWheelLoad.read({ ...even, equilibrium })).toBeCloseTo(1372.931, 3);
});

it('is that of the whole bike in balance about the other patch', () => {
  const on = ridden('riderUp');
  const lever = on.pose.wheelbase - on.centre.x;
  expect(rearWheelLoad.read(on)).toBeCloseTo((on.mass * STANDARD_GRAVITY * lever) / on.pose.wheelbase, 6);
});

it('has no number without springs, nor in a state that they do not carry', () => {
  expect(rearWheelLoad.read(standing(plainBike, plainSetup))).toBe(absent('noSprings'));
  expect(rearWheelLoad.read(sprungAt({ front: 40, rear: 30 }))).toBe(absent('notCarried'));
});
