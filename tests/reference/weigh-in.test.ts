/** The slope of a bike with one axle raised against a published one. */
import { expect, it } from 'vitest';
import { weighIn, type Measured } from '../../src/core/weighing/weigh-in.ts';

const exactly = (value: number): Measured => ({ value, uncertainty: 0 });

// Source: an example of a weigh-in with one axle raised 18 in on 110 in, book not recorded; from memory.
it('18 in of lift on 110 in between the axles is a slope of .1659, not .1636', () => {
  const found = weighIn({
    wheelbase: exactly(110 * 25.4),
    frontRadius: exactly(300),
    rearRadius: exactly(300),
    front: exactly(100),
    rear: exactly(100),
    first: 'axlesLevel',
    lift: exactly(18 * 25.4),
    raised: 'rear',
    read: 'front',
    raisedReading: exactly(106),
  });
  if (!found.ok) throw new Error(JSON.stringify(found));
  // On equal wheels the height above the axles is L · (shifted weight / weight) / slope.
  const slope = (110 * 25.4 * 0.03) / (found.y - 300);
  expect(slope).toBeCloseTo(0.1659, 4);
  expect(slope).not.toBeCloseTo(18 / 110, 3);
});
