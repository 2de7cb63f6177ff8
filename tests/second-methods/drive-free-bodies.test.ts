/** Squat, engine braking and rear brake as the readings have them against wheel and swingarm cut free of one another. */
import { onGround } from '../../src/core/chassis/pose.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import type { Bike, RearBrakeMount } from '../../src/core/parts/bike.ts';
import type { DriveKind } from '../../src/core/parts/drive-kind.ts';
import { outerTangent, type Tangent } from '../../src/core/plane/circle.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { brakeAntiRise } from '../../src/core/readings/brake-anti-rise.ts';
import { engineBraking } from '../../src/core/readings/engine-braking.ts';
import type { Reading } from '../../src/core/readings/reading.ts';
import { lowerPull, lowerRunLever, engineBrakingSlopeOf } from '../../src/core/standing/drive-slopes.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { stance, type Stance } from '../../src/core/standing/stance.ts';
import { circleCrossings } from '../support/circle-crossings.ts';
import { loadWithoutSpring, type CutFree, type ForceLine } from '../support/free-bodies.ts';
import { linkedBike, sprungSetup } from '../support/linked-bike.ts';
import { plainBike, plainSetup, withFrame } from '../support/plain-bike.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { driveCircles } from '../support/squat-by-lines.ts';
import { standing } from '../support/standing.ts';

/** Thrust and braking, N. Loads come out to rounding. */
const THRUST = 1000;
const BRAKING = -400;
const CLOSE = 1e-7;

function tangentOf(on: Stance, side: 'left' | 'right'): Tangent {
  const { rear, front, guide, pivot } = driveCircles(on);
  const { lever, onGuide } = lowerPull(on);
  const below = onGuide ? { centre: pivot, radius: -lever } : front;
  const tangent = outerTangent(rear, side === 'left' ? (guide ?? front) : below, side);
  if (tangent === 'oneInsideOther') throw new Error(tangent);
  return tangent;
}

function runOf(on: Stance, side: 'left' | 'right'): ForceLine {
  const { from, to } = tangentOf(on, side);
  return { at: from, way: { x: to.x - from.x, y: to.y - from.y } };
}

/** Axle and pivot of wheel and arm cut free, and what holds the wheel's torque. */
function cut(on: Stance, torque: CutFree['torque']): CutFree {
  return { axle: on.rearAxle, pivot: driveCircles(on).pivot, torque };
}

/**
 * The load at which, by a reading, the ground force leaves the spring alone, N; null when the reading has no number.
 */
function loadBy(reading: Reading, on: Stance, along: number): number | null {
  const percent = reading.read(on);
  return typeof percent === 'number' ? (along * percent * on.centre.y) / (100 * on.pose.wheelbase) : null;
}

/** The bike with another drive, its guide only where there is a chain. */
function driven(bike: Bike, kind: DriveKind): Bike {
  return { ...bike, drive: { ...bike.drive, kind } };
}

/** The largest disagreement over many likely bikes. */
function worst(made: (bike: Bike) => Bike, of: (on: Stance, bike: Bike) => number | null) {
  const seen = { most: 0, stood: 0 };
  fc.assert(
    fc.property(likelyBike, ({ bike: likely, setup, travel }) => {
      const bike = made(likely);
      const parts = machine(bike, setup);
      const on = parts.ok ? stance(parts, travel) : parts;
      const miss = on.ok ? of(on, bike) : null;
      if (miss === null) return;
      seen.most = Math.max(seen.most, Math.abs(miss));
      seen.stood++;
    }),
    { numRuns: cases(800) },
  );
  return seen;
}

const less = (a: number | null, b: number): number | null => (a === null ? null : a - b);

