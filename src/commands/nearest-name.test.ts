/** Tests of the name that a mistyped one is nearest to. */
import { expect, it } from 'vitest';
import { nearestName } from './nearest-name.ts';

it.each([
  ['pivott', 'pivot'],
  ['Front axle', 'frontAxle'],
  ['whelbase', 'wheelbase'],
  ['counter shaft', 'countershaft'],
])('%s is nearest to %s', (typed, nearest) => {
  expect(nearestName(typed, ['pivot', 'rearAxle', 'frontAxle', 'wheelbase', 'countershaft'])).toBe(nearest);
});

it('of no names none is nearest', () => {
  expect(nearestName('pivot', [])).toBeNull();
});
