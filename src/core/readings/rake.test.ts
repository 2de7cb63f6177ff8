/** Tests of the reading rake: axis in the frame plus pitch of the frame. */
import { expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { radians } from '../units/convert.ts';
import { rake } from './rake.ts';

it('of an axis 24° in the frame on a bike pitched 0.5° nose down is 23.5°', () => {
  // The rear stands taller by what tips this bike by exactly half a degree; the axis is turned to have 24° in the frame.
  const level = standing();
  const nose = level.pose.pitch;
  const inFrame = 24;
  const bike = withFrame(plainBike, { axisAngleDeg: inFrame });
  let rise = 0;
  for (let round = 0; round < 60; round++) {
    const on = standing(bike, { ...plainSetup, rearTyre: { diameter: 640.8 + rise } });
    rise += 2 * on.pose.wheelbase * (on.pose.pitch + radians(0.5));
  }
  const on = standing(bike, { ...plainSetup, rearTyre: { diameter: 640.8 + rise } });
  expect(on.pose.pitch).toBeCloseTo(radians(-0.5), 10);
  expect(on.pose.pitch).not.toBeCloseTo(nose, 4);
  expect(rake.read(on)).toBeCloseTo(radians(23.5), 10);
});

it('grows by a head insert that leans the axis back', () => {
  const leant = rake.read(standing(plainBike, { ...plainSetup, headAngleCupsDeg: 1 })) as number;
  expect(leant).toBeGreaterThan(rake.read(standing()) as number);
});
