/** Demonstration bikes with adjusters turned at random: a setup to come from, and one to go to. */
import fc from 'fast-check';
import { doesApply } from '../../src/core/adjusters/does-apply.ts';
import { namedAdjusters } from '../../src/core/adjusters/named-adjusters.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { SetBike } from '../../src/core/effects/compare-setups.ts';
import { adjusterRange } from '../../src/core/standing/adjuster-range.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';

const turns = fc.array(fc.record({ which: fc.nat(60), part: fc.double({ min: 0, max: 1, noNaN: true }) }), {
  minLength: 1,
  maxLength: 6,
});

function turned({ bike, setup }: SetBike, parts: readonly { which: number; part: number }[]): Setup {
  const free = namedAdjusters(bike.drive.kind).filter(
    (each) => each.kind === 'part' && doesApply(each, bike, setup),
  );
  let to = setup;
  for (const { which, part } of parts) {
    const adjuster = free[which % free.length];
    if (adjuster.holds !== 'number' && adjuster.holds !== 'wholeNumber') continue;
    const { least, most, step } = adjusterRange(adjuster, bike, setup);
    const value = Number((least + Math.round((part * (most - least)) / step) * step).toFixed(6));
    to = { ...to, [adjuster.key]: Math.min(most, value) };
  }
  return to;
}

/** A demonstration bike with some of its adjusters somewhere in their range, and with others elsewhere. */
export const turnedDemo = fc
  .record({ at: fc.nat(DEMO_BIKES.length - 1), first: fc.option(turns), then: turns })
  .map(({ at, first, then }) => {
    const demo = DEMO_BIKES[at];
    const from = first === null ? demo.setup : turned(demo, first);
    return { bike: demo.bike, from, to: turned(demo, then) };
  });
