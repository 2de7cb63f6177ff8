/** Sayings of the trade that need springs: what the bike does where it really sits, with its rider up. */
import { onGround } from '../../src/core/chassis/pose.ts';
import { describe, expect, it } from 'vitest';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { trail } from '../../src/core/readings/trail.ts';
import { balance } from '../../src/core/riding/equilibrium/equilibrium.ts';
import { AT_REST, type RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import type { SpringSet } from '../../src/core/standing/spring-set.ts';
import type { Stance } from '../../src/core/standing/stance.ts';
import { degrees } from '../../src/core/units/convert.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { plainSprings, reached, sprung, withForkSprings } from '../support/plain-springs.ts';
import { standing } from '../support/standing.ts';

function sitting(
  setup: Partial<Setup>,
  springs: SpringSet = plainSprings,
  forces: RideForces = AT_REST,
): Stance {
  return reached(balance(sprung(springs, plainBike, { ...plainSetup, ...setup }), forces)).stance;
}

function read(reading: typeof trail, on: Stance): number {
  const value = reading.read(on);
  if (typeof value !== 'number') throw new Error(value.reason);
  return value;
}

/** Height of the steering axis at the top clamp above the ground, mm. */
function headHeight({ machine, pose }: Stance): number {
  return onGround(pose, machine.front.head).y;
}

// Source: common practice, no source.
describe('fork extenders give front height back after the rear is raised, and the front cannot fix the exit', () => {
  const raised = { shockLength: 23.5 };
  const hanging = (setup: Partial<Setup>) =>
    degrees(standing(plainBike, { ...plainSetup, ...setup }).swingarmAngle);

  it('raising the arm from about 9.5° to 12.5° hanging steepens the steering where the bike sits', () => {
    expect(hanging({})).toBeCloseTo(9.5, 1);
    expect(hanging(raised)).toBeCloseTo(12.5, 1);
    const lost = degrees(sitting({}).rake - sitting(raised).rake);
    expect(lost).toBeGreaterThan(1.5);
    expect(lost).toBeLessThan(2.5);
    expect(read(trail, sitting({})) - read(trail, sitting(raised))).toBeGreaterThan(8);
  });

  it('fork extenders of 7 to 10 mm give front height back, and a part of the rake', () => {
    for (const forkExtenders of [7, 10]) {
      const before = sitting(raised);
      const after = sitting({ ...raised, forkExtenders });
      expect(headHeight(after) - headHeight(before)).toBeGreaterThan(0.7 * forkExtenders);
      const part = (after.rake - before.rake) / (sitting({}).rake - before.rake);
      expect(part).toBeGreaterThan(0.1);
      expect(part).toBeLessThan(0.3);
    }
  });

  it('the front cannot fix the exit: extenders are worth a sixth of the anti-squat that the back is', () => {
    const stock = read(antiSquat, sitting({}));
    const back = read(antiSquat, sitting(raised)) - stock;
    const front = read(antiSquat, sitting({ forkExtenders: 10 })) - stock;
    expect(back).toBeGreaterThan(10);
    expect(Math.abs(front)).toBeLessThan(back / 6);
  });
});

// Source: common practice, no source.
describe('stiffer fork springs hold the nose up until the fork tubes are raised', () => {
  const stiff = withForkSprings({ rate: 10.5 });
  const braking: RideForces = { ...AT_REST, acceleration: -0.5 };

  it('stiffer fork springs hold the nose up: more rake and trail, standing and on the brakes', () => {
    for (const forces of [AT_REST, braking]) {
      const soft = sitting({}, plainSprings, forces);
      const hard = sitting({}, stiff, forces);
      expect(hard.travel.front).toBeLessThan(soft.travel.front - 2);
      expect(headHeight(hard)).toBeGreaterThan(headHeight(soft) + 1);
      expect(hard.rake).toBeGreaterThan(soft.rake);
      expect(read(trail, hard)).toBeGreaterThan(read(trail, soft));
    }
  });

  it('until the fork tubes are raised by what the springs hold up', () => {
    const soft = sitting({});
    const held = soft.travel.front - sitting({}, stiff).travel.front;
    const raised = sitting({ forkTubes: plainSetup.forkTubes + held }, stiff);
    expect(degrees(raised.rake)).toBeCloseTo(degrees(soft.rake), 1);
    expect(read(trail, raised)).toBeCloseTo(read(trail, soft), 0);
  });
});
