/** Tests of a bike's file name. */
import { expect, it } from 'vitest';
import { bikeFileName } from './bike-file-name.ts';

it('names a file after its bike, in letters and digits of any script', () => {
  expect(bikeFileName('Road sport, as delivered')).toBe('road-sport-as-delivered.sidestance.json');
  expect(bikeFileName('  Été à 2 /../ <b>')).toBe('été-à-2-b.sidestance.json');
  expect(bikeFileName('バイク')).toBe('バイク.sidestance.json');
  expect(bikeFileName('///')).toBe('bike.sidestance.json');
  expect(bikeFileName('x'.repeat(500)).length).toBeLessThan(80);
});
