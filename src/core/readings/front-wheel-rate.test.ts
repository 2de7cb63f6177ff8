/** Tests of the reading frontWheelRate: the worked number and its absences. */
import { expect, it } from 'vitest';
import { sprungAt } from '../../../tests/support/ridden-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { frontWheelRate } from './front-wheel-rate.ts';
import { absent } from './absent.ts';

it('of two springs of 10 on legs that lean by 60° is 80', () => {
  const on = sprungAt({ front: 40, rear: 30 });
  const legLean = Math.PI / 3 - on.pose.pitch;
  const leaned = { ...on, machine: { ...on.machine, front: { ...on.machine.front, legLean } } };
  expect(frontWheelRate.read(leaned)).toBeCloseTo(80, 9);
});

it('has no number without springs, nor beyond closed coils', () => {
  expect(frontWheelRate.read(standing())).toBe(absent('noSprings'));
  const on = sprungAt({ front: 40, rear: 30 });
  const short = { ...on, sprung: { ...on.sprung, most: { front: 39, rear: 100 } } };
  expect(frontWheelRate.read(short)).toBe(absent('coilsClosed'));
});
