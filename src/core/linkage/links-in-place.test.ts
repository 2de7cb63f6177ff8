/** Tests of links that leave the swingarm of a bike where it is, however its adjusters are set. */
import { describe, expect, it } from 'vitest';
import { DEMO_ARMS } from '../../../tests/support/demo-arms.ts';
import { degrees, radians } from '../units/convert.ts';
import { AS_DELIVERED, type RearAdjusters } from './link-adjustments.ts';
import { linksInPlace } from './links-in-place.ts';
import type { LinkKind } from './starting-links.ts';
import { suspension } from './suspension.ts';

const KINDS: readonly LinkKind[] = ['direct', 'rockerOnFrame', 'rockerOnArm'];
const SET: RearAdjusters = { ...AS_DELIVERED, shockLength: 6, shockMountShim: 2 };

describe.each(KINDS)('links of the kind %s, chosen for a bike as it is set', (kind) => {
  it.each(DEMO_ARMS)('hang the arm of %s where it hung, with adjusters turned and without', (_, swingarm) => {
    for (const [adjusters, lower] of [
      [AS_DELIVERED, 0],
      [SET, 0.6],
    ] as const) {
      const hanging = radians(swingarm.toppedOutAngleDeg + lower);
      const layout = linksInPlace(kind, swingarm, hanging, adjusters);
      if ('ok' in layout) throw new Error(layout.reason);
      const works = suspension(layout, swingarm.length, adjusters);
      if (!works.ok) throw new Error(works.reason);
      const now = degrees(Math.asin(works.toppedOutSine)) - swingarm.tablePitchDeg;
      expect(now).toBeCloseTo(degrees(hanging), 6);
    }
  });
});
