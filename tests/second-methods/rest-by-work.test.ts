/** The equilibrium in every ride state against virtual work, with links, guide, belt, shaft, stay, lean and drag. */
import { describe, expect, it } from 'vitest';
import type { Bike } from '../../src/core/parts/bike.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { lowerPull } from '../../src/core/standing/drive-slopes.ts';
import { alone } from '../../src/core/riding/loads.ts';
import { forcesIn } from '../support/forces-in.ts';
import { loadCase, type RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { plainBike, withFrame, withSwingarm } from '../support/plain-bike.ts';
import { rearLayouts, twoShocks } from '../support/rear-layouts.ts';
import { linkedBike } from '../support/linked-bike.ts';
import { SPRUNG_ROAD } from '../support/sprung-bikes.ts';
import { workLeft } from '../support/work-left.ts';

/** Rests are found to 1e-9 mm and the moves' own error is below this, N; the forces are of 1000 N. */
const NOTHING = 1e-4;

/** So large that the chain lies on it in every posture, mm. */
const ON_GUIDE = 90;
/** Likewise of the guide under the pivot, and small enough to lie between the sprockets. */
const UNDER_GUIDE = 108;

const setup: Setup = {
  ...SPRUNG_ROAD.setup,
  riderForward: 45,
  fuelMass: 11,
  passengerMass: 12,
  loadMass: 9,
  acceleration: 0.35,
  braking: 0.45,
  brakeFrontShare: 65,
  leanDeg: 42,
  cornerAcceleration: 0.1,
  engineDeceleration: 0.15,
  closedBraking: 0.2,
  closedLeanDeg: 20,
  dragForce: 180,
  dragHeight: 760,
};
const driven = (kind: Bike['drive']['kind'], bike = linkedBike): Bike => ({
  ...bike,
  drive: { ...bike.drive, kind },
});
const stayed: Bike = {
  ...linkedBike,
  rearBrake: {
    caliper: 'ownStay',
    stayAnchor: { x: -6, y: -95 },
    bracketRadius: 95,
    stayLength: 560,
    bracketSide: 'below',
  },
};

function torqueArmed(boltSide: 'above' | 'below', other: Partial<Bike['housing']> = {}): Bike {
  const bike = driven('shaft');
  return { ...bike, housing: { ...bike.housing, heldBy: 'torqueArm', armLength: 540, boltSide, ...other } };
}

const BIKES: readonly { readonly name: string; readonly bike: Bike; readonly own?: Partial<Setup> }[] = [
  ...rearLayouts.map(({ name, layout }) => ({
    name,
    bike: withSwingarm(plainBike, { links: layout }),
    own: layout === twoShocks ? { shockSpringRate: 60 } : {},
  })),
  { name: 'a travel table', bike: plainBike },
  { name: 'a chain over its guide', bike: withFrame(linkedBike, { guideRadius: ON_GUIDE }) },
  {
    name: 'a worn chain, adjusters turned',
    bike: worn(linkedBike),
    own: { chainLinks: 114, pivotUp: 3, shockMountShim: 2, linkLength: -2 },
  },
  { name: 'a belt', bike: driven('belt'), own: { frontTeeth: 19, rearTeeth: 55 } },
  { name: 'a shaft', bike: driven('shaft') },
  { name: 'a shaft with a torque arm below', bike: torqueArmed('below') },
  {
    name: 'a shaft with a torque arm above and the caliper on its housing',
    bike: {
      ...torqueArmed('above', { armAnchor: { x: -40, y: 70 }, armLength: 520 }),
      rearBrake: { ...linkedBike.rearBrake, caliper: 'onHousing' },
    },
  },
  { name: 'a hub motor', bike: driven('hub') },
  { name: 'a caliper on a stay', bike: stayed },
  { name: 'slowing in the corner', bike: stayed, own: { cornerAcceleration: 0, cornerBraking: 0.25 } },
  {
    name: 'the throttle closed in the corner, on the brakes',
    bike: stayed,
    own: { cornerAcceleration: 0, cornerEngineDeceleration: 0.12, cornerBraking: 0.2 },
  },
  {
    name: 'a heavy swingarm with its centre above the arm, on a stay',
    bike: withSwingarm(stayed, { mass: 9, centreAlong: 240, centreAbove: 60 }),
    own: { axlePosition: 12 },
  },
  {
    name: 'a swingarm braced below, axle placed by its chain',
    bike: withSwingarm(worn(linkedBike), { mass: 7, centreAlong: 310, centreAbove: -45 }),
    own: { chainLinks: 114 },
  },
  { name: 'a chain under its guide', bike: withFrame(linkedBike, { lowerGuideRadius: UNDER_GUIDE }) },
];

function worn(bike: Bike): Bike {
  const { drive } = bike;
  return { ...bike, drive: { ...drive, measuredLinks: 20, measuredLength: 20 * drive.chainPitch * 1.004 } };
}

const STATES: readonly RideStateKey[] = [
  'noRider',
  'riderUp',
  'accelerating',
  'throttleClosed',
  'braking',
  'midCorner',
];

describe.each(BIKES)('$name', ({ bike, own = {} }) => {
  it.each(STATES)('%s: no small move of fork or rear wheel sets work free', (state) => {
    const asSet = { ...setup, ...own };
    const on = standBike(bike, asSet, state);
    if (!on.ok || on.sprung === undefined || on.equilibrium === undefined)
      throw new Error(`No balance: ${JSON.stringify(on.ok ? null : on)}`);
    const forces = forcesIn(loadCase(state, asSet));
    if (forces === null) throw new Error('No forces');
    expect([on.equilibrium.front.rest, on.equilibrium.rear.rest]).toEqual(['onSprings', 'onSprings']);
    if (bike.frame.guideRadius === ON_GUIDE) expect(on.pullLever).toBe(ON_GUIDE);
    if (bike.frame.lowerGuideRadius === UNDER_GUIDE)
      expect(lowerPull(on)).toEqual({ lever: -UNDER_GUIDE, onGuide: true });
    const left = workLeft(state === 'noRider' ? alone(on.sprung) : on.sprung, on.travel, forces);
    expect(Math.abs(left.front)).toBeLessThan(NOTHING);
    expect(Math.abs(left.rear)).toBeLessThan(NOTHING);
    // A rest that is a tenth of a millimetre off would show.
    const off = { front: on.travel.front + 0.1, rear: on.travel.rear + 0.1 };
    const wrong = workLeft(state === 'noRider' ? alone(on.sprung) : on.sprung, off, forces);
    expect(Math.min(Math.abs(wrong.front), Math.abs(wrong.rear))).toBeGreaterThan(0.1);
  });
});
