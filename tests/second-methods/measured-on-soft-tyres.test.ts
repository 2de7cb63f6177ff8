/** Tape on a bike whose tyres give: rows read off the standing bike find it again, its loaded and its free radii each where it belongs. */
import { describe, expect, it } from 'vitest';
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import type { MeasuredBike } from '../../src/core/measure/measured-bike.ts';
import type { StartingBike } from '../../src/core/measure/held/starting-bike.ts';
import type { MeasureKindKey } from '../../src/core/measure/kinds/all-kinds.ts';
import type { MeasureStateKey } from '../../src/core/measure/held/all-measure-states.ts';
import type { MeasurePartKey } from '../../src/core/measure/held/measure-parts.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';
import { onGround } from '../../src/core/chassis/pose.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { standBike, type StandingBike } from '../../src/core/riding/stand-bike.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { degrees, STANDARD_GRAVITY } from '../../src/core/units/convert.ts';
import { QUANTITIES } from '../../src/core/units/all-quantities.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { asked } from '../support/measured-sheet.ts';

const [ROAD] = DEMO_BIKES;
/** How high both wheels hang over the floor with the frame held, mm. */
const LIFTED = 60;
/** Nothing here measures how high the weight lies, so the loads with the rider on stay off by some tenths of a newton, mm. */
const CLOSE = 1e-3;

function onSoftTyres({ bike, setup }: StartingBike, measuredUnder = 0): StartingBike {
  return {
    bike: {
      ...bike,
      fork: { ...bike.fork, lowerClampDepth: 215 },
      frontWheel: { ...bike.frontWheel, tyreRate: 150, tyreMeasuredUnder: measuredUnder },
      rearWheel: { ...bike.rearWheel, tyreRate: 170, tyreMeasuredUnder: measuredUnder },
    },
    setup,
  };
}

function standIn({ bike, setup }: StartingBike, ride: RideStateKey): StandingBike {
  const stood = standBike(bike, setup, ride);
  if (!stood.ok) throw new Error(stood.reason);
  return stood;
}

/** Places on a standing bike, over the floor. */
function placesOn(
  on: StandingBike,
  up: number,
): Record<'rearAxle' | 'frontAxle' | 'pivot' | 'countershaft' | 'steeringHead' | 'seat', Point> {
  const raised = ({ x, y }: Point): Point => ({ x, y: y + up });
  return {
    rearAxle: raised(on.rearAxle),
    frontAxle: raised(on.frontAxle),
    pivot: raised(on.pose.pivot),
    countershaft: raised(on.countershaft),
    steeringHead: raised(onGround(on.pose, on.machine.front.head)),
    seat: raised(onGround(on.pose, on.machine.places.seat)),
  };
}

/** A sheet read off a bike as it stands: no formula of the fit is in it. */
function readOff(truth: StartingBike, withTread: boolean): readonly MeasureRow[] {
  const rows: MeasureRow[] = [];
  const add = (
    kind: MeasureKindKey,
    parts: readonly MeasurePartKey[],
    state: MeasureStateKey,
    figure: number,
  ): void => {
    rows.push({ ...asked(kind, parts, state), figure: figure.toFixed(10) });
  };
  const states = [
    ['onWheels', standIn(truth, 'noRider'), 0],
    ['riderOn', standIn(truth, 'riderUp'), 0],
    ['bothHanging', standIn(truth, 'toppedOut'), LIFTED],
  ] as const;
  for (const [state, on, up] of states) {
    const at = placesOn(on, up);
    const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
    add('axleHeight', ['frontWheel'], state, at.frontAxle.y);
    add('axleHeight', ['rearWheel'], state, at.rearAxle.y);
    add('horizontal', ['rearAxle', 'frontAxle'], state, at.frontAxle.x - at.rearAxle.x);
    add('distance', ['rearAxle', 'pivot'], state, apart(at.rearAxle, at.pivot));
    add('distance', ['pivot', 'countershaft'], state, apart(at.pivot, at.countershaft));
    add('distance', ['rearAxle', 'countershaft'], state, apart(at.rearAxle, at.countershaft));
    add('distance', ['pivot', 'steeringHead'], state, apart(at.pivot, at.steeringHead));
    add('distance', ['steeringHead', 'frontAxle'], state, apart(at.steeringHead, at.frontAxle));
    add('distance', ['pivot', 'seat'], state, apart(at.pivot, at.seat));
    for (const part of ['pivot', 'countershaft', 'steeringHead', 'seat'] as const)
      add('height', [part], state, at[part].y);
    add('angle', ['swingarm'], state, degrees(on.swingarmAngle));
    add('angle', ['forkLeg'], state, degrees(on.rake));
  }
  const [[, alone], [, ridden], [, hanging]] = states;
  expect(hanging.frontAxle.y - ridden.frontAxle.y).toBeGreaterThan(5);
  if (withTread) {
    add('circumference', ['frontWheel'], 'onWheels', 2 * Math.PI * hanging.frontAxle.y);
    add('circumference', ['rearWheel'], 'onWheels', 2 * Math.PI * hanging.rearAxle.y);
  }
  const { frontLoad, rearLoad } = alone.equilibrium?.loads ?? { frontLoad: NaN, rearLoad: NaN };
  add('weight', ['frontWheel'], 'onWheels', frontLoad / STANDARD_GRAVITY);
  add('weight', ['rearWheel'], 'onWheels', rearLoad / STANDARD_GRAVITY);
  return rows;
}

