/** Tests of the travel table chosen for a bike with links: the arm hangs where it hung. */
import { expect, it } from 'vitest';
import { DEMO_ARMS } from '../../../tests/support/demo-arms.ts';
import { degrees, radians } from '../units/convert.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { rearLayout } from './rear-layout-of.ts';
import { suspension } from './suspension.ts';
import { tableInPlace } from './table-in-place.ts';

it.each(DEMO_ARMS)(
  'the arm of %s hangs where its links left it, with a longer shock and without',
  (_, swingarm) => {
    for (const [shockLength, lower] of [
      [0, 0],
      [0, 1.2],
      [6, -0.4],
    ]) {
      const adjusters = { ...AS_DELIVERED, shockLength };
      const hanging = swingarm.toppedOutAngleDeg + lower;
      const table = tableInPlace(swingarm, radians(hanging), adjusters);
      if (table === null) throw new Error('no table');
      expect(table.links).toBeNull();
      expect(table.travelTable).toBe(swingarm.travelTable);
      const made = suspension(rearLayout(table), table.length, adjusters);
      if (!made.ok) throw new Error(made.reason);
      expect(degrees(Math.asin(made.toppedOutSine) - made.framePitch)).toBeCloseTo(hanging, 6);
    }
  },
);

it('a bike without a travel table gets none', () => {
  const [[, swingarm]] = DEMO_ARMS;
  expect(tableInPlace({ ...swingarm, travelTable: [] }, radians(9), AS_DELIVERED)).toBeNull();
});
