/** Tests of where a bike comes to rest on its springs under steady forces. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withFrame } from '../../../../tests/support/plain-bike.ts';
import {
  plainSprings,
  reached,
  sprung,
  withForkSprings,
  withShock,
} from '../../../../tests/support/plain-springs.ts';
import { STANDARD_GRAVITY } from '../../units/convert.ts';
import { balance } from './equilibrium.ts';
import { AT_REST, type RideForces } from './ride-forces.ts';

const bike = sprung();
const rest = (forces: Partial<RideForces> = {}, springs = plainSprings) =>
  reached(balance(springs === plainSprings ? bike : sprung(springs), { ...AT_REST, ...forces }));
const refusal = (forces: Partial<RideForces>, made = bike) => balance(made, { ...AT_REST, ...forces });

describe('a bike at rest', () => {
  it('has wheel loads that carry its weight and balance its centre', () => {
    const { front, rear, stance } = rest();
    const weight = stance.mass * STANDARD_GRAVITY;
    expect(front.wheelLoad + rear.wheelLoad).toBeCloseTo(weight, 9);
    expect(front.wheelLoad * stance.pose.wheelbase).toBeCloseTo(weight * stance.centre.x, 5);
    expect(front.wheelLoad).toBe(front.wheelLoadInPlane);
  });

  it('has spring forces that hold what the wheels carry less the unsprung weight', () => {
    const { front, rear, stance } = rest();
    const { frontUnsprung, rearUnsprung } = stance.machine;
    const leg = stance.machine.front.legLean + stance.pose.pitch;
    const carried = front.wheelLoad - frontUnsprung * STANDARD_GRAVITY;
    expect(front.springForce).toBeCloseTo(carried * Math.cos(leg), 6);
    expect(front.springForce).toBeCloseTo(2 * 9.5 * (14 + front.travelUsed), 9);
    expect(rear.forceAtWheel).toBeCloseTo(rear.wheelLoad - rearUnsprung * STANDARD_GRAVITY, 6);
    expect(rear.springForce).toBeCloseTo(95 * (9 + rear.shockStroke), 9);
    expect(rear.forceAtWheel).toBeCloseTo(rear.springForce * rear.motionRatio, 9);
  });

  it('says how much travel is used and left, and how near it came', () => {
    const { front, rear, miss, stable } = rest();
    expect(front.travelUsed + front.travelLeft).toBe(120);
    expect(rear.travelUsed + rear.travelLeft).toBe(130);
    expect(front.rest).toBe('onSprings');
    expect(front.stopForce).toBe(0);
    expect(miss).toBeLessThan(1e-9);
    expect(stable).toBe(true);
  });

  it('comes to the same rest wherever the search begins', () => {
    const { stance } = rest();
    for (const near of [
      { front: 0, rear: 0 },
      { front: 120, rear: 130 },
      { front: 3, rear: 100 },
    ]) {
      const again = reached(balance(bike, AT_REST, near)).stance.travel;
      expect(again.front).toBeCloseTo(stance.travel.front, 8);
      expect(again.rear).toBeCloseTo(stance.travel.rear, 8);
    }
  });
});

describe('on the gas', () => {
  it('load moves to the rear by mass × acceleration × height over wheelbase', () => {
    const { front, stance, loads } = rest({ acceleration: 0.5 });
    const weight = stance.mass * STANDARD_GRAVITY;
    const still = (weight * stance.centre.x) / stance.pose.wheelbase;
    expect(still - front.wheelLoad).toBeCloseTo((weight * 0.5 * stance.centre.y) / stance.pose.wheelbase, 6);
    expect(loads.thrust).toBeCloseTo(weight * 0.5, 9);
    expect(loads.chainPull / loads.thrust).toBeCloseTo(
      stance.machine.rearRadius / stance.machine.rearSprocketRadius,
      12,
    );
  });

  it('drag asks for thrust and unloads the front by its height, even at steady speed', () => {
    const drag = { force: 400, height: 700 };
    const { front, stance, loads } = rest({ drag });
    const weight = stance.mass * STANDARD_GRAVITY;
    expect(loads.thrust).toBe(400);
    expect(front.wheelLoad * stance.pose.wheelbase).toBeCloseTo(weight * stance.centre.x - 400 * 700, 5);
  });

  it('the front tops out before it lifts, and the stop tells what it holds', () => {
    const { front, rear } = rest({ acceleration: 0.9 });
    expect(front.rest).toBe('toppedOut');
    expect(front.travelUsed).toBe(0);
    expect(front.stopForce).toBeGreaterThan(0);
    expect(front.wheelLoad).toBeGreaterThan(0);
    expect(rear.rest).toBe('onSprings');
  });

  it('more than the front can hold is refused with the limit of that posture', () => {
    expect(refusal({ acceleration: 1.3 })).toMatchObject({ reason: 'frontLifts', end: 'front', found: 1.3 });
    const refused = refusal({ acceleration: 1.3 });
    if (refused.ok) throw new Error('The front should lift');
    expect(refused.limit).toBeGreaterThan(1);
    expect(refused.limit).toBeLessThan(1.2);
  });
});

describe('on the brakes', () => {
  it('the fork carries load transfer by the cosine and braking force by the sine of its lean', () => {
    const { front, stance, loads } = rest({ acceleration: -0.4 });
    const leg = stance.machine.front.legLean + stance.pose.pitch;
    const weight = stance.mass * STANDARD_GRAVITY;
    const unsprung = stance.machine.frontUnsprung * STANDARD_GRAVITY;
    expect(loads.frontBrake).toBeCloseTo(0.4 * weight, 9);
    const along =
      (front.wheelLoad - unsprung) * Math.cos(leg) + (0.4 * weight - 0.4 * unsprung) * Math.sin(leg);
    expect(front.springForce).toBeCloseTo(along, 6);
  });

  it('are shared as set, and the rear brake holds the rear down', () => {
    const { loads, stance, rear } = rest({ acceleration: -0.3, frontBrakeShare: 0.6 });
    expect(loads.frontBrake).toBeCloseTo(0.6 * 0.3 * stance.mass * STANDARD_GRAVITY, 9);
    expect(loads.rearBrake).toBeCloseTo(0.4 * 0.3 * stance.mass * STANDARD_GRAVITY, 9);
    expect(loads.thrust).toBe(0);
    const frontOnly = rest({ acceleration: -0.3, frontBrakeShare: 1 });
    expect(rear.travelUsed).toBeGreaterThan(frontOnly.rear.travelUsed + 5);
  });

  it('a caliper on its own stay, parallel to the arm, holds the rear down less than one on the arm', () => {
    const stay = {
      caliper: 'ownStay',
      anchor: { x: 0, y: -95 },
      bracketRadius: 95,
      stayLength: 580,
      bracketSide: 'below',
    } as const;
    const forces = { ...AT_REST, acceleration: -0.3, frontBrakeShare: 0 };
    const onStay = reached(balance(sprung(plainSprings, plainBike, plainSetup, stay), forces));
    const onArm = reached(balance(bike, forces));
    expect(onStay.rear.travelUsed).toBeLessThan(onArm.rear.travelUsed - 5);
    const tooShort = sprung(plainSprings, plainBike, plainSetup, { ...stay, stayLength: 300 });
    expect(balance(tooShort, forces)).toMatchObject({ reason: 'stayCannotClose' });
  });

  it('drag brakes as well, so that the wheels have less to do', () => {
    const { loads, stance } = rest({ acceleration: -0.2, drag: { force: 300, height: 600 } });
    expect(loads.frontBrake).toBeCloseTo(0.2 * stance.mass * STANDARD_GRAVITY - 300, 9);
  });

  it('more than the rear stays down at is refused with the limit of that posture', () => {
    expect(refusal({ acceleration: -1.4 })).toMatchObject({ reason: 'rearLifts', end: 'rear', found: 1.4 });
  });
});

describe('leaned over', () => {
  it('the springs carry 1/cos of the weight while the vertical wheel loads still carry the weight', () => {
    const lean = 0.8;
    const { front, rear, stance } = rest({ lean });
    const weight = stance.mass * STANDARD_GRAVITY;
    expect(front.wheelLoadInPlane + rear.wheelLoadInPlane).toBeCloseTo(weight / Math.cos(lean), 8);
    expect(front.wheelLoad + rear.wheelLoad).toBeCloseTo(weight, 8);
    expect(front.travelUsed).toBeGreaterThan(rest().front.travelUsed + 10);
  });

  it('to either side is the same', () => {
    expect(rest({ lean: -0.6 }).front.travelUsed).toBe(rest({ lean: 0.6 }).front.travelUsed);
  });
});

describe('the stops', () => {
  it('are named at both ends: bottomed by metal or by the coils', () => {
    const soft = rest({ lean: 0.7 }, withForkSprings({ rate: 3 }, withShock({ rate: 30 })));
    expect(soft.front.rest).toBe('bottomed');
    expect(soft.rear.rest).toBe('bottomed');
    expect(soft.rear.stopForce).toBeGreaterThan(0);
    const bound = rest({}, withForkSprings({ springTravel: 50 }, withShock({ springTravel: 24 })));
    expect(bound.front).toMatchObject({ rest: 'coilsClosed', travelLeft: 0 });
    expect(bound.front.travelUsed).toBe(36);
    expect(bound.rear.rest).toBe('coilsClosed');
    expect(bound.rear.shockStroke).toBeCloseTo(15, 8);
  });

  it('of a shock whose stroke ends before the wheel’s travel end the travel', () => {
    const short = rest({ lean: 1 }, withShock({ rate: 40, closedLength: 290 }));
    expect(short.rear.rest).toBe('bottomed');
    expect(short.rear.shockStroke).toBeCloseTo(40, 8);
    expect(short.rear.travelUsed).toBeLessThan(90);
  });
});

describe('a balance is refused', () => {
  it('with a lean, a share, a drag or an acceleration that cannot be', () => {
    expect(refusal({ lean: 1.5 })).toMatchObject({ reason: 'leanImpossible', found: 1.5 });
    expect(refusal({ lean: NaN })).toMatchObject({ reason: 'inputNotANumber' });
    expect(refusal({ frontBrakeShare: 1.2 })).toMatchObject({ reason: 'brakeShareImpossible', found: 1.2 });
    expect(refusal({ drag: { force: -5, height: 0 } })).toMatchObject({
      reason: 'dragImpossible',
      found: -5,
    });
    expect(refusal({ acceleration: 1e9 })).toMatchObject({ reason: 'inputTooLarge', limit: 100 });
    expect(refusal({ drag: { force: 1e9, height: 0 } })).toMatchObject({ reason: 'inputTooLarge' });
    expect(refusal({ acceleration: Infinity })).toMatchObject({ reason: 'inputNotANumber' });
  });

  it('when nothing has mass', () => {
    const parts = { ...bike.machine, carried: [], frontUnsprung: 0, rearUnsprung: 0 };
    expect(refusal({}, { ...bike, machine: parts })).toMatchObject({ reason: 'noMass' });
  });

  it('when the mass is at or behind the rear axle, or ahead of the front one', () => {
    const behind = sprung(plainSprings, withFrame(plainBike, { sprungCentre: { x: -1400, y: 100 } }));
    expect(refusal({}, behind)).toMatchObject({ reason: 'massBehindRearAxle', limit: 0 });
    const ahead = sprung(plainSprings, withFrame(plainBike, { sprungCentre: { x: 2400, y: 100 } }));
    expect(refusal({}, ahead)).toMatchObject({ reason: 'massAheadOfFrontAxle' });
  });
});
