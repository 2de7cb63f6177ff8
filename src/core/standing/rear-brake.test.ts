/** Tests of the rear brake's hold on the swingarm, with the caliper on the arm and on a bracket with a stay. */
import { describe, expect, it } from 'vitest';
import { standing } from '../../../tests/support/standing.ts';
import { circleCrossings } from '../../../tests/support/circle-crossings.ts';
import { crossing } from '../plane/line.ts';
import type { Point } from '../plane/point.ts';
import { rearBrakeSlope, type RearBrake } from './rear-brake.ts';
import type { Stance } from './stance.ts';

type OwnStay = Extract<RearBrake, { caliper: 'ownStay' }>;

const stay: OwnStay = {
  caliper: 'ownStay',
  anchor: { x: -40, y: -70 },
  bracketRadius: 95,
  stayLength: 545,
  bracketSide: 'below',
};

function slope(brake: RearBrake, on: Stance = standing()): number {
  const found = rearBrakeSlope(brake, on.machine, on.arm.angle, on.pose.pivot);
  if (typeof found !== 'number') throw new Error(JSON.stringify(found));
  return found;
}

/** Slope from the patch to where stay and arm cross, drawn with compass and ruler on the ground frame. */
function slopeByLines(brake: OwnStay, on: Stance): number {
  const { pose } = on;
  const pivot: Point = pose.pivot;
  const anchor: Point = {
    x: pose.pivot.x + pose.cos * brake.anchor.x - pose.sin * brake.anchor.y,
    y: pose.pivot.y + pose.sin * brake.anchor.x + pose.cos * brake.anchor.y,
  };
  const axle: Point = on.rearAxle;
  const bolts = circleCrossings(
    { centre: axle, radius: brake.bracketRadius },
    { centre: anchor, radius: brake.stayLength },
  ).sort((a, b) => b.y - a.y);
  const bolt = bolts[brake.bracketSide === 'above' ? 0 : 1];
  const centre = crossing({ from: axle, to: pivot }, { from: bolt, to: anchor });
  if (centre === 'parallel') throw new Error('parallel');
  return centre.y / centre.x;
}

describe('the line of no squat on the rear brake', () => {
  it('passes through the pivot with the caliper on the arm', () => {
    const on = standing();
    expect(slope({ caliper: 'onArm' })).toBe(on.pose.pivot.y / on.pose.pivot.x);
  });

  it('passes through the crossing of arm and stay with the caliper on a stay, through the whole travel', () => {
    for (const bracketSide of ['above', 'below'] as const)
      for (let rear = 0; rear <= 130; rear += 13) {
        const on = standing(undefined, undefined, { front: 50, rear });
        const brake = { ...stay, bracketSide };
        expect(slope(brake, on)).toBeCloseTo(slopeByLines(brake, on), 9);
      }
  });

  it('lies along the arm when stay and arm are equal and parallel, where no crossing exists', () => {
    const on = standing();
    // Anchor as far below the pivot as the bolt is below the axle makes a parallelogram at every angle.
    const brake: OwnStay = {
      ...stay,
      anchor: { x: 0, y: -95 },
      stayLength: on.machine.rear.arm,
    };
    expect(slope(brake, on)).toBeCloseTo((on.pose.pivot.y - on.rearAxle.y) / on.pose.pivot.x, 12);
  });
});

describe('a stay is refused', () => {
  const refusal = (brake: RearBrake) => {
    const on = standing();
    return rearBrakeSlope(brake, on.machine, on.arm.angle, on.pose.pivot);
  };

  it('when it is too short or too long to reach', () => {
    expect(refusal({ ...stay, stayLength: 300 })).toMatchObject({ reason: 'stayCannotClose', found: 300 });
    expect(refusal({ ...stay, stayLength: 900 })).toMatchObject({ reason: 'stayCannotClose' });
    expect(refusal({ ...stay, bracketRadius: 0 })).toMatchObject({ reason: 'stayCannotClose' });
    expect(refusal({ ...stay, bracketRadius: NaN })).toMatchObject({ reason: 'stayCannotClose' });
  });

  it('when it passes through the axle and so cannot hold the caliper', () => {
    const { machine, arm } = standing();
    const axle = { x: -machine.rear.arm * Math.cos(arm.angle), y: -machine.rear.arm * Math.sin(arm.angle) };
    const apart = Math.hypot(stay.anchor.x - axle.x, stay.anchor.y - axle.y);
    expect(refusal({ ...stay, stayLength: apart - stay.bracketRadius + 1e-6 })).toMatchObject({
      reason: 'stayThroughAxle',
      limit: 1,
    });
  });
});
