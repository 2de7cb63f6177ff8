/** Tests of the readings of parts that may touch: the worked numbers, and what is not measured. */
import { expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { onGround } from '../chassis/pose.ts';
import type { Bike } from '../parts/bike.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import { degrees } from '../units/convert.ts';
import { absent } from './absent.ts';
import { groundClearance } from './ground-clearance.ts';
import { touchLean } from './touch-lean.ts';

function standing(bike: Bike, state: RideStateKey = 'toppedOut', setup = plainSetup): StandingBike {
  const found = standBike(bike, setup, state);
  if (!found.ok) throw new Error(found.reason);
  return found;
}

/** The bike with a footrest at a height above the ground as it stands topped out. */
function withFootrest(bike: Bike, setup: typeof plainSetup, height: number, halfWidth: number): Bike {
  const { pose } = standing(bike, 'toppedOut', setup);
  const at = { x: 100, y: 0 };
  const y = (height - onGround(pose, at).y) / Math.cos(pose.pitch);
  const { touching } = bike.frame;
  return {
    ...bike,
    frame: { ...bike.frame, touching: { ...touching, footrest: { x: at.x, y, halfWidth } } },
    frontWheel: { ...bike.frontWheel, crownRadius: 85 },
    rearWheel: { ...bike.rearWheel, crownRadius: 85 },
  };
}

it('a part counts once its half width is known', () => {
  expect(groundClearance.read(standing(plainBike))).toBe(absent('nothingMeasured'));
  expect(touchLean.read(standing(plainBike))).toBe(absent('nothingMeasured'));
  const low = withFootrest(plainBike, plainSetup, 150, 300);
  expect(groundClearance.read(standing(low))).toBeCloseTo(150, 9);
});

it('leans to 36.3° with the worked figures, and to 33.7° on tyres without a crown', () => {
  const low = withFootrest(plainBike, plainSetup, 200, 300);
  expect(degrees(Number(touchLean.read(standing(low))))).toBeCloseTo(36.3, 1);
  const flat: Bike = {
    ...low,
    frontWheel: { ...low.frontWheel, crownRadius: 0 },
    rearWheel: { ...low.rearWheel, crownRadius: 0 },
  };
  expect(degrees(Number(touchLean.read(standing(flat))))).toBeCloseTo(33.69, 2);
});

it('takes half of the width in the size code for the crown, and says so where there is neither', () => {
  const low = withFootrest(plainBike, plainSetup, 200, 300);
  const unknown: Bike = { ...low, frontWheel: { ...low.frontWheel, crownRadius: null } };
  const coded = { ...plainSetup, frontTyre: { code: '170/60-17' } };
  expect(standing(unknown, 'toppedOut', coded).machine.crowns.front).toBe(85);
  const measured = { ...plainSetup, frontTyre: { diameter: 600 } };
  expect(touchLean.read(standing(unknown, 'toppedOut', measured))).toBe(absent('noCrown'));
});

it('finds no lean where nothing touches, and zero where a part is on the ground upright', () => {
  const high = withFootrest(plainBike, plainSetup, 900, 50);
  expect(touchLean.read(standing(high))).toBe(absent('nothingTouches'));
  const sunk = withFootrest(plainBike, plainSetup, -1, 50);
  expect(touchLean.read(standing(sunk))).toBe(0);
});

it('a corner presses the springs, so on them a part touches sooner than in the posture before', () => {
  const low = withFootrest(linkedBike, sprungSetup, 260, 300);
  const rides = standing(low, 'riderUp', sprungSetup);
  const { equilibrium, sprung, ...still } = rides;
  expect(equilibrium?.stance.travel).toEqual(rides.travel);
  expect(sprung).toBeDefined();
  expect(Number(touchLean.read(rides))).toBeLessThan(Number(touchLean.read(still)) - 0.01);
});
