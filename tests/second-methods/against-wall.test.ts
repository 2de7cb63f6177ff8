/** The wall test against free bodies, virtual work and a rigid-body engine, none of which shares a formula with it. */
import { describe, expect, it } from 'vitest';
import { onGround } from '../../src/core/chassis/pose.ts';
import { outerTangent } from '../../src/core/plane/circle.ts';
import {
  neutralWallSlope,
  pressAgainstWall,
  wallLimit,
  type AgainstWall,
} from '../../src/core/riding/equilibrium/against-wall.ts';
import { AT_REST } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { settledByEngine } from '../support/engine-bike.ts';
import { loadWithoutSpring } from '../support/free-bodies.ts';
import { linkedBike, sprungSetup } from '../support/linked-bike.ts';
import { withFrame } from '../support/plain-bike.ts';
import { plainSprings, reached, sprung } from '../support/plain-springs.ts';
import { shockBike, shockSetup } from '../support/shock-bike.ts';
import { driveCircles } from '../support/squat-by-lines.ts';
import { workLeft } from '../support/work-left.ts';

const GRAVITY = 9.80665;
/** Dry asphalt, no unit. */
const GRIP = 1;
/** As hard as a careful hand lets the clutch out, N. */
const THRUST = 600;

const small = sprung(plainSprings, shockBike, shockSetup);

function demo(index: number): SprungMachine {
  const { bike, setup } = DEMO_BIKES[index];
  const on = standBike(bike, setup, 'riderUp');
  if (!on.ok || on.sprung === undefined) throw new Error('The bike finds no rest');
  return on.sprung;
}

function linked(guideRadius: number | null): SprungMachine {
  const on = standBike(withFrame(linkedBike, { guideRadius }), sprungSetup, 'riderUp');
  if (!on.ok || on.sprung === undefined) throw new Error('The bike finds no rest');
  return on.sprung;
}

const FRONT_TYRE = 160;
const REAR_TYRE = 190;
const onSoftTyres = sprung(
  plainSprings,
  {
    ...shockBike,
    frontWheel: { ...shockBike.frontWheel, tyreRate: FRONT_TYRE },
    rearWheel: { ...shockBike.rearWheel, tyreRate: REAR_TYRE },
  },
  shockSetup,
);

const BIKES: readonly (readonly [string, SprungMachine])[] = [
  ['a bike with a straight shock', small],
  ['a bike with rear links', linked(null)],
  ['a bike whose chain lies on its guide', linked(90)],
  ['a bike on tyres that give', onSoftTyres],
  ...DEMO_BIKES.map((each, index) => [each.bike.name, demo(index)] as const),
];

const press = (made: SprungMachine): AgainstWall => reached(pressAgainstWall(made, THRUST, GRIP));

describe.each(BIKES)('%s against the wall', (_, made) => {
  it('stands on the wheel loads of the whole bike, cut free of floor and wall', () => {
    const { pressed } = press(made);
    const {
      machine,
      pose,
      pose: { wheelbase },
    } = pressed.stance;
    const parts = machine.carried.map(({ mass, at, height }) => {
      const mark = onGround(pose, at);
      return { weight: mass * GRAVITY, x: mark.x, y: mark.y + height };
    });
    parts.push({ weight: machine.frontUnsprung * GRAVITY, x: wheelbase, y: 0 });
    parts.push({ weight: machine.rearUnsprung * GRAVITY, x: 0, y: 0 });
    const turnedArm = -machine.armMoment * GRAVITY * Math.sin(pressed.stance.swingarmAngle);
    const { wheelLoad: front } = pressed.front;
    const { wheelLoad: rear } = pressed.rear;
    const weight = parts.reduce((sum, each) => sum + each.weight, 0);
    expect(front + rear).toBeCloseTo(weight, 6);
    // Moments about the point where the front tyre touches the floor.
    const about = parts.reduce((sum, each) => sum + each.weight * (wheelbase - each.x), -turnedArm);
    expect(rear * wheelbase).toBeCloseTo(about + THRUST * machine.frontRadius, 3);
  });

  it('presses fork and shock as front wheel, and rear wheel with arm, cut free', () => {
    const { pressed } = press(made);
    const { stance: on, front, rear } = pressed;
    const { guide, rear: big, front: little, pivot } = driveCircles(on);
    const run = outerTangent(big, guide ?? little, 'left');
    if (run === 'oneInsideOther') throw new Error(run);
    const { from, to } = run;
    const line = { at: from, way: { x: to.x - from.x, y: to.y - from.y } };
    const held = loadWithoutSpring({ axle: on.rearAxle, pivot, torque: { by: 'run', line } }, THRUST);
    const { machine, pose } = on;
    const armTurn = (machine.armMoment * GRAVITY * Math.sin(on.swingarmAngle)) / pose.pivot.x;
    expect(rear.forceAtWheel).toBeCloseTo(
      rear.wheelLoad - held - machine.rearUnsprung * GRAVITY - armTurn,
      5,
    );
    // The front wheel with the lower legs: floor, wall and weight, taken along the legs.
    const down = machine.front.downLegs;
    const up = {
      x: -(pose.cos * down.x - pose.sin * down.y),
      y: -(pose.sin * down.x + pose.cos * down.y),
    };
    const along = -THRUST * up.x + (front.wheelLoad - machine.frontUnsprung * GRAVITY) * up.y;
    expect(front.springForce).toBeCloseTo(along, 5);
  });

  it('is at rest: no small move of fork or rear wheel sets work free', () => {
    const { pressed } = press(made);
    const forces = { ...AT_REST, wallThrust: THRUST };
    expect([pressed.front.rest, pressed.rear.rest]).toEqual(['onSprings', 'onSprings']);
    const { travel } = pressed.stance;
    const standsOn = { ...made, machine: pressed.stance.machine };
    const left = workLeft(standsOn, travel, forces);
    expect(Math.max(Math.abs(left.front), Math.abs(left.rear))).toBeLessThan(1e-4);
    const off = workLeft(standsOn, { front: travel.front + 0.1, rear: travel.rear + 0.1 }, forces);
    expect(Math.min(Math.abs(off.front), Math.abs(off.rear))).toBeGreaterThan(0.1);
  });
});

