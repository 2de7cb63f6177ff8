/** Wheel rates against finite differences and the work done on the springs. */
import { describe, expect, it } from 'vitest';
import { suspensionAt } from '../../src/core/linkage/suspension.ts';
import { rearWheelRate } from '../../src/core/springs/at-the-wheel.ts';
import { springForce, springRate } from '../../src/core/springs/spring-law.ts';
import { springEnergy } from '../support/spring-energy.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { linkedBike } from '../support/linked-bike.ts';
import { plainSprings, reached, sprung, withForkSprings, withShock } from '../support/plain-springs.ts';
import { shockBike, shockSetup } from '../support/shock-bike.ts';

/** Force at the rear axle square to the ground, N, with the frame level and held. */
function forceAtWheel({ machine, shock }: SprungMachine, travel: number): number {
  const at = reached(suspensionAt(machine.rear, travel));
  const level = machine.rear.arm * Math.cos(at.angle);
  return (springForce(shock, at.shockStroke) * at.lever) / level;
}

describe('the rear wheel rate', () => {
  it('contains the spring’s force times the change of the motion ratio', () => {
    const made = sprung();
    const travel = 60;
    const h = 0.01;
    const at = reached(suspensionAt(made.machine.rear, travel));
    const ratio = (t: number) => reached(suspensionAt(made.machine.rear, t)).motionRatio;
    const bend = (ratio(travel + h) - ratio(travel - h)) / (2 * h);
    const force = springForce(made.shock, at.shockStroke);
    expect(force * bend).toBeGreaterThan(0.5);
    expect(rearWheelRate(made, travel, 0)).toBeCloseTo(95 * at.motionRatio ** 2 + force * bend, 4);
  });

  it('is the slope of the wheel’s force through the whole travel, a pitched frame included', () => {
    const made = sprung(plainSprings, shockBike, shockSetup);
    // Between the rows of the table: at a row the curve's bend jumps.
    for (let travel = 5.5; travel <= 125; travel += 10) {
      const h = 0.05;
      const slope = (forceAtWheel(made, travel + h) - forceAtWheel(made, travel - h)) / (2 * h);
      expect(rearWheelRate(made, travel, 0)).toBeCloseTo(slope, 3);
    }
    // Pitched, both force and rise are taken square to the ground as it lies then.
    const flat = rearWheelRate(made, 60, 0);
    expect(rearWheelRate(made, 60, 0.05)).not.toBeCloseTo(Number(flat), 2);
  });
});

describe.each([
  { name: 'links', bike: linkedBike },
  { name: 'a table', bike: shockBike },
])('both ends of the travel, on $name', ({ bike }) => {
  /** Slope at one end from three forces inward of it, good to the square of the step. */
  function oneSided(made: SprungMachine, at: number, h: number): number {
    const force = (steps: number): number => forceAtWheel(made, at + steps * h);
    return (4 * force(1) - 3 * force(0) - force(2)) / (2 * h);
  }

  it('have the rate that differences from the inside alone find', () => {
    const made = sprung(plainSprings, bike, shockSetup);
    const last = made.most.rear;
    expect(rearWheelRate(made, 0, 0)).toBeCloseTo(oneSided(made, 0, 0.01), 5);
    expect(rearWheelRate(made, last, 0)).toBeCloseTo(oneSided(made, last, -0.01), 5);
  });

  it('hanging on springs without preload, they have the rate of pressing them', () => {
    const made = sprung(withForkSprings({ preload: 0 }, withShock({ preload: 0 })), bike, shockSetup);
    expect(rearWheelRate(made, 0, 0)).toBeCloseTo(oneSided(made, 0, 0.01), 5);
    expect(springRate(made.fork, 0)).toBe(2 * 9.5);
  });
});

describe('the work of the wheel’s force over the travel', () => {
  it('is the energy that the spring has taken up, to 1e-9', () => {
    const made = sprung(withShock({ bump: { startsAt: 45, rate: 90, exponent: 2 } }));
    const bumpFrom = 85.6;
    // Gauss's rule with five places on short pieces that end at the table's rows, where curvature jumps.
    const places = [0, 0.538469310105683, -0.538469310105683, 0.906179845938664, -0.906179845938664];
    const weights = [
      0.568888888888889, 0.478628670499366, 0.478628670499366, 0.236926885056189, 0.236926885056189,
    ];
    const work = (from: number, to: number, pieces: number): number => {
      let sum = 0;
      const half = (to - from) / pieces / 2;
      for (let i = 0; i < pieces; i++) {
        const middle = from + (2 * i + 1) * half;
        places.forEach((place, k) => (sum += weights[k] * half * forceAtWheel(made, middle + place * half)));
      }
      return sum;
    };
    const stroke = (travel: number) => reached(suspensionAt(made.machine.rear, travel)).shockStroke;
    expect(stroke(bumpFrom)).toBeLessThan(45);
    const total = work(0, 40, 20) + work(40, 80, 20) + work(80, bumpFrom, 20);
    const taken = springEnergy(made.shock, stroke(bumpFrom)) - springEnergy(made.shock, 0);
    expect(Math.abs(total / taken - 1)).toBeLessThan(1e-9);
    const onBump = work(100, 130, 40);
    const takenOnBump = springEnergy(made.shock, stroke(130)) - springEnergy(made.shock, stroke(100));
    expect(Math.abs(onBump / takenOnBump - 1)).toBeLessThan(1e-9);
  });
});
