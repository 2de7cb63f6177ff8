/** Tests of the words for sprockets that cannot be fitted. */
import { expect, it } from 'vitest';
import { pairObstacleWords } from './pair-obstacle-words.ts';

it('name the sprocket and the nearest that works', () => {
  expect(pairObstacleWords({ reason: 'frontBelowShaft', found: 11, nearest: 13 })).toBe(
    'A front sprocket of 11 teeth does not go over the countershaft. It takes 13 teeth or more.',
  );
  expect(pairObstacleWords({ reason: 'pivotInsideFront', found: 17, nearest: 14 })).toBe(
    'With 17 teeth the front sprocket would reach over the swingarm pivot. 14 teeth or fewer clear it.',
  );
  expect(pairObstacleWords({ reason: 'pivotInsideRear', found: 80, nearest: null })).toBe(
    'With 80 teeth the rear sprocket would reach over the swingarm pivot. No sprocket is small enough.',
  );
});
