/** Random bikes for properties: likely ones that stand, and absurd ones that need only be refused with a reason. */
import fc from 'fast-check';
import type { Bike } from '../../src/core/parts/bike.ts';
import type { TravelRow } from '../../src/core/parts/rear-layout.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { fillSetup } from './fill-setup.ts';
import type { Travel } from '../../src/core/standing/stance.ts';
import { NO_ENDS, plainBike, PLAIN_DRIVE } from './plain-bike.ts';

export interface RandomBike {
  readonly bike: Bike;
  readonly setup: Setup;
  readonly travel: Travel;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const point = (x: readonly [number, number], y: readonly [number, number]) =>
  fc.record({ x: between(...x), y: between(...y) });

const travelTable = fc
  .array(fc.record({ rise: between(15, 60), ratio: between(0.3, 0.9) }), { minLength: 1, maxLength: 6 })
  .map((rows) => {
    const table: TravelRow[] = [{ wheelTravel: 0, shockStroke: 0 }];
    for (const { rise, ratio } of rows) {
      const last = table[table.length - 1];
      table.push({ wheelTravel: last.wheelTravel + rise, shockStroke: last.shockStroke + rise * ratio });
    }
    return table;
  });

const frame = fc
  .record({
    steeringHead: point([380, 650], [430, 650]),
    axisAngleDeg: between(15, 35),
    headTubeLength: between(120, 260),
    countershaft: point([60, 140], [-40, 60]),
    sprungCentre: point([50, 350], [20, 300]),
    sprungMass: between(60, 250),
    seat: point([-150, 150], [250, 480]),
    passengerSeat: point([-350, -100], [250, 550]),
    loadMark: point([-450, -100], [200, 550]),
    tank: point([50, 300], [200, 420]),
    guideRadius: fc.option(between(15, 38)),
    lowerGuideRadius: fc.option(between(15, 90)),
  })
  .map((placed) => ({ ...plainBike.frame, ...placed }));

const fork = fc.record({
  length: between(640, 800),
  travel: between(90, 250),
  axleLead: between(-10, 40),
  legAngleDeg: between(-2, 4),
  springLegs: fc.constantFrom(1, 2),
  ends: fc.constant(NO_ENDS),
  support: fc.constant(null),
  otherLeg: fc.constant(null),
  leastHeight: fc.option(between(-5, 5)),
  lowerClampDepth: fc.option(between(180, 260)),
});

const swingarm = fc.record({
  length: between(480, 660),
  slot: between(20, 60),
  toppedOutAngleDeg: between(2, 20),
  wheelTravel: between(80, 250),
  travelTable,
  tablePitchDeg: between(-4, 4),
  shockThread: fc.option(between(0.75, 2)),
  mass: fc.oneof(fc.constant(0), between(0, 12)),
  centreAlong: between(0, 400),
  centreAbove: between(-60, 80),
  links: fc.constant(null),
});

const tyre = fc.oneof(
  fc.constantFrom('120/70-17', '190/55ZR17', '110/90-19', '90/90-21', '140/80-18').map((code) => ({ code })),
  between(560, 700).map((diameter) => ({ diameter })),
  between(1800, 2200).map((circumference) => ({ circumference })),
);

const setup = fc
  .record({
    forkTubes: between(0, 15),
    forkExtenders: between(0, 15),
    shockLength: between(-8, 10),
    shockMountShim: between(0, 6),
    linkLength: fc.constant(0),
    pivotForward: fc.constant(0),
    pivotUp: fc.constant(0),
    forkSpringRate: between(4, 14),
    forkPreload: between(0, 25),
    shockSpringRate: between(30, 180),
    shockPreload: between(0, 20),
    frontTeeth: fc.integer({ min: 12, max: 18 }),
    rearTeeth: fc.integer({ min: 34, max: 56 }),
    axlePosition: between(0, 20),
    chainLinks: fc.constant(null),
    chainSlack: between(0, 50),
    clampOffset: between(20, 45),
    headAngleCupsDeg: between(-2, 2),
    frontTyre: tyre,
    rearTyre: tyre,
    frontTravelUsed: between(0, 90),
    rearTravelUsed: between(0, 80),
    riderMass: between(0, 120),
    riderHeight: between(0, 300),
    loadMass: between(0, 80),
    riderForward: between(-100, 100),
    passengerMass: fc.constantFrom(0, 0, 70),
    passengerHeight: between(0, 300),
    fuelMass: between(0, 20),
    loadHeight: between(0, 300),
    acceleration: between(0, 0.6),
    braking: between(0, 0.6),
    brakeFrontShare: between(0, 100),
    leanDeg: between(0, 55),
    cornerAcceleration: between(0, 0.3),
    engineDeceleration: between(0, 0.3),
    closedBraking: between(0, 0.4),
    closedLeanDeg: between(0, 50),
    dragForce: between(0, 300),
    dragHeight: between(400, 800),
  })
  .map(fillSetup);

/** Bikes whose parts lie where those of motorcycles lie; nearly all of them stand. */
export const likelyBike: fc.Arbitrary<RandomBike> = fc
  .record({ frame, fork, swingarm, setup, chainPitch: fc.constantFrom(12.7, 15.875) })
  .map(({ chainPitch, setup, ...parts }) => ({
    bike: { ...plainBike, ...parts, drive: { ...PLAIN_DRIVE, chainPitch } },
    setup,
    travel: { front: setup.frontTravelUsed, rear: setup.rearTravelUsed },
  }));

const giving = fc.option(between(90, 400));
const measuredUnder = fc.oneof(fc.constant(0), between(0, 130));

/** The same with tyres that give: at either end or both, measured free or under a load. */
export const softBike: fc.Arbitrary<RandomBike> = fc
  .record({ likely: likelyBike, front: giving, rear: giving, under: measuredUnder })
  .map(({ likely: { bike, ...rest }, front, rear, under }) => ({
    ...rest,
    bike: {
      ...bike,
      frontWheel: { ...bike.frontWheel, tyreRate: front, tyreMeasuredUnder: under },
      rearWheel: { ...bike.rearWheel, tyreRate: rear, tyreMeasuredUnder: under },
    },
  }));

const ABSURD = [
  NaN,
  Infinity,
  -Infinity,
  1e300,
  -1e300,
  1e160,
  1e17,
  -1e9,
  1e-300,
  Number.MIN_VALUE,
  Number.MAX_VALUE,
  -0,
  0,
  -1,
  -90,
  90,
  180,
  720,
  1e6,
];

type Place = readonly (string | number)[];

/** The places of all numbers in a value, as paths. */
function numbersIn(value: unknown, path: Place = []): Place[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, [...path, key]));
}

