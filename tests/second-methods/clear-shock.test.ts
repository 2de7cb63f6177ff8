/** The longest shock that keeps the chain off its guide, against the reading of the standing bike place by place. */
import { expect, it } from 'vitest';
import { demoBikes } from '../support/road-sport.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { chainSliderClearance } from '../../src/core/readings/chain-slider-clearance.ts';
import { adjusterRange } from '../../src/core/standing/adjuster-range.ts';
import { adjusterOf } from '../../src/core/adjusters/all-adjusters.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { CLEAR_BY } from '../../src/core/chain/guide-clearance.ts';
import { longestClearShock } from '../../src/core/chain/clear-shock.ts';

/** The least clearance that the reading shows at many places of the travel, mm. */
function leastShown(bike: (typeof demoBikes)[number]['bike'], setup: Setup): number {
  const made = machine(bike, setup);
  if (!made.ok) throw new Error(made.reason);
  let least = Infinity;
  for (let i = 0; i <= 200; i++) {
    const on = stance(made, { front: 0, rear: (made.rear.wheelTravel * i) / 200 });
    const gap = on.ok ? chainSliderClearance.read(on) : NaN;
    if (typeof gap === 'number') least = Math.min(least, gap);
  }
  return least;
}

it('clears the guide, and one step longer does not', () => {
  let found = 0;
  for (const { bike, setup } of demoBikes) {
    const long = { ...setup, shockLength: setup.shockLength + 6, frontTeeth: setup.frontTeeth - 1 };
    if (!machine(bike, long).ok || leastShown(bike, long) > 0) continue;
    const clear = longestClearShock(bike, long);
    if (clear === null) continue;
    found++;
    const { step } = adjusterRange(adjusterOf('shockLength'), bike, long);
    const set = { ...long, shockLength: clear.shockLength };
    expect(clear.shockLength).toBeLessThan(long.shockLength);
    expect(leastShown(bike, set)).toBeGreaterThan(CLEAR_BY - 0.01);
    expect(clear.leastGap).toBeCloseTo(leastShown(bike, set), 1);
    expect(leastShown(bike, { ...set, shockLength: clear.shockLength + step })).toBeLessThanOrEqual(
      CLEAR_BY + 0.01,
    );
  }
  expect(found).toBeGreaterThan(0);
});

it('is none where the shortest shock is not short enough, nor with a chain that no shock lifts off', () => {
  const [{ bike, setup }] = demoBikes;
  const low = { ...bike, frame: { ...bike.frame, guideRadius: 70 } };
  expect(longestClearShock(low, setup)).toBeNull();
});
