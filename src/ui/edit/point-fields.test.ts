/** Tests of the fields that place a point. */
import { expect, it } from 'vitest';
import { plainBike, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { rearLayouts } from '../../../tests/support/rear-layouts.ts';
import { SKETCH_POINTS } from '../../core/sketch/points.ts';
import { pointFields } from './point-fields.ts';

const paths = (bike: typeof plainBike, key: (typeof SKETCH_POINTS)[number]['key']) =>
  pointFields(bike, key).map(({ path }) => path);

it('every field that a point names is a field of the bike', () => {
  let named = 0;
  for (const { key, placedBy } of SKETCH_POINTS) {
    if (placedBy === null) expect(paths(plainBike, key), key).toEqual([]);
    else {
      expect([...paths(plainBike, key)].sort(), key).toEqual([...placedBy.fields].sort());
      named += placedBy.fields.length;
    }
  }
  expect(named).toBeGreaterThan(2);
});

it('links leave only the length of the arm to place the rear axle', () => {
  const [first] = rearLayouts;
  const bike = withSwingarm(plainBike, { links: first?.layout ?? null });
  expect(paths(bike, 'rearAxle')).toEqual(['swingarm.length']);
});
