/** Tyres that give, against loads from moments, against the least energy, and against rigid tyres of the loaded size. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { likelyBike } from '../support/random-bikes.ts';
import { likelySprings } from '../support/random-springs.ts';
import { plainSprings, reached } from '../support/plain-springs.ts';
import { springEnergy } from '../support/spring-energy.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { inFrame } from '../../src/core/chassis/pose.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance, type Stance } from '../../src/core/standing/stance.ts';
import { balance } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { standRide } from '../../src/core/riding/stand-bike.ts';
import { AT_REST, type RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { springsForSag } from '../../src/core/riding/springs-for-sag.ts';
import { sprungMachine, type SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { STANDARD_GRAVITY } from '../../src/core/units/convert.ts';
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Tyre } from '../../src/core/parts/tyre.ts';

const FRONT_RATE = 160;
const REAR_RATE = 190;
/** Free radii of 120/70-17 and 190/55-17, mm. */
const FRONT_FREE = 299.9;
const REAR_FREE = 320.4;

const onTyres = (front: number | null, rear: number | null, measuredUnder = 0): Bike => ({
  ...plainBike,
  frontWheel: { ...plainBike.frontWheel, tyreRate: front, tyreMeasuredUnder: measuredUnder },
  rearWheel: { ...plainBike.rearWheel, tyreRate: rear, tyreMeasuredUnder: measuredUnder },
});
const made = (bike: Bike, tyres: { frontTyre?: Tyre; rearTyre?: Tyre } = {}) =>
  reached(machine(bike, { ...plainSetup, ...tyres }));
const sprungOn = (bike: Bike): SprungMachine => reached(sprungMachine(made(bike), plainSprings));
const soft = sprungOn(onTyres(FRONT_RATE, REAR_RATE));
const rest = (forces: Partial<RideForces> = {}, bike = soft) =>
  reached(balance(bike, { ...AT_REST, ...forces }));

const trailOf = (on: Stance): number => Number(READINGS.find(({ key }) => key === 'trail')?.read(on));

const GAS: Partial<RideForces> = { acceleration: 0.4 };
const BRAKES: Partial<RideForces> = { acceleration: -0.5, frontBrakeShare: 0.7 };
const CLOSED: Partial<RideForces> = { acceleration: -0.12, engineBraking: 0.12, slowedByDrag: 1 };
const LEANED: Partial<RideForces> = { lean: Math.PI / 4 };

