/** Inputs that no bike can have, each one edit away from a bike that stands: what is wrong, and what to change. */
import { machine } from '../../src/core/standing/machine.ts';
import type { NoEquilibriumReason } from '../../src/core/standing/no-equilibrium.ts';
import type { ForceRow, Support } from '../../src/core/parts/support.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import type { BikeDocument } from '../../src/document/document.ts';
import {
  setAdjuster,
  setBikeField,
  setSupport,
  setTravelTable,
  type Edited,
} from '../../src/document/edits.ts';
import { newDocument } from './new-document.ts';

const [road] = DEMO_BIKES;

const AIR: Support = {
  spring: { kind: 'oneRate' },
  air: { bore: 43, slidingTube: 43, exponent: 1.3, steelVolume: 0, balance: null },
};

/** The road bike with some of its parts otherwise. */
function bikeWith(change: (from: BikeDocument['bike']) => BikeDocument['bike']): BikeDocument {
  return newDocument(change(road.bike), { ...road.setup, forkAirGap: 160, shockAirGap: 60 });
}

const onAir = bikeWith((bike) => ({
  ...bike,
  fork: { ...bike.fork, support: AIR },
  shock: { ...bike.shock, support: AIR },
}));

const onTable = bikeWith((bike) => ({ ...bike, swingarm: { ...bike.swingarm, links: null } }));

/** With its anchor on the pivot, housing and arm lie in one line where they are as long as the swingarm together. */
const onShaft = bikeWith((bike) => ({
  ...bike,
  drive: { ...bike.drive, kind: 'shaft' },
  housing: {
    ...bike.housing,
    heldBy: 'torqueArm',
    armAnchor: { x: 0, y: 0 },
    boltRadius: 90,
    armLength: bike.swingarm.length,
  },
}));

function armOf({ bike, setup }: BikeDocument): number {
  const made = machine(bike, setup);
  if (!made.ok) throw new Error(made.reason);
  return made.rear.arm;
}

const forces = (...rows: readonly (readonly [number, number])[]): Support => ({
  spring: { kind: 'table', rows: rows.map(([pressed, force]): ForceRow => ({ pressed, force })) },
  air: null,
});

export interface BadInput {
  readonly name: string;
  /** A bike that stands in every ride state. */
  readonly good: BikeDocument;
  readonly edit: (from: BikeDocument) => Edited;
  readonly reason: NoEquilibriumReason;
  /** What is wrong, and what to change, as they are said. */
  readonly wrong: string;
  readonly advice: string;
  /** Whether the bike still hangs so: springs and air count only where they carry. */
  readonly hangs: boolean;
}

