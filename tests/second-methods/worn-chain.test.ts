/** The axle of a bike with a worn chain on, against a chain of rigid links of the worn length laid tooth by tooth. */
import { describe, expect, it } from 'vitest';
import type { Bike } from '../../src/core/parts/bike.ts';
import { fromPivot } from '../../src/core/chassis/pivot-move.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { linkedBike, sprungSetup } from '../support/linked-bike.ts';
import { withFrame } from '../support/plain-bike.ts';
import { rigidCentres } from '../support/rigid-chain.ts';

const unguided = withFrame(linkedBike, { guideRadius: null });
const PITCH = unguided.drive.chainPitch;

function worn(percent: number): Bike {
  const measuredLength = 20 * PITCH * (1 + percent / 100);
  return { ...unguided, drive: { ...unguided.drive, measuredLinks: 20, measuredLength } };
}

/** Countershaft to axle, mm, the wheel hanging and the chain taut. */
function centres(bike: Bike, pivotUp: number): number {
  const setup = { ...sprungSetup, chainLinks: 114, chainSlack: 0, pivotUp };
  const on = standBike(bike, setup, 'toppedOut');
  if (!on.ok) throw new Error(on.reason);
  const { arm, machine } = on;
  const shaft = fromPivot(bike.frame.countershaft, setup);
  const axle = { x: -machine.rear.arm * Math.cos(arm.angle), y: -machine.rear.arm * Math.sin(arm.angle) };
  return Math.hypot(shaft.x - axle.x, shaft.y - axle.y);
}

describe('a worn chain on the bike', () => {
  it.each([0.1, 0.3, 0.6])('%s %% longer puts the axle within 0.1 mm of where rigid links do', (percent) => {
    const teeth = { front: 15, rear: 45, pitch: PITCH * (1 + percent / 100) };
    for (const pivotUp of [-4, 0, 4]) {
      const apart = centres(worn(percent), pivotUp);
      for (const part of [0, 0.3, 0.7]) {
        const rigid = rigidCentres(teeth, 114, (2 * Math.PI * part) / 15, [apart - 4, apart + 4]);
        expect(Math.abs(rigid - apart)).toBeLessThan(0.1);
      }
    }
    // Half of what the whole chain has grown, so that the chain as new would be told apart.
    expect(centres(worn(percent), 0) - centres(worn(0.05), 0)).toBeGreaterThan(5 * (percent - 0.05));
  });
});