/** A copy with the number at a path replaced. */
export function replaced<T>(value: T, [key, ...rest]: Place, number: unknown): T {
  if (key === undefined) return number as T;
  const copy: unknown = Array.isArray(value) ? [...(value as unknown[])] : { ...value };
  const record = copy as Record<string | number, unknown>;
  record[key] = replaced(record[key], rest, number);
  return copy as T;
}

const absurdTable = fc.constantFrom<readonly TravelRow[]>(
  [],
  [{ wheelTravel: 0, shockStroke: 0 }],
  [
    { wheelTravel: 0, shockStroke: 0 },
    { wheelTravel: 0, shockStroke: 5 },
  ],
  [
    { wheelTravel: 0, shockStroke: 0 },
    { wheelTravel: 1e-300, shockStroke: 1e300 },
  ],
  [
    { wheelTravel: 10, shockStroke: 9 },
    { wheelTravel: 5, shockStroke: 3 },
  ],
);

const absurdTyre = fc.constantFrom(
  { code: '' },
  { code: 'a rubber ring' },
  { code: '999/999-99' },
  { diameter: NaN },
  { diameter: -600 },
  { circumference: Infinity },
);

const seldom = <T>(absurd: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
  fc.oneof({ weight: 9, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: absurd });

/** Bikes with up to four numbers, a table or a tyre made absurd, in places drawn at random. */
export const absurdBike: fc.Arbitrary<RandomBike> = fc
  .record({
    likely: softBike,
    wrongs: fc.array(
      fc.tuple(fc.nat(), fc.oneof(fc.constantFrom(...ABSURD), fc.double(), between(-2000, 2000))),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
    table: seldom(absurdTable),
    tyre: seldom(absurdTyre),
  })
  .map(({ likely, wrongs, table, tyre }) => {
    let drawn = likely;
    if (table !== null) drawn = replaced(drawn, ['bike', 'swingarm', 'travelTable'], table);
    if (tyre !== null) drawn = replaced(drawn, ['setup', 'rearTyre'], tyre);
    const places = numbersIn(drawn);
    for (const [place, number] of wrongs) drawn = replaced(drawn, places[place % places.length], number);
    return drawn;
  });