/** What can be saved and opened, and does not stand. */
export const BAD_INPUTS: readonly BadInput[] = [
  {
    name: 'a fork whose air space is filled by its spring',
    good: onAir,
    edit: (from) =>
      setSupport(from, 'fork', {
        ...AIR,
        air: { bore: 43, slidingTube: 43, exponent: 1.3, steelVolume: 240, balance: null },
      }),
    reason: 'noAirLeft',
    wrong: 'The air at the front end is used up at',
    advice: 'Make the air gap larger, or check the steel volume.',
    hangs: true,
  },
  {
    name: 'a shock without an air gap',
    good: onAir,
    edit: (from) => setAdjuster(from, 'shockAirGap', 0),
    reason: 'noAirLeft',
    wrong: 'The air at the rear end is used up at',
    advice: 'Make the air gap larger',
    hangs: true,
  },
  {
    name: 'a fork with no pressure at all',
    good: onAir,
    edit: (from) => setAdjuster(from, 'forkAirPressure', -1.01325),
    reason: 'airPressureImpossible',
    wrong: 'at the front end is less than no air at all',
    advice: 'Set more than −1.01',
    hangs: true,
  },
  {
    name: 'a shock with less than no pressure',
    good: onAir,
    edit: (from) => setAdjuster(from, 'shockAirPressure', -3),
    reason: 'airPressureImpossible',
    wrong: 'at the rear end is less than no air at all',
    advice: 'Set more than −1.01',
    hangs: true,
  },
  {
    name: 'a force table that falls',
    good: bikeWith((bike) => bike),
    edit: (from) => setSupport(from, 'fork', forces([0, 0], [60, 700], [120, 690])),
    reason: 'forceTableFalls',
    wrong: 'Row 3 of the front force table does not rise',
    advice: 'Measure that row again.',
    hangs: true,
  },
  {
    name: 'a travel table that falls',
    good: onTable,
    edit: (from) =>
      setTravelTable(from, [
        { wheelTravel: 0, shockStroke: 0 },
        { wheelTravel: 60, shockStroke: 30 },
        { wheelTravel: 120, shockStroke: 25 },
      ]),
    reason: 'travelTableUnusable',
    wrong: 'travel table cannot be used',
    advice: 'both wheel travel and shock stroke must rise from row to row',
    hangs: false,
  },
  {
    name: 'a front tyre with a rate of zero',
    good: bikeWith((bike) => ({ ...bike, frontWheel: { ...bike.frontWheel, tyreRate: 160 } })),
    edit: (from) => setBikeField(from, 'frontWheel.tyreRate', 0),
    reason: 'tyreRateNotAboveZero',
    wrong: 'The front tyre’s rate is zero or less',
    advice: 'Give load over sink, or none for a rigid tyre.',
    hangs: false,
  },
  {
    name: 'a rear tyre with a rate of zero',
    good: bikeWith((bike) => ({ ...bike, rearWheel: { ...bike.rearWheel, tyreRate: 190 } })),
    edit: (from) => setBikeField(from, 'rearWheel.tyreRate', 0),
    reason: 'tyreRateNotAboveZero',
    wrong: 'The rear tyre’s rate is zero or less',
    advice: 'Give load over sink, or none for a rigid tyre.',
    hangs: false,
  },
  {
    name: 'a torque arm in line with the swingarm',
    good: onShaft,
    edit: (from) => setBikeField(from, 'housing.armLength', armOf(from) - 90 + 1e-4),
    reason: 'torqueArmInLine',
    wrong: 'The torque arm lies in line with the swingarm',
    advice: 'Move the bolt on the housing or on the frame away from the swingarm.',
    hangs: false,
  },
];

export interface RefusedInput {
  readonly name: string;
  readonly edit: (from: BikeDocument) => Edited;
  /** The same in a file, beside what is good of the road bike. */
  readonly inFile: { readonly of: 'setup' | 'frontWheel'; readonly key: string; readonly value: number };
  readonly wrong: string;
  readonly advice: string;
}

/** What no file may hold: an edit is refused, and a file is repaired and says so. */
export const REFUSED_INPUTS: readonly RefusedInput[] = [
  {
    name: 'gas below zero',
    edit: (from) => setAdjuster(from, 'acceleration', -0.12),
    inFile: { of: 'setup', key: 'acceleration', value: -0.12 },
    wrong: 'must be a number from 0 to 10',
    advice: 'Slower is engine braking (engineDeceleration, ride state “Throttle closed”)',
  },
  {
    name: 'brakes below zero',
    edit: (from) => setAdjuster(from, 'braking', -0.3),
    inFile: { of: 'setup', key: 'braking', value: -0.3 },
    wrong: 'must be a number from 0 to 10',
    advice: 'To gain speed set acceleration (ride state “Accelerating”)',
  },
  {
    name: 'engine braking below zero',
    edit: (from) => setAdjuster(from, 'engineDeceleration', -0.1),
    inFile: { of: 'setup', key: 'engineDeceleration', value: -0.1 },
    wrong: 'must be a number from 0 to 10',
    advice: 'To gain speed set acceleration (ride state “Accelerating”)',
  },
  {
    name: 'a tyre rate below zero',
    edit: (from) => setBikeField(from, 'frontWheel.tyreRate', -5),
    inFile: { of: 'frontWheel', key: 'tyreRate', value: -5 },
    wrong: 'front tyre rate',
    advice: 'must be a number from 0 to',
  },
];
