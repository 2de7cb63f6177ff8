/** Links whose bolts are measured to 1 mm: how far off the wheel rate comes out, as the page says beside the table. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wheelRate } from '../../src/core/linkage/leverage.ts';
import { mapBolts } from '../../src/core/linkage/map-bolts.ts';
import { rearAt, madeRear, evenly } from '../support/rear-made.ts';
import { LINKS_KNOWN } from '../../src/words/measure/travel-table-words.ts';
import { cases } from '../support/cases.ts';
import { rearLayouts } from '../support/rear-layouts.ts';
import type { LinkLayout } from '../../src/core/parts/rear-layout.ts';

/** Each coordinate lies anywhere within this, mm. */
const WITHIN = 1;
const RATE = 100;
const PRELOAD = 8;
const PARTS = 1_000_000;
/** Two coordinates of each bolt, and there are at most five bolts. */
const COORDINATES = 20;

const errors = fc
  .noBias(
    fc.array(fc.integer({ min: -PARTS, max: PARTS }), { minLength: COORDINATES, maxLength: COORDINATES }),
  )
  .map((list) => list.map((each) => (WITHIN * each) / PARTS));

function measured(layout: LinkLayout, off: readonly number[]): LinkLayout {
  let at = 0;
  return {
    ...layout,
    ...mapBolts(layout, {
      onFrame: ({ x, y }) => ({ x: x + off[at++], y: y + off[at++] }),
      onArm: ({ along, above }) => ({ along: along + off[at++], above: above + off[at++] }),
    }),
  };
}

function rates(layout: LinkLayout, travels: readonly number[]): number[] {
  const of = madeRear(layout);
  return travels.map((travel) => {
    const { motionRatio, motionRatioSlope, shockStroke } = rearAt(of, travel);
    return wheelRate(RATE, RATE * (PRELOAD + shockStroke), motionRatio, motionRatioSlope);
  });
}

describe.each(rearLayouts.map(({ name, layout }) => [name, layout] as const))('%s', (_name, layout) => {
  it('has the wheel rate within what is said of it, in 95 % of cases', () => {
    const travels = evenly(0.05, 0.95, 13).map((part) => part * madeRear(layout).wheelTravel);
    const truth = rates(layout, travels);
    const offs: number[] = [];
    fc.assert(
      fc.property(errors, (off) => {
        rates(measured(layout, off), travels).forEach((rate, i) => {
          offs.push(Math.abs(rate / truth[i] - 1));
        });
      }),
      { numRuns: cases(200) },
    );
    offs.sort((a, b) => a - b);
    const known = layout.kind === 'direct' ? LINKS_KNOWN.straight : LINKS_KNOWN.rocker;
    expect(offs[Math.floor(0.95 * offs.length)]).toBeLessThan(known);
  });
});
