/** What 100 % of anti-squat means: opening the gas neither loads nor unloads the rear spring, and the rear stays where it is. */
import { describe, expect, it } from 'vitest';
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { balance, type Equilibrium } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { neutralAntiSquat } from '../../src/core/riding/equilibrium/neutral-anti-squat.ts';
import { gasOpened } from '../support/gas-opened.ts';
import { AT_REST } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { steadyLoads } from '../../src/core/riding/equilibrium/steady-loads.ts';
import { stance, type Stance } from '../../src/core/standing/stance.ts';
import { plainBike, plainSetup, withFrame } from '../support/plain-bike.ts';
import { plainSprings, reached, sprung, withForkSprings, withShock } from '../support/plain-springs.ts';

/**
 * The fork is held at full extension by far too much preload, so that the posture changes at the rear alone: what
 * the rear does on the gas then is the drive's doing and not the nose's.
 */
const springs = withForkSprings({ preload: 400 }, withShock({ preload: 12 }));

const massless: Bike = {
  ...plainBike,
  rearWheel: { ...plainBike.rearWheel, unsprungMass: 0 },
  frontWheel: { ...plainBike.frontWheel, unsprungMass: 0 },
};

function antiSquatOf(on: Stance): number {
  const value = antiSquat.read(on);
  if (typeof value !== 'number') throw new Error(value.reason);
  return value;
}

const rolling = (bike: Bike, setup: Setup): Equilibrium =>
  reached(balance(sprung(springs, bike, setup), AT_REST));

/** The bike with its rider as high as makes anti-squat, rolling evenly, what is wanted: height changes nothing else. */
function tuned(bike: Bike, wanted: number | ((on: Stance) => number)): Setup {
  let setup = { ...plainSetup, riderHeight: 200 };
  const miss = (riderHeight: number): number => {
    const on = rolling(bike, { ...setup, riderHeight }).stance;
    return antiSquatOf(on) - (typeof wanted === 'number' ? wanted : wanted(on));
  };
  let low = -350;
  let high = 2500;
  if (miss(low) < 0 || miss(high) > 0) throw new Error('This anti-squat is out of reach');
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (miss(middle) > 0) low = middle;
    else high = middle;
  }
  setup = { ...setup, riderHeight: (low + high) / 2 };
  return setup;
}

/** Squat (+) or lift (−) of the rear in mm as the gas opens to `g`, upright or leaned. */
function squat(bike: Bike, setup: Setup, g: number, lean = 0): number {
  const change = reached(gasOpened(sprung(springs, bike, setup), lean, g));
  expect(change.from.front.rest).toBe('toppedOut');
  expect(change.to.front.rest).toBe('toppedOut');
  return change.rear;
}

/** Travel is found to 1e-9 mm; the tuned height is known to 1e-12 of its range. */
const NOTHING = 1e-6;

describe('with a massless arm and wheel', () => {
  it('at 100 % the rear neither squats nor lifts, gently or hard on the gas, upright or leaned', () => {
    const setup = tuned(massless, 100);
    expect(antiSquatOf(rolling(massless, setup).stance)).toBeCloseTo(100, 9);
    for (const g of [0.05, 0.2, 0.5]) expect(Math.abs(squat(massless, setup, g))).toBeLessThan(NOTHING);
  });

  it('below 100 % it squats, more on more gas; above 100 % it lifts', () => {
    const below = tuned(massless, 90);
    expect(squat(massless, below, 0.2)).toBeGreaterThan(0.5);
    expect(squat(massless, below, 0.4)).toBeGreaterThan(squat(massless, below, 0.2));
    const above = tuned(massless, 110);
    expect(squat(massless, above, 0.2)).toBeLessThan(-0.5);
    expect(squat(massless, above, 0.4)).toBeLessThan(squat(massless, above, 0.2));
  });

  it('leaned over, the neutral point is that of the leaned posture', () => {
    // A lean presses the bike further in, which is another posture with another anti-squat.
    const lean = 0.6;
    let low = -350;
    let high = 2500;
    const at = (riderHeight: number) => {
      const made = sprung(springs, massless, { ...plainSetup, riderHeight });
      return reached(balance(made, { ...AT_REST, lean })).stance;
    };
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (antiSquatOf(at(middle)) > 100) low = middle;
      else high = middle;
    }
    const setup = { ...plainSetup, riderHeight: low };
    expect(Math.abs(squat(massless, setup, 0.3, lean))).toBeLessThan(NOTHING);
  });
});