describe.each(['chain', 'belt', 'shaft', 'hub'] as const)('a bike with a %s drive', (kind) => {
  const torque = (on: Stance, side: 'left' | 'right'): CutFree['torque'] =>
    kind === 'shaft' || kind === 'hub' ? { by: 'armCouple' } : { by: 'run', line: runOf(on, side) };

  it('on the gas has the anti-squat that wheel and arm cut free give', () => {
    const { most, stood } = worst(
      (bike) => driven(bike, kind),
      (on) => less(loadBy(antiSquat, on, THRUST), loadWithoutSpring(cut(on, torque(on, 'left')), THRUST)),
    );
    expect(most).toBeLessThan(CLOSE);
    expect(stood).toBeGreaterThan(cases(300));
  });

  it('with the engine braking has the anti-rise that they give, on the lower run', () => {
    const { most, stood } = worst(
      (bike) => driven(bike, kind),
      (on) =>
        less(loadBy(engineBraking, on, BRAKING), loadWithoutSpring(cut(on, torque(on, 'right')), BRAKING)),
    );
    expect(most).toBeLessThan(CLOSE);
    expect(stood).toBeGreaterThan(cases(300));
  });

  it('on the gas comes to rest with what they leave for the spring, to a millionth of a newton', () => {
    const on = standBike(driven(linkedBike, kind), { ...sprungSetup, acceleration: 0.3 }, 'accelerating');
    if (!on.ok || on.equilibrium === undefined) throw new Error(`no rest with a ${kind}`);
    const { loads, rear } = on.equilibrium;
    const held = loadWithoutSpring(cut(on, torque(on, 'left')), loads.thrust);
    const weight = on.machine.rearUnsprung * 9.80665;
    const armSlope = (on.pose.pivot.y - on.rearAxle.y) / on.pose.pivot.x;
    expect(rear.forceAtWheel).toBeCloseTo(loads.rearLoad - held - weight * (1 - 0.3 * armSlope), 5);
  });

  it('with the throttle closed comes to rest with what they leave for the spring, to a millionth of a newton', () => {
    const setup = { ...sprungSetup, engineDeceleration: 0.3 };
    const on = standBike(driven(linkedBike, kind), setup, 'throttleClosed');
    if (!on.ok || on.equilibrium === undefined) throw new Error(`no rest with a ${kind}`);
    const { loads, rear } = on.equilibrium;
    expect(loads.engineBrake).toBeCloseTo(0.3 * 9.80665 * on.mass, 9);
    const held = loadWithoutSpring(cut(on, torque(on, 'right')), -loads.engineBrake);
    const weight = on.machine.rearUnsprung * 9.80665;
    const armSlope = (on.pose.pivot.y - on.rearAxle.y) / on.pose.pivot.x;
    expect(rear.forceAtWheel).toBeCloseTo(loads.rearLoad - held - weight * (1 + 0.3 * armSlope), 5);
  });
});

it('a belt runs on pitch radii of teeth · pitch / 2π', () => {
  const belt = { ...plainBike, drive: { ...plainBike.drive, kind: 'belt' as const, chainPitch: 11 } };
  const on = standing(withFrame(belt, { guideRadius: null }), {
    ...plainSetup,
    frontTeeth: 30,
    rearTeeth: 70,
  });
  expect(on.machine.rearSprocketRadius).toBeCloseTo((70 * 11) / (2 * Math.PI), 12);
});

/** A stay as long as the arm, its bracket's bolt as far from the axle as the anchor from the pivot, or otherwise. */
function onStay(bike: Bike, anchor: { x: number; y: number }, stretch: number): Bike {
  const mount: RearBrakeMount = {
    caliper: 'ownStay',
    stayAnchor: anchor,
    bracketRadius: Math.hypot(anchor.x, anchor.y),
    stayLength: bike.swingarm.length + stretch,
    bracketSide: anchor.y > 0 ? 'above' : 'below',
  };
  return { ...bike, rearBrake: mount };
}

