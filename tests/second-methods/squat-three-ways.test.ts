/** Squat by balance of forces against two ways that share no formula with it: lines, and virtual work. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance, type Stance } from '../../src/core/standing/stance.ts';
import { plainBike, plainSetup, withFrame } from '../support/plain-bike.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { driveCircles, instantCentre, slopeByLines } from '../support/squat-by-lines.ts';
import { slopeByWork } from '../support/squat-by-work.ts';
import { standing } from '../support/standing.ts';

/** Slopes are near 0.3; the lines agree to rounding, magnified where they cross far away. */
const BY_LINES = 1e-9;
/** Central differences over 1e-5 rad: truncation 1e-10, rounding of lengths near 1e-13·600/1e-5. */
const BY_WORK = 1e-7;

const RUNS = cases(2000);

function slope(standing: Stance): number {
  return standing.swingarmSlope + standing.chainSlope;
}

/** The most that two ways disagree over many likely bikes, and how many stood, with or without a bending chain. */
function worst(other: (standing: Stance) => number): { most: number; free: number; bent: number } {
  const seen = { most: 0, free: 0, bent: 0 };
  fc.assert(
    fc.property(likelyBike, ({ bike, setup, travel }) => {
      const parts = machine(bike, setup);
      const on = parts.ok ? stance(parts, travel) : parts;
      if (!on.ok) return;
      seen.most = Math.max(seen.most, Math.abs(other(on) - slope(on)));
      if (driveCircles(on).guide === null) seen.free++;
      else seen.bent++;
    }),
    { numRuns: RUNS },
  );
  return seen;
}

describe('the squat slope', () => {
  it('is the slope of patch to instant centre, drawn by lines, on many bikes with and without a bending chain', () => {
    const { most, free, bent } = worst((on) => slopeByLines(driveCircles(on)));
    expect(most).toBeLessThan(BY_LINES);
    expect(free).toBeGreaterThan(RUNS / 4);
    expect(bent).toBeGreaterThan(RUNS / 20);
  });

  it('is square to the path of the patch with the driveline locked, on many bikes with and without a bending chain', () => {
    const { most, free, bent } = worst((on) => slopeByWork(driveCircles(on)));
    expect(most).toBeLessThan(BY_WORK);
    expect(free).toBeGreaterThan(RUNS / 4);
    expect(bent).toBeGreaterThan(RUNS / 20);
  });

  it('agrees all three ways when the chain lies over the guide, and is lower than with a free chain', () => {
    const low = withFrame(plainBike, { countershaft: { x: 75, y: -45 }, guideRadius: 30 });
    const setup = { ...plainSetup, frontTeeth: 12 };
    const over = standing(low, setup);
    expect(over.upperRunLever).toBeLessThan(30);
    expect(over.pullLever).toBe(30);
    expect(slopeByLines(driveCircles(over))).toBeCloseTo(slope(over), 12);
    expect(slopeByWork(driveCircles(over))).toBeCloseTo(slope(over), 7);
    const free = standing(withFrame(low, { guideRadius: null }), setup);
    expect(slope(over)).toBeLessThan(slope(free));
  });

  it('is followed through the whole travel by both other ways', () => {
    for (let rear = 0; rear <= plainBike.swingarm.wheelTravel; rear += 10) {
      const on = standing(plainBike, plainSetup, { front: 60, rear });
      expect(slopeByLines(driveCircles(on))).toBeCloseTo(slope(on), 9);
      expect(slopeByWork(driveCircles(on))).toBeCloseTo(slope(on), 7);
    }
  });

  it('passes the crossing at infinity without a jump', () => {
    // Somewhere in this range the upper run and the arm become parallel and the crossing changes sides.
    const sides = new Set<number>();
    let before: number | undefined;
    for (let y = -60; y <= 100; y += 1) {
      const on = standing(withFrame(plainBike, { countershaft: { x: 75, y }, guideRadius: null }));
      const centre = instantCentre(driveCircles(on));
      if (centre !== 'parallel') sides.add(Math.sign(centre.x));
      if (before !== undefined) expect(Math.abs(slope(on) - before)).toBeLessThan(0.01);
      before = slope(on);
    }
    expect([...sides].sort()).toEqual([-1, 1]);
  });
});
