/** Every reading of many described bikes, recomputed from the published description alone by other methods. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { readingsJson } from '../../src/commands/readings.ts';
import { openDocument } from '../../src/document/open-document.ts';

/** Both ways are good to about 1e-12 of a reading; roots are halved down to neighbouring numbers here. */
const TOLERANCE = 1e-9;

interface Spot {
  readonly x: number;
  readonly y: number;
}

type Tyre = { readonly code: string } | { readonly diameter: number } | { readonly circumference: number };

/** A bike file of which every number is written out. Lengths in mm, masses in kg. */
interface Described {
  readonly bike: {
    readonly frame: {
      readonly steeringHead: Spot;
      readonly axisAngleDeg: number;
      readonly headTubeLength: number;
      readonly countershaft: Spot;
      readonly sprungCentre: Spot;
      readonly sprungMass: number;
      readonly seat: Spot;
      readonly loadMark: Spot;
      readonly guideRadius: number | null;
    };
    readonly fork: { readonly length: number; readonly axleLead: number; readonly legAngleDeg: number };
    readonly swingarm: {
      readonly length: number;
      readonly toppedOutAngleDeg: number;
      readonly tablePitchDeg: number;
      readonly travelTable: readonly { readonly wheelTravel: number; readonly shockStroke: number }[];
    };
    readonly frontWheel: { readonly unsprungMass: number };
    readonly rearWheel: { readonly unsprungMass: number };
    readonly drive: { readonly chainPitch: number };
  };
  readonly setup: {
    readonly forkTubes: number;
    readonly forkExtenders: number;
    readonly shockLength: number;
    readonly frontTeeth: number;
    readonly rearTeeth: number;
    readonly axlePosition: number;
    readonly clampOffset: number;
    readonly headAngleCupsDeg: number;
    readonly frontTyre: Tyre;
    readonly rearTyre: Tyre;
    readonly frontTravelUsed: number;
    readonly rearTravelUsed: number;
    readonly riderMass: number;
    readonly riderHeight: number;
    readonly loadMass: number;
    readonly loadHeight: number;
  };
}

const rad = (deg: number): number => (deg * Math.PI) / 180;
const deg = (angle: number): number => (angle * 180) / Math.PI;
const turned = ({ x, y }: Spot, by: number): Spot => ({
  x: x * Math.cos(by) - y * Math.sin(by),
  y: x * Math.sin(by) + y * Math.cos(by),
});
const plus = (a: Spot, b: Spot, times = 1): Spot => ({ x: a.x + b.x * times, y: a.y + b.y * times });
const dot = (a: Spot, b: Spot): number => a.x * b.x + a.y * b.y;

/** Where a function changes its sign, by halving. */
function halved(of: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const rises = of(high) > 0;
  expect(of(low) > 0).not.toBe(rises);
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (of(middle) > 0 === rises) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Shock stroke at a wheel travel: piecewise cubic by Hermite's polynomials, straight outside. */
function stroke(table: Described['bike']['swingarm']['travelTable'], at: number): number {
  const h = table.slice(1).map((row, i) => row.wheelTravel - table[i].wheelTravel);
  const chord = table.slice(1).map((row, i) => (row.shockStroke - table[i].shockStroke) / h[i]);
  const last = table.length - 1;
  const end = (i: number, next: number): number =>
    ((2 * h[i] + h[next]) * chord[i] - h[i] * chord[next]) / (h[i] + h[next]);
  const slope = table.map((_, i) => {
    if (last === 1) return chord[0];
    if (i === 0) return end(0, 1);
    if (i === last) return end(last - 1, last - 2);
    const [a, b] = [2 * h[i] + h[i - 1], h[i] + 2 * h[i - 1]];
    return (a + b) / (a / chord[i - 1] + b / chord[i]);
  });
  if (at <= table[0].wheelTravel) return table[0].shockStroke + slope[0] * (at - table[0].wheelTravel);
  if (at >= table[last].wheelTravel)
    return table[last].shockStroke + slope[last] * (at - table[last].wheelTravel);
  const i = table.findIndex((_, j) => at < table[j + 1].wheelTravel);
  const t = (at - table[i].wheelTravel) / h[i];
  return (
    table[i].shockStroke * (2 * t ** 3 - 3 * t ** 2 + 1) +
    table[i + 1].shockStroke * (3 * t ** 2 - 2 * t ** 3) +
    h[i] * (slope[i] * (t ** 3 - 2 * t ** 2 + t) + slope[i + 1] * (t ** 3 - t ** 2))
  );
}

const radius = (tyre: Tyre): number => {
  if ('diameter' in tyre) return tyre.diameter / 2;
  if ('circumference' in tyre) return tyre.circumference / (2 * Math.PI);
  const [width, height, rimInches] = tyre.code.split(/[/-]/).map(Number);
  return (rimInches * 25.4) / 2 + (width * height) / 100;
};

/** The line over (+1) or under (−1) two circles: its outward normal, and how far out along that it lies. */
function touching(c: Spot, r: number, d: Spot, s: number, side: 1 | -1): { normal: Spot; out: number } {
  const toward = (angle: number): Spot => ({ x: Math.cos(angle), y: Math.sin(angle) });
  const square = Math.atan2(d.y - c.y, d.x - c.x) + (side * Math.PI) / 2;
  const further = (angle: number): number => dot(plus(c, d, -1), toward(angle)) + r - s;
  const normal = toward(halved(further, square - Math.PI / 2, square + Math.PI / 2));
  return { normal, out: dot(c, normal) + r };
}

/** Solves the equations, each row its coefficients and then its right side, by elimination with pivoting. */
function unknowns(rows: number[][]): number[] {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    const best = rows
      .slice(i)
      .reduce((most, row, j) => (Math.abs(row[i]) > Math.abs(rows[most][i]) ? i + j : most), i);
    [rows[i], rows[best]] = [rows[best], rows[i]];
    for (let j = 0; j < n; j++)
      if (j !== i) {
        const part = rows[j][i] / rows[i][i];
        rows[j] = rows[j].map((value, k) => value - part * rows[i][k]);
      }
  }
  return rows.map((row, i) => row[n] / row[i]);
}

