/** Tests of the reading engineBraking: the worked number, its absences, and the other kinds of drive. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { antiSquatSwingarm } from './anti-squat-swingarm.ts';
import { antiRise, engineBraking } from './engine-braking.ts';
import { absent } from './absent.ts';

it('with a lower run 76 below a pivot 570 ahead is 75', () => {
  // A level run at the rear sprocket's bottom passes 76 below a pivot that stands 29 lower than the axle.
  const on = stanceWith({
    swingarmSlope: 0.7,
    countershaft: { x: 600, y: 315 - 105 + 38 },
    centre: { y: 560 },
    pose: { wheelbase: 1400, pivot: { x: 570, y: 315 - 29 } },
    machine: { rearRadius: 315, rearSprocketRadius: 105, frontSprocketRadius: 38 },
  });
  expect(engineBraking.read(on)).toBeCloseTo(75, 10);
});

it('has no number without a mass or with the centre of gravity on the ground', () => {
  expect(engineBraking.read(stanceWith({ mass: 0 }))).toBe(absent('noMass'));
  expect(engineBraking.read(stanceWith({ centre: { y: 0 } }))).toBe(absent('centreOnGround'));
});

it('of a shaft or hub drive is the swingarm’s part alone', () => {
  for (const driveKind of ['shaft', 'hub'] as const) {
    const on = stanceWith({ machine: { driveKind } });
    expect(engineBraking.read(on)).toBe(antiSquatSwingarm.read(on));
  }
  expect(engineBraking.read(stanceWith({ machine: { driveKind: 'belt' } }))).toBe(
    engineBraking.read(standing()),
  );
});

it('with half of the braking at the front is half as much of the whole load transfer', () => {
  const on = standing();
  expect(antiRise(on, 0.3, 0.5)).toBeCloseTo((antiRise(on, 0.3) as number) / 2, 12);
});
