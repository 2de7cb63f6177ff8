/** Tests of what is open before the bike goes out. */
import { expect, it } from 'vitest';
import { openPoints } from './open-points.ts';

const trail = {
  key: 'steepAndShort',
  lead: 'Trail 61.0 mm',
  text: 'Little trail: add some before riding it.',
  short: 'little.',
} as const;

it('names why the bike cannot stand first, then each warning, then the notes not made', () => {
  const { points, heading } = openPoints('The bike cannot stand like this.', [trail], ['Lap time', 'Track']);
  expect(points).toEqual([
    'The bike cannot stand like this.',
    'Trail 61.0 mm. Little trail: add some before riding it.',
    'Not noted yet: Lap time, Track.',
  ]);
  expect(heading).toBe('3 points are open before the bike goes out.');
});

it('counts one as one, and never says that a bike is safe', () => {
  expect(openPoints(null, [trail]).heading).toBe('1 point is open before the bike goes out.');
  expect(openPoints(null, [])).toEqual({
    points: [],
    heading: 'No warnings here. Check the bike itself before it goes out.',
  });
});
