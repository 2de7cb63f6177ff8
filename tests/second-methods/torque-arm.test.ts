/** A shaft's housing on a torque arm against wheel and arm cut free, construction by lines and a rigid-body engine. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import type { Bike, HousingMount } from '../../src/core/parts/bike.ts';
import { rotate, type Point } from '../../src/core/plane/point.ts';
import { crossing } from '../../src/core/plane/line.ts';
import { brakeAntiRise } from '../../src/core/readings/brake-anti-rise.ts';
import { balance } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { AT_REST } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { engineBrakingSlopeOf } from '../../src/core/standing/drive-slopes.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance, type Stance } from '../../src/core/standing/stance.ts';
import { torqueArmLine } from '../../src/scene/construction/squat-construction.ts';
import { circleCrossings } from '../support/circle-crossings.ts';
import { settledByEngine } from '../support/engine-bike.ts';
import { loadWithoutSpring } from '../support/free-bodies.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { plainSprings, reached, sprung } from '../support/plain-springs.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { shockBike, shockSetup } from '../support/shock-bike.ts';
import { standing } from '../support/standing.ts';

const THRUST = 1000;
const CLOSE = 1e-7;

const HOUSING: HousingMount = {
  heldBy: 'torqueArm',
  armAnchor: { x: -15, y: -80 },
  boltRadius: 95,
  armLength: 545,
  boltSide: 'below',
};

function onTorqueArm(bike: Bike, housing: Partial<HousingMount> = {}): Bike {
  return { ...bike, drive: { ...bike.drive, kind: 'shaft' }, housing: { ...HOUSING, ...housing } };
}

const random = fc.record({
  made: likelyBike,
  x: fc.double({ min: -60, max: 60, noNaN: true }),
  y: fc.double({ min: -130, max: 130, noNaN: true }),
  boltRadius: fc.double({ min: 50, max: 150, noNaN: true }),
  shorter: fc.double({ min: -60, max: 60, noNaN: true }),
});

/** Load at the patch, N, at which a thrust leaves the spring alone, by wheel, housing and arm cut free. */
function loadCutFree(on: Stance, along: number): number {
  const line = torqueArmLine(on);
  if (line === null) throw new Error('no torque arm');
  const way = { x: line.to.x - line.from.x, y: line.to.y - line.from.y };
  return loadWithoutSpring(
    { axle: on.rearAxle, pivot: on.pose.pivot, torque: { by: 'stay', line: { at: line.from, way } } },
    along,
  );
}

/** Half the swing over which the path is measured, radians: its square and the rounding over it are both below 1e-8. */
const SWING = 1e-5;
/** So much of a slope the path may differ by. */
const BY_WORK = 1e-6;
/** Beyond this the bolts lie nearly in line with the arm, where a swing turns the housing by far more than itself. */
const STEEP = 5;

/**
 * Slope of the ground force that does no work while frame and shaft are held and the arm swings: the wheel then turns
 * with its housing, and the force is square to the path of the tyre's lowest point. Null where the bolts do not reach.
 */
function slopeByWork(on: Stance): number | null {
  const line = torqueArmLine(on);
  if (line === null) throw new Error('no torque arm');
  const { pivot } = on.pose;
  const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
  const boltRadius = apart(line.from, on.rearAxle);
  const armLength = apart(line.from, line.to);
  const lowest = (by: number): Point | null => {
    const axle = turned(on.rearAxle, pivot, by);
    const [bolt] = circleCrossings(
      { centre: axle, radius: boltRadius },
      { centre: line.to, radius: armLength },
    ).sort((a, b) => apart(a, line.from) - apart(b, line.from));
    if (bolt === undefined) return null;
    const housing =
      Math.atan2(bolt.y - axle.y, bolt.x - axle.x) -
      Math.atan2(line.from.y - on.rearAxle.y, line.from.x - on.rearAxle.x);
    const radius = on.rearAxle.y;
    return { x: axle.x + radius * Math.sin(housing), y: axle.y - radius * Math.cos(housing) };
  };
  const [up, down] = [lowest(-SWING), lowest(SWING)];
  return up === null || down === null ? null : -(down.x - up.x) / (down.y - up.y);
}

function turned(p: Point, about: Point, by: number): Point {
  const { x, y } = rotate({ x: p.x - about.x, y: p.y - about.y }, by);
  return { x: about.x + x, y: about.y + y };
}

