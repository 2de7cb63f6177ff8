/** Tests of the readings that a setup sheet keeps. */
import { expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { RIDE_STATES } from '../riding/states/all-ride-states.ts';
import { standBike } from '../riding/stand-bike.ts';
import { readingsByState } from './readings-by-state.ts';

it('are the figures of each reading in each state in which the bike stands', () => {
  const kept = readingsByState(linkedBike, sprungSetup);
  expect(Object.keys(kept)).toEqual(RIDE_STATES.map(({ key }) => key));
  for (const { key: state } of RIDE_STATES) {
    const on = standBike(linkedBike, sprungSetup, state);
    if (!on.ok) throw new Error(on.reason);
    for (const reading of READINGS) {
      const value = metricReading(reading, on);
      if (typeof value === 'number') expect(kept[state][reading.key], reading.key).toBeCloseTo(value, 6);
      else expect(kept[state]).not.toHaveProperty(reading.key);
    }
  }
});

it('leave out the states that springs have to carry where the bike has none', () => {
  const kept = readingsByState(plainBike, { ...plainSetup, forkSpringRate: 0, shockSpringRate: 0 });
  expect(kept).toHaveProperty('toppedOut');
  expect(kept).not.toHaveProperty('riderUp');
});