describe('with the fork free to rise', () => {
  it('100 % of a massless arm still squats by some tenths of a millimetre: the rising nose carries weight back', () => {
    const free = (riderHeight: number) => sprung(plainSprings, massless, { ...plainSetup, riderHeight });
    const at = (riderHeight: number): Stance => reached(balance(free(riderHeight), AT_REST)).stance;
    let low = -350;
    let high = 2500;
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (antiSquatOf(at(middle)) > 100) low = middle;
      else high = middle;
    }
    const change = reached(gasOpened(free(low), 0, 0.2));
    expect(change.front).toBeLessThan(-5);
    expect(change.rear).toBeGreaterThan(0.01);
    expect(change.rear).toBeLessThan(0.3);
  });
});

describe('with a real wheel and arm', () => {
  it('100 % squats a little, and the neutral point lies where the computed shift says', () => {
    const heavy: Bike = { ...plainBike, rearWheel: { ...plainBike.rearWheel, unsprungMass: 20 } };
    const hundred = tuned(heavy, 100);
    expect(squat(heavy, hundred, 0.3)).toBeGreaterThan(0.05);
    const neutral = (on: Stance): number => reached(neutralAntiSquat(on)).neutral;
    const setup = tuned(heavy, neutral);
    const on = rolling(heavy, setup).stance;
    expect(neutral(on)).toBeGreaterThan(101);
    expect(neutral(on)).toBeLessThan(103);
    expect(antiSquatOf(on)).toBeCloseTo(neutral(on), 9);
    for (const g of [0.05, 0.2, 0.5]) expect(Math.abs(squat(heavy, setup, g))).toBeLessThan(NOTHING);
  });

  it('with the shift the gas does not load the spring in any posture that is held', () => {
    for (const travel of [
      { front: 0, rear: 0 },
      { front: 40, rear: 40 },
      { front: 90, rear: 110 },
    ]) {
      const made = sprung();
      const on = reached(stance(made.machine, travel));
      const push = (acceleration: number): number =>
        reached(steadyLoads(on, { ...AT_REST, acceleration }, made.brake)).rearPush;
      // The push is straight in the acceleration: its part is the load transfer times what is missing from neutral.
      const transfer = reached(steadyLoads(on, { ...AT_REST, acceleration: 1 }, made.brake)).rearLoad;
      const still = reached(steadyLoads(on, AT_REST, made.brake)).rearLoad;
      const missing = (reached(neutralAntiSquat(on)).neutral - antiSquatOf(on)) / 100;
      expect(push(1) - push(0)).toBeCloseTo((transfer - still) * missing, 8);
    }
  });

  it('a tall countershaft pulls the rear down, so that the same gas squats more', () => {
    const tall = withFrame(plainBike, { countershaft: { x: 75, y: 40 }, guideRadius: null });
    const low = withFrame(plainBike, { countershaft: { x: 75, y: -20 }, guideRadius: null });
    const squatOf = (bike: Bike) => squat(bike, plainSetup, 0.4);
    const squats = [squatOf(tall), squatOf(low)];
    const antis = [tall, low].map((bike) => antiSquatOf(rolling(bike, plainSetup).stance));
    expect(Math.sign(squats[0] - squats[1])).toBe(-Math.sign(antis[0] - antis[1]));
    expect(Math.abs(squats[0] - squats[1])).toBeGreaterThan(1);
  });
});
