/** What mechanics say, tried on an invented road sport bike: either it comes out, or the balance of forces says why not. */
import { describe, expect, it } from 'vitest';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { antiSquatChain } from '../../src/core/readings/anti-squat-chain.ts';
import { antiSquatSwingarm } from '../../src/core/readings/anti-squat-swingarm.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { finalDriveRatio } from '../../src/core/readings/final-drive-ratio.ts';
import { rake } from '../../src/core/readings/rake.ts';
import type { Reading } from '../../src/core/readings/reading.ts';
import { squatRatio } from '../../src/core/readings/squat-ratio.ts';
import { swingarmAngle } from '../../src/core/readings/swingarm-angle.ts';
import { upperRunAngle } from '../../src/core/readings/upper-run-angle.ts';
import { trail } from '../../src/core/readings/trail.ts';
import { degrees } from '../../src/core/units/convert.ts';
import { plainBike, plainSetup, withFrame, withSwingarm } from '../support/plain-bike.ts';
import { standing, TOPPED_OUT } from '../support/standing.ts';

/** Travel with the rider up. */
const RIDDEN = { front: 40, rear: 40 };

function value(reading: Reading, change: Partial<Setup> = {}, travel = RIDDEN): number {
  const found = reading.read(standing(plainBike, { ...plainSetup, ...change }, travel));
  if (typeof found !== 'number') throw new Error(found.reason);
  return found;
}

function changed(reading: Reading, change: Partial<Setup>): number {
  return value(reading, change) - value(reading);
}

// Source: common practice, no source.
describe('the test bike', () => {
  it('is a road sport bike: about 9.5° of swingarm hanging, 24° of rake, 95 to 105 mm of trail, 15/45', () => {
    expect(degrees(value(swingarmAngle, {}, TOPPED_OUT))).toBeCloseTo(9.5, 0);
    expect(degrees(value(rake, {}, TOPPED_OUT))).toBeCloseTo(24, 0);
    expect(value(trail, {}, TOPPED_OUT)).toBeGreaterThan(95);
    expect(value(trail, {}, TOPPED_OUT)).toBeLessThan(105);
    expect(value(finalDriveRatio)).toBe(3);
  });
});

// Source: common practice, no source.
describe('a raised rear and a lowered front both quicken the steering', () => {
  it('raising the rear takes rake and trail away and steepens the swingarm', () => {
    expect(changed(rake, { shockLength: 3 })).toBeLessThan(0);
    expect(changed(trail, { shockLength: 3 })).toBeLessThan(0);
    expect(changed(swingarmAngle, { shockLength: 3 })).toBeGreaterThan(0);
  });

  it('lowering the front takes rake and trail away and flattens the swingarm', () => {
    expect(changed(rake, { forkTubes: 10 })).toBeLessThan(0);
    expect(changed(trail, { forkTubes: 10 })).toBeLessThan(0);
    expect(changed(swingarmAngle, { forkTubes: 10 })).toBeLessThan(0);
  });
});

// Source: common practice, no source.
describe('swingarm angles are quoted topped out, and tenths are felt', () => {
  /** Anti-squat of the ridden bike whose swingarm hangs at an angle, degrees, when it stands topped out. */
  const ridden = (hangingDeg: number): number => {
    let toppedOutAngleDeg = hangingDeg;
    let bike = withSwingarm(plainBike, { toppedOutAngleDeg });
    // The nose drops as the tail rises, so the angle against the ground follows with a little less.
    for (let round = 0; round < 20; round++) {
      toppedOutAngleDeg += hangingDeg - degrees(standing(bike).swingarmAngle);
      bike = withSwingarm(plainBike, { toppedOutAngleDeg });
    }
    expect(degrees(standing(bike).swingarmAngle)).toBeCloseTo(hangingDeg, 6);
    const found = antiSquat.read(standing(bike, plainSetup, RIDDEN));
    if (typeof found !== 'number') throw new Error(found.reason);
    return found;
  };

  it('tenths of a degree are felt: each is worth about half a point of anti-squat', () => {
    const tenth = ridden(12.8) - ridden(12.7);
    expect(tenth).toBeGreaterThan(0.3);
    expect(tenth).toBeLessThan(0.7);
  });

  // At which angle the wheel starts to spin is grip and rider; the balance of forces gives the order and the steps.
  it('from the 9.5° a bike comes with to the 12.7° of a track setup it squats 15 points less', () => {
    expect(ridden(12.7) - ridden(9.5)).toBeCloseTo(15.1, 0);
  });

  it('at 12° it squats more than at 13°, by between four and five points', () => {
    expect(ridden(13) - ridden(12)).toBeGreaterThan(4);
    expect(ridden(13) - ridden(12)).toBeLessThan(5);
  });
});