/** The stay's line, its bolt found where the two circles cross. */
function stayOf(on: Stance, { rearBrake }: Bike): ForceLine | null {
  const ground = onGround(on.pose, rearBrake.stayAnchor);
  const crossings = circleCrossings(
    { centre: on.rearAxle, radius: rearBrake.bracketRadius },
    { centre: ground, radius: rearBrake.stayLength },
  );
  if (crossings.length < 2) return null;
  // Which of the two lies above the line from axle to anchor, by that line's own normal.
  const above = (p: { x: number; y: number }) =>
    (ground.x - on.rearAxle.x) * (p.y - on.rearAxle.y) - (ground.y - on.rearAxle.y) * (p.x - on.rearAxle.x);
  const [first, second] = crossings;
  const bolt = above(first) > above(second) === (rearBrake.bracketSide === 'above') ? first : second;
  return { at: bolt, way: { x: ground.x - bolt.x, y: ground.y - bolt.y } };
}

describe('the rear brake', () => {
  it('with its caliper on the arm has the anti-rise that arm and wheel cut free give', () => {
    const { most, stood } = worst(
      (bike) => bike,
      (on) =>
        less(loadBy(brakeAntiRise, on, BRAKING), loadWithoutSpring(cut(on, { by: 'armCouple' }), BRAKING)),
    );
    expect(most).toBeLessThan(CLOSE);
    expect(stood).toBeGreaterThan(cases(300));
  });

  it.each([
    [{ x: 0, y: -90 }, 0],
    [{ x: -40, y: -60 }, 12],
    [{ x: -60, y: 80 }, -15],
  ])('with its caliper on a stay to %j has the anti-rise that the stay’s line gives', (anchor, stretch) => {
    const { most, stood } = worst(
      (bike) => onStay(bike, anchor, stretch),
      (on, bike) => {
        const line = stayOf(on, bike);
        if (line === null) return null;
        return less(
          loadBy(brakeAntiRise, on, BRAKING),
          loadWithoutSpring(cut(on, { by: 'stay', line }), BRAKING),
        );
      },
    );
    expect(most).toBeLessThan(1e-5);
    expect(stood).toBeGreaterThan(cases(200));
  });

  it('on a stay holds the bike on the brakes by the machine’s own mount', () => {
    const setup = { ...sprungSetup, braking: 0.3, brakeFrontShare: 0 };
    const bike = onStay(linkedBike, { x: 0, y: -90 }, 4);
    const on = standBike(bike, setup, 'braking');
    if (!on.ok || on.equilibrium === undefined) throw new Error('no rest on the brakes');
    const line = stayOf(on, bike);
    if (line === null) throw new Error('the stay does not reach');
    const { loads, rear } = on.equilibrium;
    const held = loadWithoutSpring(cut(on, { by: 'stay', line }), -loads.rearBrake);
    const weight = on.machine.rearUnsprung * 9.80665;
    const armSlope = (on.pose.pivot.y - on.rearAxle.y) / on.pose.pivot.x;
    expect(rear.forceAtWheel).toBeCloseTo(loads.rearLoad - held - weight * (1 + 0.3 * armSlope), 5);
  });
});

describe('engine braking', () => {
  it('pulls with the lower run’s distance from the pivot, below it on a usual bike', () => {
    const on = standing(plainBike, plainSetup, { front: 30, rear: 40 });
    const { from, to } = tangentOf(on, 'right');
    const { pivot } = driveCircles(on);
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const below = ((to.x - from.x) * (pivot.y - from.y) - (to.y - from.y) * (pivot.x - from.x)) / length;
    expect(lowerRunLever(on)).toBeCloseTo(-below, 9);
    expect(lowerRunLever(on)).toBeLessThan(0);
  });

  it('on a usual bike holds less of its load transfer than a brake on the arm would: the pull lifts the rear', () => {
    const on = standing(plainBike, plainSetup, { front: 30, rear: 40 });
    expect(engineBrakingSlopeOf(on).chain).toBeLessThan(0);
    expect(engineBraking.read(on)).toBeLessThan(Number(brakeAntiRise.read(on)));
  });
});