/** Every reading in the file's units, and whether the chain bends over the guide. */
function recomputed(
  { bike, setup }: Described,
  asSet: boolean,
): { values: Record<string, number>; bent: boolean } {
  const { frame, fork, swingarm } = bike;
  const [frontUsed, rearUsed] = asSet ? [setup.frontTravelUsed, setup.rearTravelUsed] : [0, 0];
  const [frontRadius, rearRadius] = [radius(setup.frontTyre), radius(setup.rearTyre)];

  // Front end in frame coordinates: the cups tilt the axis about the middle of the head tube.
  const down = (lean: number): Spot => ({ x: Math.sin(lean), y: -Math.cos(lean) });
  const ahead = (lean: number): Spot => ({ x: Math.cos(lean), y: Math.sin(lean) });
  const lean = rad(frame.axisAngleDeg + setup.headAngleCupsDeg);
  const middle = plus(frame.steeringHead, down(rad(frame.axisAngleDeg)), frame.headTubeLength / 2);
  const head = plus(middle, down(lean), -frame.headTubeLength / 2);
  const legs = lean - rad(fork.legAngleDeg);
  const clamp = plus(head, ahead(lean), setup.clampOffset);
  const alongLegs = fork.length + setup.forkExtenders - setup.forkTubes - frontUsed;
  const frontAxle = plus(plus(clamp, down(legs), alongLegs), ahead(legs), fork.axleLead);

  // Rear end: a longer shock hangs where the table has a negative stroke; the axle itself rises by the travel used.
  const tilt = rad(swingarm.tablePitchDeg);
  const hangingTravel = halved((at) => stroke(swingarm.travelTable, at) + setup.shockLength, -500, 500);
  const risen = (length: number, from: number, rise: number): number =>
    halved((to) => length * (Math.sin(from) - Math.sin(to)) - rise, -Math.PI / 2, Math.PI / 2);
  const arm = swingarm.length + setup.axlePosition;
  const hanging = risen(swingarm.length, rad(swingarm.toppedOutAngleDeg) + tilt, hangingTravel);
  const armAngle = risen(arm, hanging, rearUsed) - tilt;
  const rearAxle = { x: -arm * Math.cos(armAngle), y: -arm * Math.sin(armAngle) };

  // The pitch at which both tyres touch one level ground.
  const lowest = (pitch: number): number =>
    turned(frontAxle, pitch).y - frontRadius - (turned(rearAxle, pitch).y - rearRadius);
  const level = -Math.atan2(frontAxle.y - rearAxle.y, frontAxle.x - rearAxle.x);
  const pitch = halved(lowest, level - 1.5, level + 1.5);
  const rearTurned = turned(rearAxle, pitch);
  const onGround = (spot: Spot): Spot =>
    plus(turned(spot, pitch), { x: -rearTurned.x, y: rearRadius - rearTurned.y });
  const [front, rear, pivot] = [onGround(frontAxle), onGround(rearAxle), onGround({ x: 0, y: 0 })];
  const [steering, shaft, seat] = [onGround(head), onGround(frame.countershaft), onGround(frame.seat)];

  // The axis followed down to the ground, and the patch's distance from the axis.
  const rake = lean + pitch;
  const trail = steering.x + steering.y * Math.tan(rake) - front.x;
  const normalTrail = dot(plus(steering, { x: front.x, y: 0 }, -1), ahead(rake));

  const rider = plus(seat, { x: 0, y: setup.riderHeight });
  const load = plus(onGround(frame.loadMark), { x: 0, y: setup.loadHeight });
  const masses: [number, Spot][] = [
    [frame.sprungMass, onGround(frame.sprungCentre)],
    [bike.frontWheel.unsprungMass, front],
    [bike.rearWheel.unsprungMass, rear],
    [setup.riderMass, rider],
    [setup.loadMass, load],
  ];
  const total = masses.reduce((sum, [mass]) => sum + mass, 0);
  const centre = masses.reduce((sum, [mass, at]) => plus(sum, at, mass / total), { x: 0, y: 0 });

  const [frontSprocket, rearSprocket] = [setup.frontTeeth, setup.rearTeeth].map(
    (teeth) => bike.drive.chainPitch / (2 * Math.sin(Math.PI / teeth)),
  );
  const top = touching(rear, rearSprocket, shaft, frontSprocket, 1);
  const bottom = touching(rear, rearSprocket, shaft, frontSprocket, -1);
  const gap = top.out - dot(pivot, top.normal) - (frame.guideRadius ?? 0);
  const bent = frame.guideRadius !== null && gap < 0;
  const tight = bent ? touching(rear, rearSprocket, pivot, frame.guideRadius, 1) : top;

  // Wheel and arm cut free, both without mass, thrust 1 at the patch, no change of the spring's force.
  // Unknown: load at the patch, chain pull, the arm's force on the wheel (x, y), the pivot's on the arm (x, y).
  const pull = { x: tight.normal.y, y: -tight.normal.x };
  const back = plus(rear, pivot, -1);
  const [extraLoad, tension] = unknowns([
    [0, pull.x, 1, 0, 0, 0, -1],
    [1, pull.y, 0, 1, 0, 0, 0],
    [0, -rearSprocket, 0, 0, 0, 0, -rearRadius],
    [0, 0, -1, 0, 1, 0, 0],
    [0, 0, 0, -1, 0, 1, 0],
    [0, 0, back.y, -back.x, 0, 0, 0],
  ]);
  const transfer = centre.y / front.x;
  const lever = tight.out - dot(pivot, tight.normal);

  return {
    bent,
    values: {
      rake: deg(rake),
      trail,
      normalTrail,
      wheelFlop: trail * Math.sin(rake) * Math.cos(rake),
      wheelbase: front.x,
      frontAxleHeight: front.y,
      swingarmAngle: deg(Math.atan2(pivot.y - rear.y, pivot.x - rear.x)),
      pivotHeight: pivot.y,
      rearAxleHeight: rear.y,
      seatHeight: seat.y,
      antiSquat: (100 * extraLoad) / transfer,
      antiSquatSwingarm: (100 * pivot.y) / pivot.x / transfer,
      antiSquatChain: (-100 * tension * lever) / pivot.x / transfer,
      squatRatio: transfer / extraLoad,
      squatAngle: deg(Math.atan(extraLoad)),
      loadTransferAngle: deg(Math.atan(transfer)),
      upperRunAngle: deg(Math.atan2(-top.normal.x, top.normal.y)),
      lowerRunAngle: deg(Math.atan2(bottom.normal.x, -bottom.normal.y)),
      chainSliderClearance: gap,
      finalDriveRatio: setup.rearTeeth / setup.frontTeeth,
      frontSprocketHeight: shaft.y,
      frontWeightShare: (100 * centre.x) / front.x,
      centreHeight: centre.y,
      centrePosition: centre.x,
      wheelieLimit: centre.x / centre.y,
      rearLiftLimit: (front.x - centre.x) / centre.y,
    },
  };
}