// Source: common practice, no source.
describe('the same ratio on more teeth squats a little more', () => {
  const bigger = { frontTeeth: 16, rearTeeth: 48 };

  it('15/45 to 16/48 keeps the ratio and squats a little more: 0.42 points of anti-squat', () => {
    expect(value(finalDriveRatio, bigger)).toBe(value(finalDriveRatio));
    expect(changed(antiSquat, bigger)).toBeCloseTo(-0.42, 2);
    expect(changed(squatRatio, bigger)).toBeGreaterThan(0);
    expect(changed(antiSquatSwingarm, bigger)).toBe(0);
  });

  // With a constant ratio r the run turns by −(r − 1)·Δ(front radius)/centres; worked through, the pull's arm per
  // radius falls or grows with the side of the swingarm line on which the countershaft lies.
  it('turns round when the countershaft lies above the line of the swingarm instead of below it', () => {
    const atHeight = (y: number): number => {
      const bike = withFrame(plainBike, { countershaft: { x: 75, y }, guideRadius: null });
      const chain = (setup: Setup): number => standing(bike, setup, RIDDEN).chainSlope;
      return chain({ ...plainSetup, ...bigger }) - chain(plainSetup);
    };
    const { arm } = standing(plainBike, plainSetup, RIDDEN);
    const online = 75 * Math.tan(arm.angle);
    expect(atHeight(online - 10)).toBeLessThan(0);
    expect(atHeight(online + 10)).toBeGreaterThan(0);
    expect(Math.abs(atHeight(online))).toBeLessThan(0.1 * Math.abs(atHeight(online - 10)));
  });
});

// Source: common practice, no source.
describe('“a bigger rear sprocket squats more”: the balance of forces disagrees', () => {
  // For the same thrust the pull falls faster with the rear sprocket's radius than its arm about the pivot grows.
  it.each([
    { name: 'a bigger rear sprocket', change: { rearTeeth: 47 }, rise: 1.3 },
    { name: 'a smaller front sprocket', change: { frontTeeth: 14 }, rise: 2.5 },
  ])('$name flattens the upper run, yet anti-squat rises by $rise points, not falls', ({ change, rise }) => {
    expect(changed(upperRunAngle, change)).toBeLessThan(0);
    expect(changed(antiSquat, change)).toBeCloseTo(rise, 1);
    expect(changed(squatRatio, change)).toBeLessThan(0);
  });

  it('comes from the chain alone: the swingarm’s part does not change', () => {
    for (const change of [{ rearTeeth: 47 }, { frontTeeth: 14 }]) {
      expect(changed(antiSquatSwingarm, change)).toBe(0);
      expect(changed(antiSquatChain, change)).toBeCloseTo(changed(antiSquat, change), 10);
    }
  });

  it('has a part that agrees with the saying: the run does move away from the pivot, only by too little', () => {
    const before = standing(plainBike, plainSetup, RIDDEN);
    const after = standing(plainBike, { ...plainSetup, rearTeeth: 47 }, RIDDEN);
    expect(after.pullLever).toBeGreaterThan(before.pullLever);
    const pull = before.machine.rearSprocketRadius / after.machine.rearSprocketRadius;
    expect((pull * after.pullLever) / before.pullLever).toBeLessThan(1);
  });

  // Pull times arm goes with (arm / radius); a bigger radius r raises the arm by r's growth times pivot distance over
  // centre distance, so the product falls as long as the arm is more than r·(1 − pivot distance / centre distance).
  it('would hold only for a free run that passes the pivot nearer than about 13 mm', () => {
    const change = (lever: number): number => {
      let low = -120;
      let high = 60;
      const at = (y: number) => withFrame(plainBike, { countershaft: { x: 75, y }, guideRadius: null });
      for (let round = 0; round < 60; round++) {
        const middle = (low + high) / 2;
        if (standing(at(middle), plainSetup, RIDDEN).upperRunLever > lever) high = middle;
        else low = middle;
      }
      const chain = (setup: Setup) => standing(at(low), setup, RIDDEN).chainSlope;
      return chain({ ...plainSetup, rearTeeth: 47 }) - chain(plainSetup);
    };
    expect(change(40)).toBeGreaterThan(0);
    expect(change(20)).toBeGreaterThan(0);
    expect(change(5)).toBeLessThan(0);
  });
});
