/** The suspension's readings a second way: rates from forces a little apart, and the spring's energy from the wheel's work. */
import { describe, expect, it } from 'vitest';
import { frontWheelRate } from '../../src/core/readings/front-wheel-rate.ts';
import { motionRatio } from '../../src/core/readings/motion-ratio.ts';
import { rearWheelForce } from '../../src/core/readings/rear-wheel-force.ts';
import { rearWheelRate } from '../../src/core/readings/rear-wheel-rate.ts';
import { shockStroke } from '../../src/core/readings/shock-stroke.ts';
import type { Reading } from '../../src/core/readings/reading.ts';
import { springEnergy } from '../support/spring-energy.ts';
import type { StandingBike } from '../../src/core/riding/stand-bike.ts';
import { sprungSetup } from '../support/linked-bike.ts';
import { ridden, sprungAt } from '../support/ridden-bike.ts';

const FRONT = 40;

function number(reading: Reading, on: StandingBike): number {
  const value = reading.read(on);
  if (typeof value !== 'number') throw new Error(`${reading.key}: ${value}`);
  return value;
}

/** Nodes and weights of Gauss and Legendre with five points on −1 to 1. */
const GAUSS = [
  [-Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [0, 128 / 225],
  [Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
] as const;

/**
 * Integral of a reading over the rear axle's rise as the bike stands at each place, from `from` to `to` mm of travel. At
 * each the axle moves about the pivot, so its rise is the pivot's distance ahead times the arm's turn.
 */
function overRise(reading: Reading, from: number, to: number, panels = 24): number {
  let sum = 0;
  const half = (to - from) / panels / 2;
  for (let panel = 0; panel < panels; panel++)
    for (const [node, weight] of GAUSS) {
      const on = sprungAt({ front: FRONT, rear: from + (2 * panel + 1 + node) * half });
      const { rear } = on.machine;
      const perTravel = on.pose.pivot.x / (rear.arm * Math.cos(on.arm.angle + rear.framePitch));
      sum += weight * half * number(reading, on) * perTravel;
    }
  return sum;
}

describe('on a bike with real links', () => {
  const most = sprungAt({ front: FRONT, rear: 0 }).sprung.most.rear;
  const [low, high] = [0.05 * most, 0.95 * most];

  it('the work of the wheel’s force over the travel is the energy that went into the spring, to 1e-9 of it', () => {
    const at = (rear: number) => sprungAt({ front: FRONT, rear });
    const energy =
      springEnergy(at(high).sprung.shock, number(shockStroke, at(high))) -
      springEnergy(at(low).sprung.shock, number(shockStroke, at(low)));
    expect(energy).toBeGreaterThan(1e4);
    expect(Math.abs(overRise(rearWheelForce, low, high) / energy - 1)).toBeLessThan(1e-9);
  });

  it('the motion ratio over the travel is the stroke used, to 1e-9 of it', () => {
    const stroke = (rear: number) => number(shockStroke, sprungAt({ front: FRONT, rear }));
    const used = stroke(high) - stroke(low);
    expect(used).toBeGreaterThan(20);
    expect(Math.abs(overRise(motionRatio, low, high) / used - 1)).toBeLessThan(1e-9);
  });

  it('the rear wheel’s rate is the difference of its force over its rise, the frame held', () => {
    for (const rear of [15, 50, 90]) {
      const on = sprungAt({ front: FRONT, rear });
      const step = 0.05;
      const at = (travel: number) => {
        const near = sprungAt({ front: FRONT, rear: travel });
        const { arm } = near.machine.rear;
        const angle = near.arm.angle + on.pose.pitch;
        // The frame is held at the pitch of the middle place.
        const force = number(rearWheelForce, {
          ...near,
          pose: { ...near.pose, pivot: { ...near.pose.pivot, x: arm * Math.cos(angle) } },
        });
        return { force, height: -arm * Math.sin(angle) };
      };
      const [below, above] = [at(rear - step), at(rear + step)];
      const rate = (above.force - below.force) / (above.height - below.height);
      expect(number(rearWheelRate, on)).toBeCloseTo(rate, 4);
    }
  });
});

describe('in equilibrium', () => {
  it('a little more load sinks the rear wheel by load over rate, the drive and the front apart', () => {
    const rest = ridden('riderUp');
    const heavier = ridden('riderUp', undefined, { ...sprungSetup, riderMass: sprungSetup.riderMass + 0.05 });
    const { rear: a } = rest.equilibrium;
    const { rear: b } = heavier.equilibrium;
    expect(number(rearWheelRate, rest)).toBe(a.wheelRate);
    const rate = (b.forceAtWheel - a.forceAtWheel) / (b.travelUsed - a.travelUsed);
    expect(Math.abs(rate / a.wheelRate - 1)).toBeLessThan(0.02);
  });

  it('the front wheel’s rate is the difference of the legs’ force at the axle over its rise', () => {
    const rest = ridden('riderUp');
    const heavier = ridden('riderUp', undefined, { ...sprungSetup, riderMass: sprungSetup.riderMass + 0.05 });
    const lean = rest.machine.front.legLean + rest.pose.pitch;
    const { front: a } = rest.equilibrium;
    const { front: b } = heavier.equilibrium;
    // What the wheel lifts is the legs' push over the cosine of their lean, and it rises by travel times the cosine.
    const perCos = (b.springForce - a.springForce) / Math.cos(lean);
    const rate = perCos / ((b.travelUsed - a.travelUsed) * Math.cos(lean));
    expect(number(frontWheelRate, rest)).toBeCloseTo(rate, 6);
  });
});
