/** The wheel rate at an even motion ratio against published rows. */
import { expect, it } from 'vitest';
import { rearWheelRate } from '../../src/core/springs/at-the-wheel.ts';
import { plainBike, withSwingarm } from '../support/plain-bike.ts';
import { sprung, withShock } from '../support/plain-springs.ts';

// Source: a table of wheel rates by spring rate · motion ratio², book not recorded; from memory.
it.each([
  [300, 0.8, 192],
  [400, 0.8, 256],
  [300, 0.75, 168.75],
])('of a spring of %d at an even motion ratio of %d is %d', (rate, ratio, wheelRate) => {
  const even = withSwingarm(plainBike, {
    travelTable: [
      { wheelTravel: 0, shockStroke: 0 },
      { wheelTravel: 130, shockStroke: 130 * ratio },
    ],
  });
  const made = sprung(withShock({ rate, fullLength: 400, closedLength: 250 }), even);
  for (const travel of [5, 60, 125]) expect(rearWheelRate(made, travel, 0)).toBeCloseTo(wheelRate, 5);
});