it('tyres that give carry against the wall what moments say, at the radius that this load leaves them', () => {
  const { pressed } = press(onSoftTyres);
  const { machine, mass, centre, pose } = pressed.stance;
  const weight = mass * GRAVITY;
  const rear =
    weight - (weight * centre.x) / pose.wheelbase + (THRUST * machine.frontRadius) / pose.wheelbase;
  const { frontRadius, rearRadius } = small.machine;
  expect(machine.rearRadius).toBeCloseTo(rearRadius - rear / REAR_TYRE, 7);
  expect(machine.frontRadius).toBeCloseTo(frontRadius - (weight - rear) / FRONT_TYRE, 7);
  expect(rearRadius - machine.rearRadius).toBeGreaterThan(3);
});

it('a rigid-body engine that presses the bike against a wall settles at the same travel, to 0.01 mm', () => {
  const { pressed } = press(small);
  const { travel } = pressed.stance;
  const start = reached(
    stance(small.machine, { front: travel.front * 0.9 + 5, rear: travel.rear * 0.9 + 4 }),
  );
  const settled = settledByEngine(start, plainSprings, {
    acceleration: 0,
    pressed: 1,
    held: 'chain',
    wallPull: (THRUST * small.machine.rearRadius) / small.machine.rearSprocketRadius,
  });
  expect(settled.speed).toBeLessThan(1e-4);
  expect(Math.abs(settled.travel.front - travel.front)).toBeLessThan(0.01);
  expect(Math.abs(settled.travel.rear - travel.rear)).toBeLessThan(0.01);
});

describe('what the wall test says', () => {
  it('without thrust nothing moves', () => {
    const { rearLift, frontRise } = reached(pressAgainstWall(small, 0, GRIP));
    expect(Math.abs(rearLift)).toBeLessThan(1e-9);
    expect(Math.abs(frontRise)).toBeLessThan(1e-9);
  });

  it('the neutral slope is front radius over wheelbase, and a steeper squat line lifts the rear', () => {
    for (const [, made] of BIKES) {
      const { squatSlope, neutralSlope, rearLift, pressed } = press(made);
      expect(neutralSlope).toBe(pressed.stance.machine.frontRadius / pressed.stance.pose.wheelbase);
      expect(neutralSlope).toBe(neutralWallSlope(pressed.stance));
      expect(rearLift > 0).toBe(squatSlope > neutralSlope);
    }
  });

  it('beyond its limits it refuses with the reason and the limit', () => {
    const limit = wallLimit(press(small).pressed.stance, GRIP);
    expect(limit.endedBy).toBe('rearTyreSpins');
    const spins = pressAgainstWall(small, limit.thrust * 1.5, GRIP);
    expect(spins).toMatchObject({ ok: false, reason: 'rearTyreSpins' });
    const lifts = pressAgainstWall(small, 1.2 * wallLimit(press(small).pressed.stance, 9).thrust, 9);
    expect(lifts).toMatchObject({ ok: false, reason: 'frontLiftsAtWall' });
    expect(pressAgainstWall(small, -1, GRIP)).toMatchObject({ ok: false, reason: 'wallThrustImpossible' });
    expect(pressAgainstWall(small, Number.NaN, GRIP)).toMatchObject({ ok: false, reason: 'inputNotANumber' });
  });

  it('just below the limit the front wheel carries almost nothing', () => {
    const on = press(small).pressed.stance;
    const lifts = wallLimit(on, 9);
    expect(lifts.endedBy).toBe('frontLifts');
    const { pressed } = reached(pressAgainstWall(small, lifts.thrust * 0.98, 9));
    expect(pressed.front.wheelLoad).toBeLessThan(0.05 * pressed.rear.wheelLoad);
  });
});
