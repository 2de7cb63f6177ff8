/** A seat brought down by so much: the ways a workshop has, and what each costs elsewhere. */
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import type { Bike } from '../parts/bike.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { READINGS } from '../readings/all-readings.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike } from '../riding/stand-bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';

export type LoweringKey = 'rearAlone' | 'bothEnds' | 'preload';
export type LoweringAdjuster = 'shockLength' | 'forkTubes' | 'shockPreload';

/** A reading in one ride state before and after, in its metric unit; null where there is no number. */
export interface Cost {
  readonly reading: string;
  readonly state: RideStateKey;
  readonly before: number | null;
  readonly after: number | null;
}

export interface Lowering {
  readonly key: LoweringKey;
  readonly turned: readonly {
    readonly adjuster: LoweringAdjuster;
    readonly from: number;
    readonly to: number;
  }[];
  /** How far the seat comes down with the rider on board, mm. */
  readonly drop: number;
  /** Whether that is what was wanted, to half a step. */
  readonly reached: boolean;
  readonly costs: readonly Cost[];
}

/** Where a lowering is paid for, each in the ride state in which people compare it. */
export const LOOKED_AT: readonly Pick<Cost, 'reading' | 'state'>[] = [
  { reading: 'seatHeight', state: 'riderUp' },
  { reading: 'trail', state: 'riderUp' },
  { reading: 'rake', state: 'riderUp' },
  { reading: 'swingarmAngle', state: 'toppedOut' },
  { reading: 'antiSquat', state: 'accelerating' },
  { reading: 'frontTravelLeft', state: 'riderUp' },
  { reading: 'rearTravelLeft', state: 'riderUp' },
  { reading: 'groundClearance', state: 'riderUp' },
  { reading: 'touchLean', state: 'midCorner' },
  { reading: 'tyreToClampGap', state: 'riderUp' },
];

const SEAT = { reading: 'seatHeight', state: 'riderUp' } as const;
const TRAIL = { reading: 'trail', state: 'riderUp' } as const;
const DECIMALS = 6;

/**
 * The ways to bring the seat down by `drop` mm with the rider, fuel and load on board as they are set, each in whole steps
 * of its adjusters: a shorter shock alone; a shorter shock with the fork tubes raised until the trail is as near as it gets
 * to what it was; less preload of the shock. Of a way that does not reach so far, the furthest it goes. A way that
 * brings nothing down is left out; so is every way on a bike that does not stand.
 */
export function waysToLower(bike: Bike, setup: Setup, drop: number): Lowering[] {
  const read = readerOf(bike);
  const seat = read(SEAT, setup);
  if (seat === null || !(drop > 0)) return [];
  const dropOf = (asked: Setup): number | null => {
    const after = read(SEAT, asked);
    return after === null ? null : seat - after;
  };
  const nearest = (adjuster: LoweringAdjuster, from: Setup): Setup =>
    stepNearer(bike, from, adjuster, dropOf, drop);
  const rearAlone = nearest('shockLength', setup);
  const ways: readonly (readonly [LoweringKey, Setup])[] = [
    ['rearAlone', rearAlone],
    ['bothEnds', withTrailKept(bike, setup, rearAlone, read, dropOf, drop)],
    ['preload', nearest('shockPreload', setup)],
  ];
  return ways.flatMap(([key, asked]): Lowering[] => {
    const came = dropOf(asked);
    const turned = (['shockLength', 'forkTubes', 'shockPreload'] as const)
      .filter((adjuster) => asked[adjuster] !== setup[adjuster])
      .map((adjuster) => ({ adjuster, from: setup[adjuster], to: asked[adjuster] }));
    if (came === null || !(came > 0) || turned.length === 0) return [];
    const costs = LOOKED_AT.map((at) => ({ ...at, before: read(at, setup), after: read(at, asked) }));
    return [{ key, turned, drop: came, reached: isReached(bike, asked, turned, dropOf, drop), costs }];
  });
}

/** Where the adjusters of a way stand once they are turned. */
export function turnedTo({ turned }: Pick<Lowering, 'turned'>): Partial<Setup> {
  return Object.fromEntries(turned.map(({ adjuster, to }) => [adjuster, to]));
}

