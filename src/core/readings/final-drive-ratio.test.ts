/** Tests of the reading finalDriveRatio: rear teeth to front teeth. */
import { expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { finalDriveRatio } from './final-drive-ratio.ts';

it('of 15 and 45 is 3', () => {
  expect(finalDriveRatio.read(standing(plainBike, { ...plainSetup, frontTeeth: 15, rearTeeth: 45 }))).toBe(3);
});
