/** An invented road sport bike in round numbers, with the setup and the ways in which tests change it. */
import type { Bike, Drive, Fork, Frame, SpringEnds, Swingarm } from '../../src/core/parts/bike.ts';
import { eachFramePlace, FRAME_PLACES } from '../../src/core/parts/frame-places.ts';
import { eachTouchPart, TOUCH_PARTS } from '../../src/core/parts/touch-parts.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { fillSetup } from './fill-setup.ts';

/** A coil with nothing beside it. */
export const NO_ENDS: SpringEnds = {
  springTravel: null,
  preloadThread: null,
  mostPreload: null,
  topOutLength: null,
  topOutRate: 50,
  bumpStart: null,
  bumpRate: 50,
  bumpExponent: 2,
};

export const PLAIN_DRIVE: Drive = {
  kind: 'chain',
  chainPitch: 15.875,
  halfLink: false,
  leastFrontTeeth: 10,
  primaryRatio: null,
  gearRatios: [],
  measuredLinks: 20,
  measuredLength: null,
  wearLimit: null,
  leastSlack: 10,
};

/**
 * Hanging, its frame's axes stand almost level; the swingarm falls by 9.5°, the gearing is 15/45 on a 5xx chain.
 * Every figure is made up.
 */
export const plainBike: Bike = {
  name: 'Plain test bike',
  about: 'Made up for the tests.',
  invented: true,
  bodywork: 'faired',
  frame: {
    ...eachFramePlace((key) => FRAME_PLACES[key].absent?.at ?? { x: 0, y: 0 }),
    steeringHead: { x: 520, y: 530 },
    axisAngleDeg: 24,
    headTubeLength: 180,
    countershaft: { x: 75, y: 0 },
    sprungCentre: { x: 190, y: 120 },
    sprungMass: 160,
    seat: { x: 0, y: 400 },
    passengerSeat: { x: -220, y: 440 },
    loadMark: { x: -250, y: 460 },
    tank: { x: 200, y: 320 },
    guideRadius: 25,
    lowerGuideRadius: null,
    touching: eachTouchPart((key) => ({ ...TOUCH_PARTS[key].absent, halfWidth: null })),
  },
  fork: {
    length: 725,
    travel: 120,
    axleLead: 0,
    legAngleDeg: 0,
    springLegs: 2,
    support: null,
    otherLeg: null,
    ends: NO_ENDS,
    leastHeight: null,
    lowerClampDepth: null,
  },
  swingarm: {
    length: 580,
    slot: 30,
    toppedOutAngleDeg: 9.5,
    wheelTravel: 130,
    travelTable: [
      { wheelTravel: 0, shockStroke: 0 },
      { wheelTravel: 40, shockStroke: 19 },
      { wheelTravel: 80, shockStroke: 39 },
      { wheelTravel: 130, shockStroke: 66 },
    ],
    tablePitchDeg: 0,
    shockThread: 1.5,
    mass: 0,
    centreAlong: 0,
    centreAbove: 0,
    links: null,
  },
  shock: { count: 1, ends: NO_ENDS, support: null },
  housing: {
    heldBy: 'swingarm',
    armAnchor: { x: -10, y: -70 },
    boltRadius: 90,
    armLength: 500,
    boltSide: 'below',
  },
  rearBrake: {
    caliper: 'onArm',
    stayAnchor: { x: 0, y: 60 },
    bracketRadius: 90,
    stayLength: 500,
    bracketSide: 'above',
  },
  frontWheel: {
    rimDiameter: 431.8,
    unsprungMass: 16,
    tyreRate: null,
    tyreMeasuredUnder: 0,
    crownRadius: null,
  },
  rearWheel: {
    rimDiameter: 431.8,
    unsprungMass: 22,
    tyreRate: null,
    tyreMeasuredUnder: 0,
    crownRadius: null,
  },
  drive: PLAIN_DRIVE,
};

export const plainSetup: Setup = fillSetup({
  forkTubes: 5,
  frontTeeth: 15,
  rearTeeth: 45,
  clampOffset: 30,
  frontTyre: { code: '120/70-17' },
  rearTyre: { code: '190/55-17' },
  frontTravelUsed: 40,
  rearTravelUsed: 40,
  riderMass: 80,
  riderHeight: 200,
  loadHeight: 200,
});

/** The bike with some of its frame changed. */
export function withFrame(bike: Bike, frame: Partial<Frame>): Bike {
  return { ...bike, frame: { ...bike.frame, ...frame } };
}

/** The bike with some of its fork changed. */
export function withFork(bike: Bike, fork: Partial<Fork>): Bike {
  return { ...bike, fork: { ...bike.fork, ...fork } };
}

/** The bike with some of its swingarm changed. */
export function withSwingarm(bike: Bike, swingarm: Partial<Swingarm>): Bike {
  return { ...bike, swingarm: { ...bike.swingarm, ...swingarm } };
}