const from = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const spot = (left: number, right: number, low: number, high: number): fc.Arbitrary<Spot> =>
  fc.record({ x: from(left, right), y: from(low, high) });
const tyre = (code: string): fc.Arbitrary<Tyre> =>
  fc.oneof(
    fc.constant({ code }),
    fc.record({ diameter: from(560, 700) }),
    fc.record({ circumference: from(1800, 2100) }),
  );
/** Rows of which each next chord is at most 1.3 times as steep, so that no end slope needs its floor. */
const travelTable = fc
  .array(fc.record({ wide: from(10, 50), steeper: from(0.75, 1.3) }), { minLength: 1, maxLength: 7 })
  .map((steps) => {
    const rows = [{ wheelTravel: 0, shockStroke: 0 }];
    let chord = 0.45;
    for (const { wide, steeper } of steps) {
      const { wheelTravel, shockStroke } = rows[rows.length - 1];
      rows.push({ wheelTravel: wheelTravel + wide, shockStroke: shockStroke + wide * chord });
      chord *= steeper;
    }
    return rows;
  });

const described: fc.Arbitrary<Described> = fc.record({
  bike: fc.record({
    frame: fc.record({
      steeringHead: spot(600, 760, 380, 560),
      axisAngleDeg: from(18, 32),
      headTubeLength: from(100, 250),
      countershaft: spot(45, 110, -40, 50),
      sprungCentre: spot(250, 400, 100, 300),
      sprungMass: from(50, 250),
      seat: spot(-100, 100, 300, 500),
      loadMark: spot(-400, -100, 300, 500),
      guideRadius: fc.oneof(fc.constant(null), from(10, 60)),
    }),
    fork: fc.record({
      length: from(680, 900),
      travel: fc.constant(150),
      axleLead: from(-20, 40),
      legAngleDeg: fc.oneof(fc.constant(0), from(-6, 6)),
    }),
    swingarm: fc.record({
      length: from(480, 640),
      slot: fc.constant(40),
      toppedOutAngleDeg: from(0, 25),
      wheelTravel: fc.constant(150),
      travelTable,
      tablePitchDeg: from(-5, 5),
    }),
    frontWheel: fc.record({ unsprungMass: from(0, 25) }),
    rearWheel: fc.record({ unsprungMass: from(0, 35) }),
    drive: fc.record({ chainPitch: fc.constantFrom(12.7, 15.875) }),
  }),
  setup: fc.record({
    forkTubes: from(-10, 25),
    forkExtenders: from(0, 20),
    shockLength: from(-15, 20),
    frontTeeth: fc.integer({ min: 11, max: 20 }),
    rearTeeth: fc.integer({ min: 28, max: 60 }),
    axlePosition: from(0, 40),
    clampOffset: from(15, 60),
    headAngleCupsDeg: from(-2, 2),
    frontTyre: tyre('120/70-17'),
    rearTyre: tyre('190/55-17'),
    frontTravelUsed: from(0, 120),
    rearTravelUsed: from(0, 120),
    riderMass: from(0, 120),
    riderHeight: from(0, 400),
    loadMass: from(0, 60),
    loadHeight: from(0, 300),
  }),
});

