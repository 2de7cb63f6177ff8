/** Squat and engine braking of every kind of drive against wheel and swingarm cut free of one another. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beltPitchRadius } from '../../src/core/drive/chain-loop.ts';
import type { DriveKind } from '../../src/core/drive/drive-kind.ts';
import { circleCrossings, outerTangent, type Tangent } from '../../src/core/plane/circle.ts';
import { engineBrakingAntiRise } from '../../src/core/readings/engine-braking.ts';
import { bottomRunLever, engineBrakingSlopeOf, squatSlopeOf } from '../../src/core/springs/drive-slopes.ts';
import { machine, type Machine } from '../../src/core/springs/machine.ts';
import { rearBrakeSlope, type RearBrake } from '../../src/core/springs/rear-brake.ts';
import { stance, type Stance } from '../../src/core/springs/stance.ts';
import { onGround } from '../../src/core/sketch/points.ts';
import { loadWithoutSpring, type CutFree, type Torque } from '../support/free-bodies.ts';
import { plainBike, plainSetup, withFrame } from '../support/plain-bike.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { driveCircles } from '../support/squat-by-lines.ts';
import { made, standing } from '../support/standing.ts';

/** Thrust and engine braking, N. Loads come out to rounding. */
const THRUST = 1000;
const BRAKING = -400;
const CLOSE = 1e-7;

function tangentOf(on: Stance, side: 'left' | 'right'): Tangent {
  const { rear, front, guide } = driveCircles(on);
  const tangent = outerTangent(rear, side === 'left' ? (guide ?? front) : front, side);
  if (tangent === 'oneInsideOther') throw new Error(tangent);
  return tangent;
}

function cut(on: Stance, kind: DriveKind, side: 'left' | 'right'): CutFree {
  const { pivot } = driveCircles(on);
  const { from, to } = tangentOf(on, side);
  const torque: Torque =
    kind === 'shaft' || kind === 'hub'
      ? { by: 'armCouple' }
      : { by: 'run', line: { at: from, way: { x: to.x - from.x, y: to.y - from.y } } };
  return { axle: { x: on.rearAxleX, y: on.rearAxleY }, pivot, torque };
}

const whole = ({ swingarm, chain }: { swingarm: number; chain: number }): number => swingarm + chain;

/** The largest disagreement over many likely bikes. */
function worst(of: (on: Stance) => number): { most: number; stood: number } {
  const seen = { most: 0, stood: 0 };
  fc.assert(
    fc.property(likelyBike, ({ bike, setup, travel }) => {
      const parts = machine(bike, setup);
      const on = parts.ok ? stance(parts, travel) : parts;
      if (!on.ok) return;
      seen.most = Math.max(seen.most, Math.abs(of(on)));
      seen.stood++;
    }),
    { numRuns: 800, seed: 1 },
  );
  return seen;
}

/** The machine driven by a belt: other pitch radii at the same teeth. */
function belted(parts: Machine, pitch: number): Machine {
  return {
    ...parts,
    frontSprocketRadius: beltPitchRadius(parts.frontTeeth, pitch),
    rearSprocketRadius: beltPitchRadius(parts.rearTeeth, pitch),
    guideRadius: null,
  };
}

describe.each(['chain', 'shaft', 'hub'] as const)('a %s drive', (kind) => {
  it('on the gas leaves the spring alone with the load that wheel and arm cut free ask for', () => {
    const { most, stood } = worst(
      (on) => THRUST * whole(squatSlopeOf(on, kind)) - loadWithoutSpring(cut(on, kind, 'left'), THRUST),
    );
    expect(most).toBeLessThan(CLOSE);
    expect(stood).toBeGreaterThan(300);
  });

  it('with the engine braking does so on its own line, the bottom run tight', () => {
    const { most } = worst(
      (on) =>
        BRAKING * whole(engineBrakingSlopeOf(on, kind)) - loadWithoutSpring(cut(on, kind, 'right'), BRAKING),
    );
    expect(most).toBeLessThan(CLOSE);
  });
});

