/** Tests of the reading countershaftHeight: the worked number, through a standing bike. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { plainBike, withFrame } from '../../../tests/support/plain-bike.ts';
import { countershaftHeight } from './countershaft-height.ts';

it('15 above a pivot that stands at 415, frame level, is 430', () => {
  expect(countershaftHeight.read(stanceWith({ countershaftY: 415 + 15 }))).toBe(430);
});

it('of a standing bike is the height of its countershaft in the turned frame', () => {
  const on = standing(withFrame(plainBike, { countershaft: { x: 0, y: 15 } }));
  expect(countershaftHeight.read(on)).toBeCloseTo(on.pose.originY + 15 * Math.cos(on.pose.pitch), 10);
});
