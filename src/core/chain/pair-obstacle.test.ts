/** Tests of sprockets that cannot be fitted. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { made } from '../../../tests/support/standing.ts';
import { pitchRadius } from '../drive/sprocket.ts';
import { pairObstacle } from './pair-obstacle.ts';

it('usual sprockets have no obstacle', () => {
  expect(pairObstacle(made(), 15.875, 12)).toBeNull();
});

it('fewer front teeth than the shaft allows are an obstacle, with the fewest that go on', () => {
  const small = made(plainBike, { ...plainSetup, frontTeeth: 11 });
  expect(pairObstacle(small, 15.875, 12)).toEqual({ reason: 'frontBelowShaft', found: 11, nearest: 12 });
  expect(pairObstacle(small, 15.875, 11)).toBeNull();
});

it('a front sprocket that reaches the pivot is an obstacle, with the most teeth that do not', () => {
  const near = made(withFrame(plainBike, { countershaft: { x: 36, y: 0 } }), plainSetup);
  const obstacle = pairObstacle(near, 15.875, 10);
  expect(obstacle).toMatchObject({ reason: 'pivotInsideFront', found: 15 });
  const most = obstacle?.nearest ?? NaN;
  expect(pitchRadius(most, 15.875)).toBeLessThan(36);
  expect(pitchRadius(most + 1, 15.875)).toBeGreaterThanOrEqual(36);
});

it('a countershaft on the pivot’s axis is no obstacle, and an arm too short for the rear sprocket is', () => {
  expect(pairObstacle(made(withFrame(plainBike, { countershaft: { x: 0, y: 0 } })), 15.875, 10)).toBeNull();
  const { rear, ...rest } = made();
  const short = { ...rest, rear: { ...rear, arm: 100 } };
  expect(pairObstacle(short, 15.875, 10)).toMatchObject({ reason: 'pivotInsideRear', found: 45 });
});
