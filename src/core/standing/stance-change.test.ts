/** Tests of the exact derivatives of a stance against differences of the stance itself. */
import { describe, expect, it } from 'vitest';
import { linkedBike } from '../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup, withFork, withFrame } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { changeByFront, changeByRear, changeOfChainSlope, changeOfSwingarmSlope } from './stance-change.ts';
import type { Stance, Travel } from './stance.ts';

/** Half the distance between the two stances that are compared, mm: truncation and rounding both stay below 1e-9. */
const HALF_WAY = 1e-2;

/** Legs that do not lean as the axis does. */
const leaning: Bike = withFork(plainBike, { legAngleDeg: 2, axleLead: 12 });

/** Every number of a stance or of its change. */
type Changes = Readonly<Record<string, number>>;

const parts = (on: Stance): Changes => ({
  armAngle: on.arm.angle,
  pitch: on.pose.pitch,
  pivotX: on.pose.pivot.x,
  pivotY: on.pose.pivot.y,
  wheelbase: on.pose.wheelbase,
  swingarmSlope: on.swingarmSlope,
  chainSlope: on.chainSlope,
});

function changes(on: Stance, end: 'front' | 'rear'): Changes {
  const change = end === 'front' ? changeByFront(on) : changeByRear(on);
  const { pivot, ...numbers } = change;
  return {
    ...numbers,
    pivotX: pivot.x,
    pivotY: pivot.y,
    swingarmSlope: changeOfSwingarmSlope(on, change),
    chainSlope: changeOfChainSlope(on, change),
  };
}

function expectAlike(bike: Bike, setup: Setup, travel: Travel): void {
  for (const end of ['front', 'rear'] as const) {
    const at = (way: number): Changes =>
      parts(standing(bike, setup, { ...travel, [end]: travel[end] + way }));
    const exact = changes(standing(bike, setup, travel), end);
    const after = at(HALF_WAY);
    const before = at(-HALF_WAY);
    for (const key of Object.keys(after)) {
      const difference = (after[key] - before[key]) / (2 * HALF_WAY);
      expect(Math.abs(exact[key] - difference), `${end} ${key}`).toBeLessThan(1e-7);
    }
  }
}

describe('the change of a stance per mm of travel', () => {
  it('equals its differences with a table of travel and leaning legs, and with links', () => {
    for (const bike of [leaning, linkedBike])
      for (const front of [12, 55, 100])
        for (const rear of [15, 61, 110]) expectAlike(bike, plainSetup, { front, rear });
  });

  it('leaves the chain’s lever as it is while the run lies on the guide', () => {
    const bike = withFrame(plainBike, { guideRadius: 45 });
    const on = standing(bike, plainSetup, { front: 40, rear: 70 });
    expect(on.pullLever).toBe(45);
    expectAlike(bike, plainSetup, { front: 40, rear: 70 });
  });

  it('has no part of the chain with a shaft, and none of the arm at the front', () => {
    const bike: Bike = { ...plainBike, drive: { ...plainBike.drive, kind: 'shaft' } };
    const travel = { front: 30, rear: 50 };
    expectAlike(bike, plainSetup, travel);
    expect(changes(standing(bike, plainSetup, travel), 'rear').chainSlope).toBe(0);
    expect(changeByFront(standing(bike, plainSetup, travel)).armAngle).toBe(0);
  });
});
