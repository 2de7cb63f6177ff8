/** The cases in which the textbooks know the squat line without computing it. */
import { inFrame, onGround } from '../../src/core/chassis/pose.ts';
import { describe, expect, it } from 'vitest';
import { antiSquatChain } from '../../src/core/readings/anti-squat-chain.ts';
import { antiSquatSwingarm } from '../../src/core/readings/anti-squat-swingarm.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { squatAngle } from '../../src/core/readings/squat-angle.ts';
import { squatRatio } from '../../src/core/readings/squat-ratio.ts';
import { swingarmAngle } from '../../src/core/readings/swingarm-angle.ts';
import type { Stance } from '../../src/core/standing/stance.ts';
import { withCountershaftAt } from '../support/placed-bike.ts';
import { plainBike, plainSetup, withFrame, withSwingarm } from '../support/plain-bike.ts';
import { driveCircles, instantCentre } from '../support/squat-by-lines.ts';
import { standing } from '../support/standing.ts';
import { absent } from '../../src/core/readings/absent.ts';
import { angleOf } from '../../src/core/plane/point.ts';
import { chainRun } from '../../src/core/standing/chain-run.ts';

const RIDDEN = { front: 40, rear: 40 };
const bare = { bike: withFrame(plainBike, { guideRadius: null }), setup: plainSetup };

/** The plain bike, ridden, with its countershaft where the free upper run passes `lever` above the pivot at `angle`. */
function withUpperRun(angle: number, lever: number): Stance {
  const on = standing(bare.bike, bare.setup, RIDDEN);
  const { machine, pose } = on;
  // The countershaft's centre lies one front pitch radius below the run, 80 ahead of the pivot along it.
  const below = lever - machine.frontSprocketRadius;
  const at = {
    x: pose.pivot.x + 80 * Math.cos(angle) - below * Math.sin(angle),
    y: pose.pivot.y + 80 * Math.sin(angle) + below * Math.cos(angle),
  };
  const { bike, setup } = withCountershaftAt(bare, on, at);
  return standing(bike, setup, RIDDEN);
}

/** The angle at which a run over the rear sprocket passes `lever` above the pivot. */
function angleOverPivot(on: Stance, lever: number): number {
  const above = on.pose.pivot.y - on.rearAxle.y;
  const line = Math.atan2(above, on.pose.pivot.x);
  return line - Math.asin((on.machine.rearSprocketRadius - lever) / Math.hypot(on.pose.pivot.x, above));
}

// Source: V. Cossalter; Motorcycle Dynamics; 2nd edition, 2006; chapter on the rear suspension; from memory.
describe('limits of the squat line', () => {
  const plain = standing(bare.bike, bare.setup, RIDDEN);

  it('lies at the swingarm’s angle when the upper run is parallel to the swingarm', () => {
    const on = withUpperRun(plain.swingarmAngle, plain.machine.rearSprocketRadius);
    expect(angleOf(chainRun(on, 'upper').way)).toBeCloseTo(on.swingarmAngle, 12);
    expect(instantCentre(driveCircles(on))).toBe('parallel');
    expect(squatAngle.read(on)).toBeCloseTo(swingarmAngle.read(on) as number, 12);
  });

  it('passes through the pivot when the pull has no arm about it, as with a shaft housing fixed to the swingarm', () => {
    const on = withUpperRun(angleOverPivot(plain, 0), 0);
    expect(antiSquatChain.read(on)).toBeCloseTo(0, 9);
    expect(antiSquat.read(on)).toBeCloseTo(antiSquatSwingarm.read(on) as number, 9);
    expect(Math.tan(squatAngle.read(on) as number)).toBeCloseTo(on.pose.pivot.y / on.pose.pivot.x, 12);
  });

  it('is level, 0 % and without a ratio, when the instant centre is on the ground', () => {
    // The run from the rear sprocket's top to where the swingarm line meets the ground.
    const foot = { x: -plain.rearAxle.y / Math.tan(plain.swingarmAngle), y: 0 };
    const distance = Math.hypot(foot.x, plain.rearAxle.y);
    const arm = Math.atan2(plain.rearAxle.y, -foot.x);
    const angle = arm + Math.asin(plain.machine.rearSprocketRadius / distance);
    const lever =
      plain.machine.rearSprocketRadius -
      (plain.pose.pivot.y - plain.rearAxle.y) * Math.cos(angle) +
      plain.pose.pivot.x * Math.sin(angle);
    const on = withUpperRun(angle, lever);
    const centre = instantCentre(driveCircles(on));
    if (centre === 'parallel') throw new Error(centre);
    expect(centre.y).toBeCloseTo(0, 8);
    expect(antiSquat.read(on)).toBeCloseTo(0, 9);
    expect(squatRatio.read(on)).toBe(absent('neverSquats'));
  });

  it('is 100 % and ratio 1 when the instant centre is on the load-transfer line', () => {
    const centre = instantCentre(driveCircles(plain));
    if (centre === 'parallel') throw new Error(centre);
    // The sprung centre goes where the whole centre lies on the line from patch to instant centre.
    const high = (centre.y / centre.x) * plain.pose.wheelbase;
    const rise = ((high - plain.centre.y) * plain.mass) / bare.bike.frame.sprungMass;
    const { x, y } = onGround(plain.pose, plain.machine.places.sprungCentre);
    const on = standing(
      withFrame(bare.bike, { sprungCentre: inFrame(plain.pose, { x, y: y + rise }) }),
      bare.setup,
      RIDDEN,
    );
    expect(on.centre.y).toBeCloseTo(high, 9);
    expect(antiSquat.read(on)).toBeCloseTo(100, 9);
    expect(squatRatio.read(on)).toBeCloseTo(1, 11);
  });

  it('points down, pro-squat, when the instant centre is below the ground ahead', () => {
    const flat = withSwingarm(bare.bike, { toppedOutAngleDeg: -6 });
    const on = standing(withFrame(flat, { countershaft: { x: 75, y: 110 } }), bare.setup);
    expect(antiSquat.read(on)).toBeLessThan(0);
    expect(squatRatio.read(on)).toBeLessThan(0);
  });

  it('has ratio and anti-squat as inverses of one another', () => {
    expect((squatRatio.read(plain) as number) * (antiSquat.read(plain) as number)).toBeCloseTo(100, 10);
  });
});
