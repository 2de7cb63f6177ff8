/** Tests of the reading rearWheelRate: the worked number and its absences. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { sprungAt } from '../../../tests/support/ridden-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { rearWheelRate } from './rear-wheel-rate.ts';
import { absent } from './absent.ts';

const halves = withSwingarm(plainBike, {
  travelTable: [0, 65, 130].map((wheelTravel) => ({ wheelTravel, shockStroke: wheelTravel / 2 })),
});
const setup = { ...plainSetup, forkSpringRate: 10, shockSpringRate: 100, shockPreload: 10 };

it('of a spring of 100 on a shock that goes in by half of the wheel’s rise is 25', () => {
  const on = sprungAt({ front: 40, rear: 30 }, halves, setup);
  expect(rearWheelRate.read({ ...on, pose: { ...on.pose, pitch: 0 } })).toBeCloseTo(25, 6);
});

it('has no number without springs, beyond closed coils, or where the links have none', () => {
  expect(rearWheelRate.read(standing())).toBe(absent('noSprings'));
  const on = sprungAt({ front: 40, rear: 30 }, halves, setup);
  expect(rearWheelRate.read({ ...on, sprung: { ...on.sprung, most: { front: 120, rear: 29 } } })).toBe(
    absent('coilsClosed'),
  );
  const beyond = { ...on.sprung, most: { front: 120, rear: 1e4 } };
  expect(rearWheelRate.read({ ...on, travel: { front: 40, rear: 9e3 }, sprung: beyond })).toBe(
    absent('linksSilent'),
  );
});
