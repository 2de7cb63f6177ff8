/** Tests of the reading shockStroke: the worked number. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { standing } from '../../../tests/support/standing.ts';
import { shockStroke } from './shock-stroke.ts';

it('of a shock 330 long that measures 312 is 18', () => {
  const { arm } = standing();
  expect(shockStroke.read(stanceWith({ arm: { ...arm, shockStroke: 330 - 312 } }))).toBe(18);
});
