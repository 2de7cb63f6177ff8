/** Tests of the reading upperRunAngle: the worked number, on a standing bike. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { withCountershaftAt } from '../../../tests/support/placed-bike.ts';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { degrees } from '../units/convert.ts';
import { upperRunAngle } from './upper-run-angle.ts';

const free = withFrame(plainBike, { guideRadius: null });

it('with sprockets of equal radius and centres 100 up over 600 along is 9.4623°', () => {
  const setup = { ...plainSetup, frontTeeth: 40, rearTeeth: 40 };
  const before = standing(free, setup);
  const up = { x: 600, y: before.rearAxle.y + 100 };
  const placed = withCountershaftAt({ bike: free, setup }, before, up);
  const on = standing(placed.bike, setup);
  expect(degrees(upperRunAngle.read(on) as number)).toBeCloseTo(9.4623, 4);
});

it('is flatter than the line of the centres with a bigger rear sprocket', () => {
  const on = standing();
  const centres = Math.atan2(on.countershaft.y - on.rearAxle.y, on.countershaft.x - on.rearAxle.x);
  expect(centres).toBeGreaterThan(upperRunAngle.read(on) as number);
});

it('of a standing bike is the free run’s, whatever the guide', () => {
  for (const guideRadius of [null, 0, 60])
    expect(upperRunAngle.read(stanceWith({ machine: { guideRadius } }))).toBe(upperRunAngle.read(standing()));
});
