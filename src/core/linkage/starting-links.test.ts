/** Tests of links to begin with. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { likelyBike } from '../../../tests/support/random-bikes.ts';
import { DEMO_ARMS } from '../../../tests/support/demo-arms.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { startingLinks } from './starting-links.ts';
import { suspension } from './suspension.ts';
import { degrees } from '../units/convert.ts';

const KINDS = ['direct', 'rockerOnFrame', 'rockerOnArm'] as const;

describe.each(KINDS)('proposed links of the kind %s', (kind) => {
  it('hang the arm where it hung with the table, on nearly every likely bike', () => {
    let made = 0;
    let asked = 0;
    fc.assert(
      fc.property(likelyBike, ({ bike: { swingarm } }) => {
        asked++;
        const layout = startingLinks(kind, swingarm);
        if ('ok' in layout) return;
        const works = suspension(layout, swingarm.length, AS_DELIVERED);
        if (!works.ok) throw new Error(works.reason);
        made++;
        const hanging = degrees(Math.asin(works.toppedOutSine)) - swingarm.tablePitchDeg;
        expect(hanging).toBeCloseTo(swingarm.toppedOutAngleDeg, 5);
        expect(works.wheelTravel).toBeGreaterThan(0.29 * swingarm.wheelTravel);
        expect(works.wheelTravel).toBeLessThan(1.0001 * swingarm.wheelTravel);
      }),
      { numRuns: cases(500) },
    );
    expect(made).toBeGreaterThan(0.97 * asked);
  });

  it.each(DEMO_ARMS)('stand on the arm of %s', (_, swingarm) => {
    const layout = startingLinks(kind, swingarm);
    expect('ok' in layout ? layout.reason : layout.kind).toBe(kind);
  });
});