/** Begins anew from the bike it found, since loads and sag follow from the bike it starts with. */
function settled(start: StartingBike, rows: readonly MeasureRow[]): MeasuredBike {
  let from = start;
  let found: MeasuredBike | null = null;
  for (let round = 0; round < 5; round++) {
    const answer = measureBike({ start: from, sheet: { gaugeZeroed: true, rows }, wanted: null });
    if (!answer.ok) throw new Error(`row ${answer.row}: ${answer.reason}`);
    found = answer;
    from = { bike: answer.bike, setup: answer.setup };
  }
  if (found === null) throw new Error('no round');
  return found;
}

/** Tyres larger and a shorter arm than those of the bike that is measured. */
function away({ bike, setup }: StartingBike): StartingBike {
  return {
    bike: { ...bike, swingarm: { ...bike.swingarm, length: bike.swingarm.length - 6 } },
    setup: { ...setup, frontTyre: { diameter: 612 }, rearTyre: { diameter: 634 } },
  };
}

const COMPARED = [
  'tyreToClampGap',
  'rake',
  'trail',
  'normalTrail',
  'wheelbase',
  'frontAxleHeight',
  'rearAxleHeight',
  'pivotHeight',
  'seatHeight',
  'frontSprocketHeight',
  'swingarmAngle',
  'upperRunAngle',
  'squatAngle',
];

describe('a bike whose tyres give, measured by tape', () => {
  it.each([
    ['with a tape round the tread', true, 0],
    ['by axle heights alone', false, 0],
    ['from a bike whose tyres were measured under load', true, 90],
  ])(
    '%s, is found with every reading as it stands, and with its free tyre under the clamp',
    (_, withTread, under) => {
      const truth = onSoftTyres(ROAD);
      const empty = { ...truth.setup, riderMass: 0, passengerMass: 0, loadMass: 0 };
      const on = standIn({ ...truth, setup: empty }, 'noRider');
      const found = settled(away(onSoftTyres(ROAD, under)), readOff(truth, withTread));
      expect(found.agreement.chiSquare).toBeLessThan(CLOSE ** 2);
      for (const key of COMPARED) {
        const reading = READINGS.find((each) => each.key === key);
        const value = reading?.read(on);
        if (reading === undefined || typeof value !== 'number') throw new Error(key);
        const there = QUANTITIES[reading.quantity].fromCore(value);
        expect(Math.abs((found.readings[key].value ?? NaN) - there), key).toBeLessThan(CLOSE);
      }
      // Stood on its springs, the found bike sinks once, as the measured one does, and hanging it has its free tyres.
      const alone = { bike: found.bike, setup: { ...found.setup, riderMass: 0 } };
      for (const ride of ['noRider', 'toppedOut'] as const) {
        const [here, there] = [standIn(alone, ride), standIn(truth, ride)];
        expect(Math.abs(here.frontAxle.y - there.frontAxle.y), ride).toBeLessThan(CLOSE);
        expect(Math.abs(here.rearAxle.y - there.rearAxle.y), ride).toBeLessThan(CLOSE);
      }
    },
  );
});