describe('a belt drive', () => {
  const parts = belted(
    made(withFrame(plainBike, { guideRadius: null }), { ...plainSetup, frontTeeth: 30, rearTeeth: 70 }),
    11,
  );
  const on = stance(parts, { front: 30, rear: 40 });
  if (!on.ok) throw new Error(on.reason);

  it('is a chain with its own pitch radius', () => {
    expect(parts.rearSprocketRadius).toBeCloseTo((70 * 11) / (2 * Math.PI), 12);
    expect(THRUST * whole(squatSlopeOf(on, 'belt'))).toBeCloseTo(
      loadWithoutSpring(cut(on, 'belt', 'left'), THRUST),
      7,
    );
    expect(BRAKING * whole(engineBrakingSlopeOf(on, 'belt'))).toBeCloseTo(
      loadWithoutSpring(cut(on, 'belt', 'right'), BRAKING),
      7,
    );
  });
});

describe('the rear brake', () => {
  const on = standing(plainBike, plainSetup, { front: 60, rear: 30 });
  const { pose } = on;
  const slopeOf = (brake: RearBrake): number => {
    const found = rearBrakeSlope(brake, on.machine, on.arm.angle, pose.originX, pose.originY);
    if (typeof found !== 'number') throw new Error(found.reason);
    return found;
  };

  it('with its caliper on the arm loads the wheel as arm and wheel cut free ask for', () => {
    const load = loadWithoutSpring(cut(on, 'hub', 'right'), BRAKING);
    expect(BRAKING * slopeOf({ caliper: 'onArm' })).toBeCloseTo(load, 8);
  });

  it('with its caliper on a stay, parallel to the arm or not, loads it as the stay’s line asks for', () => {
    for (const anchor of [
      { x: 0, y: -90 },
      { x: -40, y: -60 },
      { x: -60, y: 80 },
    ]) {
      // The stay as long as the arm, its bracket's bolt as far from the axle as the anchor from the pivot.
      const bracketRadius = Math.hypot(anchor.x, anchor.y);
      const bracketSide = anchor.y > 0 ? 'above' : 'below';
      const stayLength = on.machine.rear.arm;
      const axle = { x: on.rearAxleX, y: on.rearAxleY };
      const ground = onGround(on, anchor.x, anchor.y);
      const bolts = circleCrossings(
        { centre: axle, radius: bracketRadius },
        { centre: ground, radius: stayLength },
      ).sort((a, b) => b.y - a.y);
      const bolt = bolts[anchor.y > 0 ? 0 : 1];
      const line = { at: bolt, way: { x: ground.x - bolt.x, y: ground.y - bolt.y } };
      const { pivot } = driveCircles(on);
      const load = loadWithoutSpring({ axle, pivot, torque: { by: 'stay', line } }, BRAKING);
      const brake: RearBrake = { caliper: 'ownStay', anchor, bracketRadius, stayLength, bracketSide };
      expect(BRAKING * slopeOf(brake)).toBeCloseTo(load, 7);
    }
  });
});

describe('engine braking', () => {
  it('pulls with the bottom run’s distance from the pivot, below it on a usual bike', () => {
    const on = standing(plainBike, plainSetup, { front: 30, rear: 40 });
    const { from, to } = tangentOf(on, 'right');
    const { pivot } = driveCircles(on);
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const below = ((to.x - from.x) * (pivot.y - from.y) - (to.y - from.y) * (pivot.x - from.x)) / length;
    expect(bottomRunLever(on)).toBeCloseTo(-below, 9);
    expect(bottomRunLever(on)).toBeLessThan(0);
  });

  it('on a usual bike holds less of its load transfer than a brake on the arm would: the pull lifts the rear', () => {
    const on = standing(plainBike, plainSetup, { front: 30, rear: 40 });
    expect(engineBrakingSlopeOf(on, 'chain').chain).toBeLessThan(0);
    expect(engineBrakingAntiRise(on, 'chain')).toBeLessThan(engineBrakingAntiRise(on, 'shaft') as number);
  });
});
