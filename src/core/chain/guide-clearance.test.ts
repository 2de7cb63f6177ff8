/** Tests of the gap to the guide through the travel. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame } from '../../../tests/support/plain-bike.ts';
import { made, standing } from '../../../tests/support/standing.ts';
import { chainLoop } from '../drive/chain-loop.ts';
import { lowerPull, lowerRunLever } from '../standing/drive-slopes.ts';
import {
  fewestClearFrontTeeth,
  guideClearance,
  guideGap,
  lowerGuideClearance,
  lowerGuideGap,
  type GuideClearance,
} from './guide-clearance.ts';

const loop = chainLoop(15, 45, 15.875);
const low = withFrame(plainBike, { countershaft: { x: 75, y: -15 }, guideRadius: 30 });

function clearance(bike = low, chain = loop, count = 14): GuideClearance {
  const found = guideClearance(made(bike), chain, count);
  if (!found.ok) throw new Error(found.reason);
  return found;
}

describe('the gap to the guide', () => {
  it('is that of the standing bike, at every travel', () => {
    const { rearTravel, gap } = clearance();
    expect(rearTravel[13]).toBe(plainBike.swingarm.wheelTravel);
    rearTravel.forEach((rear, i) => {
      const on = standing(low, plainSetup, { front: 30, rear });
      expect(gap[i]).toBeCloseTo(on.upperRunLever - 30, 9);
    });
  });

  it('without a guide is counted from the pivot’s centre', () => {
    const bare = made(withFrame(plainBike, { guideRadius: null }));
    expect(guideGap(bare, loop, 40)).toBeCloseTo(
      standing(withFrame(plainBike, { guideRadius: null }), plainSetup, { front: 0, rear: 40 }).upperRunLever,
      9,
    );
  });

  it('is zero where touching begins and ends, and below zero only between', () => {
    const { touching, gap, rearTravel, leastGap, leastAt } = clearance();
    expect(touching.length).toBe(1);
    const [{ from, to }] = touching;
    for (const end of [from, to])
      if (end > 0 && end < 130) expect(guideGap(made(low), loop, end)).toBeCloseTo(0, 8);
    expect(from > 0 || to < 130).toBe(true);
    rearTravel.forEach((at, i) => expect(gap[i] <= 0).toBe(at >= from && at <= to));
    expect(leastGap).toBeCloseTo(Math.min(...gap), 1);
    expect(guideGap(made(low), loop, leastAt)).toBe(leastGap);
  });

  it('finds a touch of a hundredth of a millimetre, and none when a hundredth is left', () => {
    const barely = withFrame(low, { guideRadius: 30 + clearance().leastGap - 0.01 });
    expect(clearance(barely).touching).toEqual([]);
    const just = withFrame(low, { guideRadius: 30 + clearance().leastGap + 0.01 });
    const { touching } = clearance(just, loop, 5);
    expect(touching).toHaveLength(1);
    expect(touching[0].to - touching[0].from).toBeLessThan(20);
  });

  it('touches nothing without a guide, however low the run', () => {
    const bare = withFrame(plainBike, { countershaft: { x: 75, y: -60 }, guideRadius: null });
    expect(clearance(bare).leastGap).toBeLessThan(0);
    expect(clearance(bare).touching).toEqual([]);
  });

  it('has no answer where the arm cannot reach', () => {
    expect(guideGap(made(), loop, 3000)).toMatchObject({ ok: false, reason: 'swingarmCannotReach' });
  });
});

describe('the gap to the guide under the pivot', () => {
  const near = withFrame(plainBike, { guideRadius: null, lowerGuideRadius: 50 });

  it('is that of the standing bike, and the stretch it lies on ends where the gap is zero', () => {
    const found = lowerGuideClearance(made(near), loop, 14);
    if (!found.ok) throw new Error(found.reason);
    found.rearTravel.forEach((rear, i) => {
      const on = standing(near, plainSetup, { front: 30, rear });
      expect(found.gap[i]).toBeCloseTo(-lowerRunLever(on) - 50, 9);
      const touched = found.touching.some(({ from, to }) => rear >= from && rear <= to);
      expect(touched).toBe(lowerPull(on).onGuide);
    });
    expect(found.touching).toHaveLength(1);
    const [{ from, to }] = found.touching;
    for (const end of [from, to])
      if (end > 0 && end < 130) expect(lowerGuideGap(made(near), loop, end)).toBeCloseTo(0, 8);
    expect(from > 0 || to < 130).toBe(true);
  });

  it('touches nothing without a guide, and is counted from the pivot’s centre then', () => {
    const bare = made(withFrame(plainBike, { guideRadius: null, lowerGuideRadius: null }));
    const found = lowerGuideClearance(bare, loop, 5);
    if (!found.ok) throw new Error(found.reason);
    expect(found.touching).toEqual([]);
    const withOne = lowerGuideGap(made(near), loop, 40);
    expect(Number(lowerGuideGap(bare, loop, 40)) - Number(withOne)).toBeCloseTo(50, 9);
  });
});

describe('the fewest front teeth that stay clear', () => {
  it('are one more than those that touch', () => {
    const found = fewestClearFrontTeeth(made(low), loop, { least: 10, most: 22 });
    if (found === null) throw new Error('none stays clear');
    expect(found.leastGap).toBeGreaterThan(0);
    expect(clearance(low, chainLoop(found.frontTeeth, 45, 15.875)).touching).toEqual([]);
    expect(clearance(low, chainLoop(found.frontTeeth - 1, 45, 15.875)).touching.length).toBeGreaterThan(0);
  });

  it('are more for a wider margin, and none when no sprocket of the range does', () => {
    const range = { least: 10, most: 22 };
    const bare = fewestClearFrontTeeth(made(low), loop, range);
    const wide = fewestClearFrontTeeth(made(low), loop, range, 4);
    expect(wide?.frontTeeth).toBeGreaterThan(bare?.frontTeeth ?? NaN);
    expect(fewestClearFrontTeeth(made(low), loop, { least: 10, most: 12 })).toBeNull();
  });
});