type Read = (at: Pick<Cost, 'reading' | 'state'>, asked: Setup) => number | null;

/** Reads a bike as set in a ride state; what was read once is known. */
function readerOf(bike: Bike): Read {
  const stood = new Map<string, ReturnType<typeof standBike>>();
  return ({ reading: key, state }, asked) => {
    const { shockLength, forkTubes, shockPreload } = asked;
    const name = `${state} ${shockLength} ${forkTubes} ${shockPreload}`;
    const on = stood.get(name) ?? standBike(bike, asked, state);
    stood.set(name, on);
    const reading = READINGS.find((each) => each.key === key);
    const value = on.ok && reading !== undefined ? metricReading(reading, on) : null;
    return typeof value === 'number' ? value : null;
  };
}

/** The values of an adjuster in whole steps from where it stands, within its range. */
function valuesOf(bike: Bike, setup: Setup, adjuster: LoweringAdjuster): number[] {
  if (!doesApply(adjusterOf(adjuster), bike, setup)) return [];
  const { least, most, step } = adjusterRange(adjusterOf(adjuster), bike, setup);
  const start = setup[adjuster];
  const values: number[] = [];
  for (let n = Math.ceil((least - start) / step); n <= Math.floor((most - start) / step); n += 1)
    values.push(Number((start + n * step).toFixed(DECIMALS)));
  return values;
}

/** The setup with the adjuster where the seat comes down most nearly by what is wanted: step by step, as long as it gets nearer. */
function stepNearer(
  bike: Bike,
  setup: Setup,
  adjuster: LoweringAdjuster,
  dropOf: (asked: Setup) => number | null,
  wanted: number,
): Setup {
  const values = valuesOf(bike, setup, adjuster);
  const missAt = (place: number): number => {
    const came = place in values ? dropOf({ ...setup, [adjuster]: values[place] }) : null;
    return came === null ? Infinity : Math.abs(came - wanted);
  };
  let place = values.indexOf(setup[adjuster]);
  for (;;) {
    const next = [place - 1, place + 1].find((beside) => missAt(beside) < missAt(place));
    if (next === undefined) return { ...setup, [adjuster]: values[place] ?? setup[adjuster] };
    place = next;
  }
}

/**
 * Of all places of the fork tubes the one whose shock, for the same seat, leaves the trail nearest to what it was. From
 * one place of the tubes to the next the shock moves by a step or two, so it is looked for from where it was.
 */
function withTrailKept(
  bike: Bike,
  setup: Setup,
  rearAlone: Setup,
  read: Read,
  dropOf: (asked: Setup) => number | null,
  wanted: number,
): Setup {
  const trail = read(TRAIL, setup);
  if (trail === null) return rearAlone;
  let found = rearAlone;
  let miss = Math.abs((read(TRAIL, rearAlone) ?? Infinity) - trail);
  // Tubes further up through the clamps lower the front.
  let { shockLength } = rearAlone;
  const places = valuesOf(bike, setup, 'forkTubes').filter((tubes) => tubes > setup.forkTubes);
  for (const forkTubes of places) {
    const asked = stepNearer(bike, { ...setup, forkTubes, shockLength }, 'shockLength', dropOf, wanted);
    ({ shockLength } = asked);
    const after = read(TRAIL, asked);
    if (after === null || Math.abs(after - trail) >= miss) continue;
    found = asked;
    miss = Math.abs(after - trail);
  }
  return found;
}

/** Whether no further step of the adjuster that lowers would have been needed. */
function isReached(
  bike: Bike,
  asked: Setup,
  turned: Lowering['turned'],
  dropOf: (asked: Setup) => number | null,
  wanted: number,
): boolean {
  const came = dropOf(asked);
  const lowering = turned.find(({ adjuster }) => adjuster !== 'forkTubes');
  if (came === null || lowering === undefined) return false;
  if (came >= wanted) return true;
  const values = valuesOf(bike, asked, lowering.adjuster);
  const next = dropOf({ ...asked, [lowering.adjuster]: values[values.indexOf(lowering.to) - 1] ?? NaN });
  // The next step down would overshoot by more than this one falls short.
  return next !== null && next > wanted;
}