describe('a shaft with a torque arm', () => {
  it('has a squat line square to the path of the patch with frame and shaft held', () => {
    let compared = 0;
    fc.assert(
      fc.property(random, ({ made: { bike, setup, travel }, x, y, boltRadius, shorter }) => {
        const armLength = bike.swingarm.length + x + shorter;
        const parts = machine(onTorqueArm(bike, { armAnchor: { x, y }, boltRadius, armLength }), setup);
        const on = parts.ok ? stance(parts, travel) : parts;
        if (!on.ok) return;
        const slope = on.swingarmSlope + on.chainSlope;
        const work = Math.abs(slope) < STEEP ? slopeByWork(on) : null;
        if (work === null) return;
        compared++;
        expect(Math.abs(work - slope)).toBeLessThan(BY_WORK * Math.max(1, slope ** 2));
      }),
      { numRuns: cases(600) },
    );
    expect(compared).toBeGreaterThan(cases(150));
  });

  it('has the squat line that wheel, housing and arm cut free give, the same on the gas and with the throttle closed', () => {
    const seen = { most: 0, crossed: 0, stood: 0 };
    fc.assert(
      fc.property(random, ({ made: { bike, setup, travel }, x, y, boltRadius, shorter }) => {
        const armLength = bike.swingarm.length + x + shorter;
        const housed = onTorqueArm(bike, { armAnchor: { x, y }, boltRadius, armLength });
        const parts = machine(housed, setup);
        const on = parts.ok ? stance(parts, travel) : parts;
        if (!on.ok) return;
        seen.stood += 1;
        const slope = on.swingarmSlope + on.chainSlope;
        const engine = engineBrakingSlopeOf(on);
        expect(engine.swingarm + engine.chain).toBe(slope);
        // Steep lines carry loads of many thousand newtons, known to as many digits.
        const off = Math.abs(THRUST * slope - loadCutFree(on, THRUST)) / Math.max(1, Math.abs(slope));
        seen.most = Math.max(seen.most, off);
        const line = torqueArmLine(on);
        if (line === null) throw new Error('no torque arm');
        const centre = crossing({ from: on.rearAxle, to: on.pose.pivot }, line);
        if (centre === 'parallel' || Math.abs(centre.x) < 50 || Math.abs(centre.x) > 5000) return;
        seen.crossed += 1;
        expect(Math.abs(centre.y / centre.x - slope)).toBeLessThan(1e-6 * Math.max(1, Math.abs(slope)));
      }),
      { numRuns: cases(600) },
    );
    expect(seen.most).toBeLessThan(CLOSE);
    expect(seen.stood).toBeGreaterThan(cases(200));
    expect(seen.crossed).toBeGreaterThan(cases(150));
  });

  it('has the swingarm’s own slope where the torque arm lies parallel to the swingarm', () => {
    const travel = { front: 40, rear: 40 };
    const { length } = plainBike.swingarm;
    // With anchor and bolt equally far below pivot and axle the four make a parallelogram.
    const housed = onTorqueArm(plainBike, { armAnchor: { x: 0, y: -90 }, boltRadius: 90, armLength: length });
    const on = standing(housed, plainSetup, travel);
    const armSlope = (on.pose.pivot.y - on.rearAxle.y) / on.pose.pivot.x;
    expect(on.swingarmSlope + on.chainSlope).toBeCloseTo(armSlope, 12);
  });

  it('brakes along the same line with the caliper on its housing', () => {
    const rearBrake = { ...plainBike.rearBrake, caliper: 'onHousing' as const };
    const on = standing({ ...onTorqueArm(plainBike), rearBrake }, plainSetup);
    const bracket = { ...plainBike.rearBrake, caliper: 'ownStay' as const };
    const { armAnchor, boltRadius, armLength, boltSide } = HOUSING;
    const stayed = {
      ...bracket,
      stayAnchor: armAnchor,
      bracketRadius: boltRadius,
      stayLength: armLength,
      bracketSide: boltSide,
    };
    const alike = standing({ ...onTorqueArm(plainBike), rearBrake: stayed }, plainSetup);
    expect(brakeAntiRise.read(on)).toBe(brakeAntiRise.read(alike));
    const chained = standing({ ...plainBike, rearBrake }, plainSetup);
    expect(brakeAntiRise.read(chained)).toBe(brakeAntiRise.read(standing(plainBike, plainSetup)));
  });

  it('is refused in line with the swingarm, and where the torque arm does not reach', () => {
    const made = (housing: Partial<HousingMount>) => {
      const parts = machine(onTorqueArm(plainBike, housing), plainSetup);
      return parts.ok ? stance(parts, { front: 0, rear: 0 }) : parts;
    };
    const { length } = plainBike.swingarm;
    // Anchor on the pivot: with arm and radius as long as the swingarm together, all lie in one line.
    expect(made({ armAnchor: { x: 0, y: 0 }, boltRadius: 90, armLength: length - 90 + 1e-4 })).toMatchObject({
      ok: false,
      reason: 'torqueArmInLine',
      end: 'rear',
    });
    expect(made({ armLength: 200 })).toMatchObject({ ok: false, reason: 'torqueArmCannotClose', found: 200 });
  });

  it.each([
    ['on the gas', 0.4, 0],
    ['with the throttle closed', -0.25, 0.25],
  ])('%s comes to rest where a rigid-body engine does', (_name, acceleration, engineBraking) => {
    const made = sprung(plainSprings, onTorqueArm(shockBike), shockSetup);
    const forces = { ...AT_REST, acceleration, engineBraking, slowedByDrag: engineBraking > 0 ? 1 : 0 };
    const rest = reached(balance(made, forces));
    expect([rest.front.rest, rest.rear.rest]).toEqual(['onSprings', 'onSprings']);
    const { front, rear } = rest.stance.travel;
    const start = reached(stance(made.machine, { front: front * 0.8 + 10, rear: rear * 0.8 + 8 }));
    const settled = settledByEngine(start, plainSprings, { acceleration, pressed: 1, held: 'torqueArm' });
    expect(settled.speed).toBeLessThan(1e-4);
    // The engine's slop is a hundredth of a millimetre.
    expect(Math.abs(settled.travel.front - front)).toBeLessThan(0.01);
    expect(Math.abs(settled.travel.rear - rear)).toBeLessThan(0.01);
  });
});