interface Printed {
  readonly states: Record<string, Record<string, { readonly value: number | null }>>;
}

function printed(bike: Described): Printed {
  const opened = openDocument(JSON.stringify({ format: 'sidestance-bike', schema: 1, ...bike }));
  if (!opened.ok) throw new Error(opened.reason.sentence);
  const json = readingsJson(opened.value.document);
  if (!json.ok) throw new Error(json.reason);
  return JSON.parse(json.value) as Printed;
}

describe('every reading of a described bike', () => {
  it('is what halving, touching lines and bodies cut free give, with a free chain and with a bending one', () => {
    const seen = { free: 0, bent: 0 };
    fc.assert(
      fc.property(described, (bike) => {
        const { states } = printed(bike);
        for (const [state, asSet] of [
          ['toppedOut', false],
          ['travelByHand', true],
        ] as const) {
          const { values, bent } = recomputed(bike, asSet);
          seen[bent ? 'bent' : 'free']++;
          for (const [key, expected] of Object.entries(values)) {
            const found = states[state][key].value ?? NaN;
            const apart = Math.abs(found - expected) / Math.max(1, Math.abs(expected));
            expect(apart, `${key}, ${state}: ${found}, not ${expected}`).toBeLessThan(TOLERANCE);
          }
        }
      }),
      { numRuns: cases(500) },
    );
    expect(seen.free).toBeGreaterThan(cases(200));
    expect(seen.bent).toBeGreaterThan(cases(100));
  });
});
