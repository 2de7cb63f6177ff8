/** Tests of one step of an adjuster. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { namedAdjusters, type NamedAdjuster } from '../adjusters/named-adjusters.ts';
import type { AdjusterKey } from '../adjusters/setup.ts';
import { chainFit, nearestChain } from '../chain/chain-fit.ts';
import { tyreDiameter } from '../parts/tyre.ts';
import { standBike } from '../riding/stand-bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { heightEffect } from './adjuster-effect.ts';
import { adjusterStep } from './adjuster-step.ts';

const { bike, setup } = SPRUNG_ROAD;

function called(key: AdjusterKey): NamedAdjuster {
  const found = namedAdjusters('chain').find((each) => each.key === key);
  if (found === undefined) throw new Error(`There is no adjuster ${key}.`);
  return found;
}

describe('a step of an adjuster', () => {
  it('stays in the range of every number adjuster on every bike, and goes down only at the upper end', () => {
    let counted = 0;
    for (const { bike: each, setup: set } of SPRUNG_BIKES)
      for (const adjuster of namedAdjusters(each.drive.kind)) {
        if (adjuster.holds !== 'number' && adjuster.holds !== 'wholeNumber') continue;
        const step = adjusterStep(adjuster, each, set);
        const range = adjusterRange(adjuster, each, set);
        if (step === null || range.most - range.least < range.step) continue;
        expect(Number(step.to), adjuster.key).toBeLessThanOrEqual(range.most);
        const up = set[adjuster.key] + range.step <= range.most;
        expect(Math.sign(Number(step.to) - Number(step.from)), adjuster.key).toBe(up ? 1 : -1);
        expect(step.word, adjuster.key).toBe(up ? adjuster.more : adjuster.less);
        counted += 1;
      }
    expect(counted).toBeGreaterThan(100);
  });

  it('makes a tyre 10 mm larger, which raises its end by the share of it that lies under its axle', () => {
    for (const key of ['frontTyre', 'rearTyre'] as const) {
      const step = adjusterStep(called(key), bike, setup);
      const [from, to] = [tyreDiameter(setup[key]), tyreDiameter(step?.to as { diameter: number })];
      if (step === null || !from.ok || !to.ok) throw new Error('The road bike has tyres.');
      expect(to.value - from.value).toBeCloseTo(10, 9);
      expect(step.word).toBe('larger');
      const effect = heightEffect(called(key), setup, step.from, step.to, (asked) => {
        const on = standBike(bike, asked, 'riderUp');
        return on.ok ? on : null;
      });
      // Half of the diameter at the axle; the seat stands a little ahead of the rear axle and takes a part of it.
      const rise = (effect?.after ?? 0) - (effect?.before ?? 0);
      expect(rise, key).toBeGreaterThan(2);
      expect(rise, key).toBeLessThan(6);
    }
  });

  it('takes the next chain that fits, and has none while no chain is on', () => {
    expect(adjusterStep(called('chainLinks'), bike, { ...setup, chainLinks: null })).toBeNull();
    const nearest = nearestChain(bike, setup, setup.axlePosition);
    if (!nearest.ok) throw new Error('A chain fits the road bike.');
    const on = { ...setup, chainLinks: nearest.links };
    const step = adjusterStep(called('chainLinks'), bike, on);
    if (step === null) throw new Error('Another chain fits the road bike.');
    expect(step.amount).toBe(2);
    expect(chainFit(bike, on, Number(step.to)).ok).toBe(true);
    expect(step.word).toBe(Number(step.to) > nearest.links ? 'longer' : 'shorter');
  });

  it('is none for a tyre whose code cannot be read', () => {
    expect(adjusterStep(called('frontTyre'), bike, { ...setup, frontTyre: { code: 'x' } })).toBeNull();
  });
});
