/** Tests of the reading antiSquatSwingarm: the worked number. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { swingarmSlope } from '../drive/squat-slope.ts';
import { antiSquatSwingarm } from './anti-squat-swingarm.ts';
import { absent } from './absent.ts';

it('of a pivot 420 up and 570 ahead with a load-transfer slope of 0.4 is 184.21', () => {
  const on = stanceWith({
    swingarmSlope: swingarmSlope(570, 420),
    centre: { y: 560 },
    pose: { wheelbase: 1400 },
  });
  expect(antiSquatSwingarm.read(on)).toBeCloseTo(184.21, 2);
});

it('grows on a standing bike with a steeper arm', () => {
  const steeper = antiSquatSwingarm.read(standing(withSwingarm(plainBike, { toppedOutAngleDeg: 12 })));
  expect(steeper).toBeGreaterThan(antiSquatSwingarm.read(standing()) as number);
});

it('has no number with the centre of gravity on the ground', () => {
  expect(antiSquatSwingarm.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
});