describe('a tyre that gives', () => {
  it.each([{}, GAS, BRAKES, CLOSED, LEANED])(
    'holds the axle lower by load over rate, with loads from moments about the patches: %o',
    (forces) => {
      const { stance: on } = rest(forces);
      const { lean = 0, acceleration = 0 } = forces;
      const weight = on.mass * STANDARD_GRAVITY;
      const front =
        (weight * (on.centre.x / Math.cos(lean) - acceleration * on.centre.y)) / on.pose.wheelbase;
      const rear = weight / Math.cos(lean) - front;
      expect(on.frontAxle.y).toBeCloseTo(FRONT_FREE - front / FRONT_RATE, 8);
      expect(on.rearAxle.y).toBeCloseTo(REAR_FREE - rear / REAR_RATE, 8);
      // The bike's own height counts in the sink: a bike on rigid tyres would have other loads.
      expect(front / FRONT_RATE).toBeGreaterThan(2);
    },
  );

  it('has the loaded radius worked out by hand, upright and leaned', () => {
    // 160 kg midway between two equal wheels: each carries 80 kg, 784.532 N, and 160 N/mm sink by 4.903325 mm.
    const even: Bike = {
      ...onTyres(160, 160),
      frontWheel: { ...plainBike.frontWheel, unsprungMass: 0, tyreRate: 160 },
      rearWheel: { ...plainBike.rearWheel, unsprungMass: 0, tyreRate: 160 },
    };
    const light = { ...plainSetup, riderMass: 0, passengerMass: 0, fuelMass: 0, loadMass: 0 };
    const tyre = { diameter: 600 };
    const standOn = (bike: Bike) => {
      const parts = reached(machine(bike, { ...light, frontTyre: tyre, rearTyre: tyre }));
      return { parts, hanging: reached(stance(parts, { front: 0, rear: 0 })) };
    };
    const { pose } = standOn(even).hanging;
    const sprungCentre = inFrame(pose, { x: pose.wheelbase / 2, y: 620 });
    const { parts, hanging } = standOn({ ...even, frame: { ...even.frame, sprungMass: 160, sprungCentre } });
    // Springs that hold both ends out, so that nothing moves but the tyres.
    const { fork, shock } = plainSprings;
    const stiff = { fork: { ...fork, preload: 400 }, shock: { ...shock, preload: 400 } };
    const bike = reached(sprungMachine(parts, stiff));
    for (const [lean, sink] of [
      [0, 4.903325],
      [Math.PI / 4, 6.9343487],
    ]) {
      const found = reached(balance(bike, { ...AT_REST, lean }));
      expect([found.front.rest, found.rear.rest]).toEqual(['toppedOut', 'toppedOut']);
      const { stance: on } = found;
      for (const axle of [on.frontAxle, on.rearAxle]) expect(axle.y).toBeCloseTo(300 - sink, 6);
      expect(on.centre.y).toBeCloseTo(620 - sink, 6);
      expect(on.rake).toBeCloseTo(hanging.rake, 12);
      // Trail = (R · sin rake − offset) / cos rake, so it shrinks by the sink times tan rake.
      expect(trailOf(hanging) - trailOf(on)).toBeCloseTo(sink * Math.tan(hanging.rake), 6);
    }
  });

  it('stands where energy has no slope along either travel or either radius', () => {
    const { stance: on } = rest();
    const { tyres } = soft.machine;
    if (tyres === null) throw new Error('These tyres give.');
    const at = [on.travel.front, on.travel.rear, on.machine.frontRadius, on.machine.rearRadius];
    const energy = ([front, rear, frontRadius, rearRadius]: readonly number[]): number => {
      const stood = reached(stance({ ...soft.machine, frontRadius, rearRadius }, { front, rear }));
      return (
        stood.mass * STANDARD_GRAVITY * stood.centre.y +
        springEnergy(soft.fork, front) +
        springEnergy(soft.shock, stood.arm.shockStroke) +
        (FRONT_RATE / 2) * (tyres.front.freeRadius - frontRadius) ** 2 +
        (REAR_RATE / 2) * (tyres.rear.freeRadius - rearRadius) ** 2
      );
    };
    for (const i of at.keys()) {
      const step = (by: number) => energy(at.map((value, k) => (k === i ? value + by : value)));
      // Energies near 10⁶ N·mm are known to 1e-10, and forces here are near 1000 N.
      expect(Math.abs((step(1e-2) - step(-1e-2)) / 2e-2)).toBeLessThan(1e-2);
      expect(Math.abs((step(1) - step(0)) / 1)).toBeGreaterThan(1);
    }
  });

  it.each([{}, GAS, BRAKES, CLOSED, LEANED])(
    'reads as a rigid tyre of the loaded radius, in every reading of the stance: %o',
    (forces) => {
      const ride = {
        kind: 'equilibrium',
        forces: { ...AT_REST, ...forces },
        carries: true,
        rolls: true,
        setBy: {},
      } as const;
      const on = reached(standRide(soft.machine, ride, undefined, soft));
      const rigid = made(plainBike, {
        frontTyre: { diameter: 2 * on.frontAxle.y },
        rearTyre: { diameter: 2 * on.rearAxle.y },
      });
      const hard = reached(standRide(rigid, ride, undefined, reached(sprungMachine(rigid, plainSprings))));
      // These look at other loads than those of this posture, or at the free tyre.
      const others = ['wheelieLimit', 'rearLiftLimit', 'tyreToClampGap', 'squatOnGas', 'throttleClosedRise'];
      const compared = READINGS.filter(({ key }) => !others.includes(key)).flatMap((reading) => {
        const [a, b] = [reading.read(on), reading.read(hard)];
        return typeof a === 'number' && typeof b === 'number' ? [{ key: reading.key, a, b }] : [];
      });
      expect(compared.length).toBeGreaterThan(30);
      for (const { key, a, b } of compared)
        expect(Math.abs(a - b), key).toBeLessThan(1e-6 * Math.max(1, Math.abs(b)));
    },
  );

  it('pulls the chain with its loaded radius', () => {
    const { loads, stance: on } = rest(GAS);
    const thrust = 0.4 * on.mass * STANDARD_GRAVITY;
    expect(loads.chainPull).toBeCloseTo((thrust * on.rearAxle.y) / on.machine.rearSprocketRadius, 6);
    expect(on.rearAxle.y).toBeLessThan(REAR_FREE - 4);
  });

  it('has its free radius while no load is known: hanging, and at a travel set by hand', () => {
    for (const ride of [
      { kind: 'hanging' },
      { kind: 'travel', travel: { front: 40, rear: 40 }, setBy: {} },
    ] as const) {
      const on = reached(standRide(soft.machine, ride, undefined, soft));
      expect(on.frontAxle.y).toBeCloseTo(FRONT_FREE, 9);
      expect(on.rearAxle.y).toBeCloseTo(REAR_FREE, 9);
    }
  });

  it('keeps its free size under the lower clamp', () => {
    const gap = READINGS.find(({ key }) => key === 'tyreToClampGap');
    const deep: Bike = {
      ...onTyres(FRONT_RATE, REAR_RATE),
      fork: { ...plainBike.fork, lowerClampDepth: 215 },
    };
    const soaked = reached(balance(sprungOn(deep), AT_REST)).stance;
    // 725 − 5 − 120 − 215 − 299.9
    expect(gap?.read(soaked)).toBeCloseTo(85.1, 9);
  });

  it('stands at the radius it was measured at, under the weight it was measured under', () => {
    const first = rest({}, sprungOn(onTyres(FRONT_RATE, null)));
    const onWheel = first.front.wheelLoad / STANDARD_GRAVITY;
    const loaded: Bike = onTyres(FRONT_RATE, null, onWheel);
    const again = reached(
      balance(
        reached(
          sprungMachine(
            made(loaded, { frontTyre: { diameter: 2 * first.stance.frontAxle.y } }),
            plainSprings,
          ),
        ),
        AT_REST,
      ),
    );
    expect(again.stance.frontAxle.y).toBeCloseTo(first.stance.frontAxle.y, 8);
    expect(again.stance.rearAxle.y).toBe(REAR_FREE);
  });

  it('gives the sag that its springs are chosen for', () => {
    const wish = { free: { front: 22, rear: 10 }, rider: { front: 36, rear: 32 } };
    const advice = reached(springsForSag(soft, wish));
    const { stance: on } = reached(balance(advice.sprung, AT_REST));
    expect(on.travel.front - advice.sprung.hanging.front).toBeCloseTo(36, 6);
    expect(on.travel.rear - advice.sprung.hanging.rear).toBeCloseTo(32, 6);
  });

  it('settles on every rate from a soft one up, and nears the rigid tyre as the rate grows', () => {
    const rigid = rest({}, sprungOn(plainBike)).stance;
    fc.assert(
      fc.property(fc.double({ min: 60, max: 5000, noNaN: true }), (rate) => {
        const { stance: on, loads } = rest(GAS, sprungOn(onTyres(rate, rate)));
        expect(on.rearAxle.y).toBeCloseTo(REAR_FREE - loads.rearLoad / rate, 7);
        expect(on.frontAxle.y).toBeCloseTo(FRONT_FREE - loads.frontLoad / rate, 7);
      }),
      { numRuns: cases(100) },
    );
    const hard = rest({}, sprungOn(onTyres(1e5, 1e5))).stance;
    expect(Math.abs(hard.rake - rigid.rake)).toBeLessThan(1e-4);
  });

  it('carries every likely bike at free radius less load over rate, with loads from moments', () => {
    let rested = 0;
    fc.assert(
      fc.property(
        likelyBike,
        likelySprings,
        fc.double({ min: 90, max: 400, noNaN: true }),
        fc.double({ min: 90, max: 400, noNaN: true }),
        ({ bike, setup }, { springs, brake }, front, rear) => {
          const soft = {
            ...bike,
            frontWheel: { ...bike.frontWheel, tyreRate: front, tyreMeasuredUnder: 0 },
            rearWheel: { ...bike.rearWheel, tyreRate: rear, tyreMeasuredUnder: 0 },
          };
          const [free, parts] = [machine(bike, setup), machine(soft, setup)];
          const given = parts.ok ? sprungMachine(parts, springs, brake) : parts;
          const found = given.ok ? balance(given, AT_REST) : given;
          if (!free.ok || !found.ok) return;
          rested++;
          const { mass, centre, pose, frontAxle, rearAxle } = found.stance;
          const weight = mass * STANDARD_GRAVITY;
          const onFront = (weight * centre.x) / pose.wheelbase;
          expect(Math.abs(free.frontRadius - onFront / front - frontAxle.y)).toBeLessThan(1e-6);
          expect(Math.abs(free.rearRadius - (weight - onFront) / rear - rearAxle.y)).toBeLessThan(1e-6);
        },
      ),
      { numRuns: cases(300) },
    );
    expect(rested).toBeGreaterThan(cases(60));
  });

  it('is refused with a rate of zero or less, and where it would sink further than its sidewall', () => {
    for (const rate of [0, -5]) {
      expect(machine(onTyres(rate, null), plainSetup)).toMatchObject({
        ok: false,
        reason: 'tyreRateNotAboveZero',
        end: 'front',
        found: rate,
      });
      expect(machine(onTyres(200, rate), plainSetup)).toMatchObject({ end: 'rear', found: rate });
    }
    const flat = balance(sprungOn(onTyres(8, 8)), AT_REST);
    expect(flat).toMatchObject({ ok: false, reason: 'tyreFlat' });
  });
});
