/** Tests of the swingarm's own mass: split by where its centre lies, and weighing as the arm itself does. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup, withSwingarm } from '../support/plain-bike.ts';
import { standing } from '../support/standing.ts';
import { armPointInFrame } from '../../src/core/linkage/link-drawing.ts';
import { onGround } from '../../src/core/chassis/pose.ts';
import { neutralAntiSquat } from '../../src/core/riding/equilibrium/neutral-anti-squat.ts';
import { sprungFromWhole } from '../../src/core/riding/loads.ts';
import { machine } from '../../src/core/standing/machine.ts';

const MASS = 8;
const ALONG = 203;
const ABOVE = 40;
const heavy = withSwingarm(plainBike, { mass: MASS, centreAlong: ALONG, centreAbove: ABOVE });
const TRAVEL = { front: 30, rear: 45 };

describe('a swingarm with its own mass', () => {
  it('puts on the axle what its centre’s place along the arm says, and less with the axle back', () => {
    const [front, back] = [0, 30].map((axlePosition) =>
      standing(heavy, { ...plainSetup, axlePosition }, TRAVEL),
    );
    const wheel = heavy.rearWheel.unsprungMass;
    for (const { machine: made } of [front, back]) {
      expect(made.rearUnsprung - wheel).toBeCloseTo((MASS * ALONG) / made.rear.arm, 12);
      const onPivot = made.carried.find(({ key }) => key === 'swingarm')?.mass ?? 0;
      expect(made.rearUnsprung - wheel + onPivot).toBeCloseTo(MASS, 12);
    }
    expect(back.machine.rearUnsprung).toBeLessThan(front.machine.rearUnsprung);
  });

  it('has the mass and the centre of the bike and the arm together', () => {
    const [without, on] = [plainBike, heavy].map((bike) => standing(bike, plainSetup, TRAVEL));
    const centre = onGround(on.pose, armPointInFrame({ along: ALONG, above: ABOVE }, on.arm.angle));
    expect(on.mass).toBeCloseTo(without.mass + MASS, 12);
    for (const axis of ['x', 'y'] as const)
      expect(on.centre[axis]).toBeCloseTo(
        (without.mass * without.centre[axis] + MASS * centre[axis]) / on.mass,
        10,
      );
  });

  it('is taken out of the whole by the weigh-in, so that what the springs carry comes out as it is', () => {
    const on = standing(
      heavy,
      { ...plainSetup, riderMass: 0, loadMass: 0, passengerMass: 0, fuelMass: 0 },
      TRAVEL,
    );
    const found = sprungFromWhole(on, on.mass, on.centre.x, on.centre.y);
    if (!found.ok) throw new Error(found.reason);
    const { sprungMass, sprungCentre } = heavy.frame;
    expect(found.mass).toBeCloseTo(sprungMass, 10);
    expect(found.centre.x).toBeCloseTo(sprungCentre.x, 8);
    expect(found.centre.y).toBeCloseTo(sprungCentre.y, 8);
  });

  it('moves the neutral point of anti-squat the less, the higher its centre lies above the arm', () => {
    const shifts = [-40, 0, 40].map((centreAbove) => {
      const found = neutralAntiSquat(standing(withSwingarm(heavy, { centreAbove }), plainSetup, TRAVEL));
      if (!found.ok) throw new Error(found.reason);
      return found.shift;
    });
    expect(shifts[0]).toBeGreaterThan(shifts[1]);
    expect(shifts[1]).toBeGreaterThan(shifts[2]);
  });

  it('is refused below nothing', () => {
    expect(machine(withSwingarm(plainBike, { mass: -1 }), plainSetup)).toMatchObject({
      ok: false,
      reason: 'massNegative',
    });
  });
});
