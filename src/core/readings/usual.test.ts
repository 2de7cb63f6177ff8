/** Tests of the range in which motorcycles lie. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import { READINGS } from './all-readings.ts';
import { metricReading } from './metric-reading.ts';
import { trail } from './trail.ts';
import { isBeyondUsual } from './usual.ts';

it('holds usual bikes, and each range runs upward', () => {
  const ranged = READINGS.filter(({ usual }) => usual !== undefined);
  expect(ranged.length).toBeGreaterThanOrEqual(13);
  for (const on of [standing(plainBike, plainSetup), standing(linkedBike, sprungSetup)])
    for (const reading of ranged) {
      const value = metricReading(reading, on);
      if (typeof value !== 'number') throw new Error(`no number for ${reading.key}`);
      expect(isBeyondUsual(reading, value), reading.key).toBe(false);
      expect(reading.usual?.least ?? 0).toBeLessThan(reading.usual?.most ?? 0);
    }
});

it('limits every reading of steering and balance that has feel words', () => {
  const feel =
    /steering|steadier|quicker|calmer|livelier|falls into turns|lifts (later|sooner)|weight (higher|lower)/;
  const bare = READINGS.filter(
    ({ more, less, usual }) => feel.test(`${more} ${less}`) && usual === undefined,
  );
  expect(bare.map(({ key }) => key)).toEqual([]);
});

it('ends where no motorcycle lies', () => {
  expect(isBeyondUsual(trail, -30)).toBe(true);
  expect(isBeyondUsual(trail, 900)).toBe(true);
  expect(isBeyondUsual(trail, 100)).toBe(false);
  expect(isBeyondUsual({ ...trail, usual: undefined }, 900)).toBe(false);
});
