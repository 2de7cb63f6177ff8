/** Tests of the reading finalRatio: rear teeth to front teeth. */
import { expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { finalRatio } from './final-ratio.ts';

it('of 15 and 45 is 3', () => {
  expect(finalRatio.read(standing(plainBike, { ...plainSetup, frontTeeth: 15, rearTeeth: 45 }))).toBe(3);
});
