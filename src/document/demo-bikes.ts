/** The demonstration bikes, whose every figure is made up and measured on no motorcycle. */
import type { Bike } from '../core/chassis/bike.ts';
import type { Setup } from '../core/chassis/setup.ts';
import { newDocument, type BikeDocument } from './document.ts';

const ABOUT = 'Invented for demonstration. The figures belong to no motorcycle.';

const roadSport: Bike = {
  name: 'Road sport, as delivered',
  about: ABOUT,
  invented: true,
  bodywork: 'faired',
  frame: {
    steeringHead: { x: 572.3, y: 457.5 },
    axisAngleDeg: 24,
    headTubeLength: 190,
    countershaft: { x: 78, y: 7 },
    sprungCentre: { x: 190, y: 175 },
    sprungMass: 163,
    seat: { x: -60.1, y: 418.5 },
    loadMark: { x: -340.1, y: 520.5 },
    guideRadius: 27,
  },
  fork: { length: 640, travel: 120, axleLead: 2, legAngleDeg: 0 },
  swingarm: {
    length: 555,
    slot: 40,
    toppedOutAngleDeg: 9.5,
    wheelTravel: 130,
    travelTable: [
      { wheelTravel: 0, shockStroke: 0 },
      { wheelTravel: 32.5, shockStroke: 12.4 },
      { wheelTravel: 65, shockStroke: 25.6 },
      { wheelTravel: 97.5, shockStroke: 39.7 },
      { wheelTravel: 130, shockStroke: 54.6 },
    ],
    tablePitchDeg: 0,
    shockThread: 1,
  },
  frontWheel: { rimDiameter: 431.8, unsprungMass: 16 },
  rearWheel: { rimDiameter: 431.8, unsprungMass: 20 },
  drive: { kind: 'chain', chainPitch: 15.875 },
};

const roadSportSetup: Setup = {
  forkHeight: 5,
  forkExtender: 0,
  shockLength: 0,
  frontTeeth: 15,
  rearTeeth: 45,
  axlePosition: 18,
  clampOffset: 30,
  headInsertDeg: 0,
  frontTyre: { code: '120/70-17' },
  rearTyre: { code: '180/55-17' },
  frontTravelUsed: 36,
  rearTravelUsed: 34,
  riderMass: 78,
  riderHeight: 190,
  loadMass: 0,
  loadHeight: 150,
};

const trackDay: Bike = { ...roadSport, name: 'Track day' };

const trackDaySetup: Setup = {
  ...roadSportSetup,
  shockLength: 16.5,
  forkExtender: 8,
  rearTeeth: 47,
  axlePosition: 14,
  frontTravelUsed: 30,
  rearTravelUsed: 28,
  riderHeight: 170,
};

const roadster: Bike = {
  name: 'Twin-shock roadster',
  about: ABOUT,
  invented: true,
  bodywork: 'naked',
  frame: {
    steeringHead: { x: 620.5, y: 492.7 },
    axisAngleDeg: 26.5,
    headTubeLength: 200,
    countershaft: { x: 95, y: 18 },
    sprungCentre: { x: 249.3, y: 132.1 },
    sprungMass: 172,
    seat: { x: 4.3, y: 392.1 },
    loadMark: { x: -290.7, y: 427.1 },
    guideRadius: null,
  },
  fork: { length: 660, travel: 130, axleLead: 0, legAngleDeg: 0 },
  swingarm: {
    length: 485,
    slot: 45,
    toppedOutAngleDeg: 7.5,
    wheelTravel: 105,
    travelTable: [
      { wheelTravel: 0, shockStroke: 0 },
      { wheelTravel: 35, shockStroke: 30.6 },
      { wheelTravel: 70, shockStroke: 60.7 },
      { wheelTravel: 105, shockStroke: 90.2 },
    ],
    tablePitchDeg: 0,
    shockThread: null,
  },
  frontWheel: { rimDiameter: 457.2, unsprungMass: 17 },
  rearWheel: { rimDiameter: 457.2, unsprungMass: 22 },
  drive: { kind: 'chain', chainPitch: 15.875 },
};

const roadsterSetup: Setup = {
  ...roadSportSetup,
  frontTeeth: 17,
  rearTeeth: 42,
  axlePosition: 15,
  clampOffset: 52,
  frontTyre: { code: '110/90-18' },
  rearTyre: { code: '130/80-18' },
  frontTravelUsed: 38,
  rearTravelUsed: 32,
  riderMass: 80,
  riderHeight: 230,
};

const longTravel: Bike = {
  name: 'Long-travel off-road',
  about: ABOUT,
  invented: true,
  bodywork: 'offRoad',
  frame: {
    steeringHead: { x: 530, y: 462.3 },
    axisAngleDeg: 27,
    headTubeLength: 210,
    countershaft: { x: 85, y: 12 },
    sprungCentre: { x: 213, y: 128.4 },
    sprungMass: 82,
    seat: { x: 13, y: 403.4 },
    loadMark: { x: -347, y: 428.4 },
    guideRadius: 24,
  },
  fork: { length: 795, travel: 300, axleLead: 39, legAngleDeg: 0 },
  swingarm: {
    length: 575,
    slot: 45,
    toppedOutAngleDeg: 22,
    wheelTravel: 300,
    travelTable: [
      { wheelTravel: 0, shockStroke: 0 },
      { wheelTravel: 75, shockStroke: 26.1 },
      { wheelTravel: 150, shockStroke: 54.8 },
      { wheelTravel: 225, shockStroke: 86.4 },
      { wheelTravel: 300, shockStroke: 121 },
    ],
    tablePitchDeg: 0,
    shockThread: 1.5,
  },
  frontWheel: { rimDiameter: 533.4, unsprungMass: 12 },
  rearWheel: { rimDiameter: 457.2, unsprungMass: 16 },
  drive: { kind: 'chain', chainPitch: 15.875 },
};

const longTravelSetup: Setup = {
  ...roadSportSetup,
  frontTeeth: 13,
  rearTeeth: 50,
  axlePosition: 15,
  clampOffset: 22,
  frontTyre: { code: '90/90-21' },
  rearTyre: { code: '140/80-18' },
  frontTravelUsed: 85,
  rearTravelUsed: 100,
  riderMass: 76,
  riderHeight: 260,
};

/** The invented bikes that the program opens with, the first one first. */
export const DEMO_BIKES: readonly BikeDocument[] = [
  newDocument(roadSport, roadSportSetup),
  newDocument(trackDay, trackDaySetup),
  newDocument(roadster, roadsterSetup),
  newDocument(longTravel, longTravelSetup),
];
