/** Tests of the weigh-in on the page. */
import { describe, expect, it } from 'vitest';
import { scaleReadings, wholeOf, type Raising } from '../../../tests/support/scale-readings.ts';
import { STANDARD_GRAVITY } from '../../core/units/convert.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import type { WeighedBike } from '../../core/weighing/weighed-bike.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { succeed } from '../../core/numeric/result.ts';
import { newDocument } from '../../../tests/support/new-document.ts';
import type { BikeDocument } from '../../document/document.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Weighing } from './weighing.svelte.ts';
import { beginHistory } from '../../document/history.ts';

/** The pivot held off its place and wheels of unequal size, so that nothing falls out of the sums by chance. */
const [demo] = DEMO_BIKES;
const REAL: BikeDocument = newDocument(demo.bike, {
  ...demo.setup,
  frontTyre: { diameter: 640 },
  rearTyre: { diameter: 590 },
  pivotForward: 2,
  pivotUp: -3,
});
/** What the owner believed: far off, so that nothing of it may come through. */
const BELIEVED: Bike = {
  ...REAL.bike,
  frame: { ...REAL.bike.frame, sprungMass: 100, sprungCentre: { x: 40, y: 60 } },
};

const RAISINGS: readonly Raising[] = [
  { first: 'wheelsLevel', raised: 'rear', read: 'front', turnDeg: 12 },
  { first: 'wheelsLevel', raised: 'front', read: 'rear', turnDeg: 9 },
  { first: 'axlesLevel', raised: 'rear', read: 'rear', turnDeg: 10 },
  { first: 'axlesLevel', raised: 'front', read: 'front', turnDeg: 14 },
];

function held(document: BikeDocument, state: RideStateKey, fuelMass = document.setup.fuelMass) {
  const on = standBike(document.bike, { ...document.setup, fuelMass }, state);
  if (!on.ok) throw new Error(`The bike does not stand: ${on.reason}`);
  return on;
}

/** The weigh-in of the real bike, told to a page on which the bike has the believed mass and centre. */
function weighed(raising: Raising, state: RideStateKey = 'noRider', fuel?: number) {
  const session = new BikeSession(newDocument(BELIEVED, REAL.setup));
  const weighing = new Weighing({ session });
  weighing.raise(raising.raised);
  weighing.first = raising.first;
  weighing.read = raising.read;
  weighing.held = state;
  if (fuel !== undefined) weighing.typedFuel = fuel;
  Object.assign(weighing.figures, scaleReadings(held(REAL, state, fuel), raising));
  return { session, weighing };
}

function outcome({ outcome: found }: Weighing): WeighedBike {
  if (found === null || !found.ok) throw new Error(`no outcome: ${JSON.stringify(found)}`);
  return found;
}

describe('a weigh-in', () => {
  it.each(RAISINGS)('gives the mass and the centre back, %j', (raising) => {
    const { whole, sprungMass, sprungCentre } = outcome(weighed(raising).weighing);
    const real = wholeOf(held(REAL, 'noRider'));
    const { frame } = REAL.bike;
    for (const [found, expected] of [
      [whole.mass, real.mass],
      [whole.x, real.x],
      [whole.y, real.y],
      [sprungMass, frame.sprungMass],
      [sprungCentre.x, frame.sprungCentre.x],
      [sprungCentre.y, frame.sprungCentre.y],
    ])
      expect(Math.abs(found - expected)).toBeLessThan(1e-6);
  });

  it.each(['toppedOut', 'travelByHand'] as const)('gives them back of a bike held %s', (state) => {
    const { sprungMass, sprungCentre } = outcome(weighed(RAISINGS[0], state).weighing);
    const { frame } = REAL.bike;
    expect(Math.abs(sprungMass - frame.sprungMass)).toBeLessThan(1e-6);
    expect(Math.abs(sprungCentre.x - frame.sprungCentre.x)).toBeLessThan(1e-6);
    expect(Math.abs(sprungCentre.y - frame.sprungCentre.y)).toBeLessThan(1e-6);
  });

  it('takes the fuel that was in the tank away again, whatever the adjuster says', () => {
    const { weighing } = weighed(RAISINGS[0], 'noRider', 3.5);
    expect(weighing.fuel).toBe(3.5);
    expect(REAL.setup.fuelMass).not.toBe(3.5);
    expect(outcome(weighing).sprungMass).toBeCloseTo(REAL.bike.frame.sprungMass, 7);
    weighing.typedFuel = null;
    expect(outcome(weighing).sprungMass).toBeCloseTo(
      REAL.bike.frame.sprungMass + 3.5 - REAL.setup.fuelMass,
      7,
    );
  });

  it('used is one edit, after which the bike alone presses on its wheels as the scales said', () => {
    const { session, weighing } = weighed(RAISINGS[0]);
    const before = session.document;
    const { front, rear } = weighing.figures;
    expect(weighing.isUsed).toBe(false);
    weighing.use('Weighed');
    expect(session.history.past).toHaveLength(1);
    expect(session.undoLabel).toBe('Weighed');
    expect(weighing.isUsed).toBe(true);
    const on = standBike(session.document.bike, session.document.setup, 'noRider');
    if (!on.ok || on.equilibrium === undefined) throw new Error('no balance');
    expect(on.equilibrium.loads.frontLoad / STANDARD_GRAVITY).toBeCloseTo(front, 6);
    expect(on.equilibrium.loads.rearLoad / STANDARD_GRAVITY).toBeCloseTo(rear, 6);
    const { frame } = session.document.bike;
    expect(Math.abs(frame.sprungCentre.y - REAL.bike.frame.sprungCentre.y)).toBeLessThan(1e-6);
    session.undo();
    expect(session.document).toBe(before);
    expect(weighing.isUsed).toBe(false);
    expect(weighing.figures.front).toBe(front);
  });

  it('of another bike begins anew', () => {
    const { session, weighing } = weighed(RAISINGS[0]);
    weighing.typed.wheelbase = 1400;
    weighing.typedFuel = 1;
    session.open(beginHistory(REAL));
    expect(weighing.missing).toBe('front');
    expect(weighing.typed.wheelbase).toBeNull();
    expect(weighing.fuel).toBe(REAL.setup.fuelMass);
  });
});

describe('the uncertainty', () => {
  it('is that within which weighings repeated with such errors fall 19 times out of 20', () => {
    const { weighing } = weighed(RAISINGS[0]);
    weighing.scaleError = 0.6;
    weighing.lengthError = 3;
    const { errors, lengths } = weighing;
    if (errors === null || lengths === null) throw new Error('no uncertainty');
    const { mass, x, y } = outcome(weighing).whole;
    const figures = { ...weighing.figures };
    // A fixed stream of normal numbers: sums of twelve even ones (mulberry32).
    let state = 7;
    const even = (): number => {
      state = (state + 0x6d2b79f5) | 0;
      let t = Math.imul(state ^ (state >>> 15), 1 | state);
      t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
      return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
    };
    const shaken = (value: number, error: number): number =>
      value + (error / 2) * Array.from({ length: 12 }, even).reduce((a, b) => a + b, -6);
    // The travel is held, so that each try takes one turn.
    weighing.held = 'toppedOut';
    const tries = 1500;
    const within = { mass: 0, x: 0, y: 0 };
    for (let i = 0; i < tries; i++) {
      weighing.figures.front = shaken(figures.front, 0.6);
      weighing.figures.rear = shaken(figures.rear, 0.6);
      weighing.figures.raisedReading = shaken(figures.raisedReading, 0.6);
      weighing.figures.lift = shaken(figures.lift, 3);
      weighing.typed.wheelbase = shaken(lengths.wheelbase, 3);
      weighing.typed.frontRadius = shaken(lengths.frontRadius, 3);
      weighing.typed.rearRadius = shaken(lengths.rearRadius, 3);
      const { whole } = outcome(weighing);
      if (Math.abs(whole.mass - mass) < errors.mass) within.mass += 1;
      if (Math.abs(whole.x - x) < errors.x) within.x += 1;
      if (Math.abs(whole.y - y) < errors.y) within.y += 1;
    }
    // 95.45 % of a normal number lie within two standard deviations; 1500 tries scatter by half a per cent.
    for (const share of [within.mass / tries, within.x / tries, within.y / tries])
      expect(Math.abs(share - 0.9545)).toBeLessThan(0.018);
  });

  it('says when the height is not worth much, and when it is', () => {
    const { weighing } = weighed({ ...RAISINGS[0], turnDeg: 2 });
    expect(weighing.heightPoor).toBe(true);
    const better = weighed({ ...RAISINGS[0], turnDeg: 18 }).weighing;
    better.scaleError = 0.2;
    expect(better.heightPoor).toBe(false);
  });
});

describe('figures that cannot be', () => {
  it('are read one after the other', () => {
    const weighing = new Weighing({ session: new BikeSession(REAL) });
    const asked: (string | null)[] = [];
    for (const [key, value] of [
      ['front', 95],
      ['rear', 105],
      ['lift', 250],
      ['raisedReading', 104],
    ] as const) {
      asked.push(weighing.missing);
      expect(weighing.outcome).toBeNull();
      weighing.figures[key] = value;
    }
    expect(asked).toEqual(['front', 'rear', 'lift', 'raisedReading']);
    expect(weighing.missing).toBeNull();
    expect(weighing.outcome).toMatchObject({ ok: true });
  });

  it.each([
    [{ lift: 1500 }, 'liftImpossible'],
    [{ lift: 0.4 }, 'liftImpossible'],
    [{ raisedReading: 400 }, 'readingBeyondMass'],
    [{ front: -2 }, 'massNegative'],
    [{ front: 1, rear: 9, raisedReading: 1.05 }, 'unsprungTooHeavy'],
    [{ raisedReading: 40 }, 'centreHeightImpossible'],
    [{ raisedReading: 180 }, 'centreHeightImpossible'],
    [{ front: NaN }, 'inputNotANumber'],
  ] as const)('are refused with their reason, and nothing is saved: %j', (change, reason) => {
    const { session, weighing } = weighed(RAISINGS[0]);
    Object.assign(weighing.figures, change);
    expect(weighing.outcome).toMatchObject({ ok: false, reason });
    expect(weighing.errors).toBeNull();
    weighing.use('Weighed');
    expect(session.history.past).toHaveLength(0);
    for (const [key, value] of Object.entries(change))
      expect(weighing.figures[key as keyof typeof change]).toBe(value);
  });

  it('are refused with a tank that weighs more than the bike, and with a centre that is not between the axles', () => {
    const { weighing } = weighed(RAISINGS[0]);
    weighing.typedFuel = 900;
    expect(weighing.outcome).toMatchObject({ ok: false, reason: 'fuelTooHeavy', found: 900 });
    weighing.typedFuel = null;
    // On unlike wheels with level axles, next to nothing in front puts the centre behind the rear patch.
    weighing.first = 'axlesLevel';
    Object.assign(weighing.figures, { front: 0.001, rear: 220, lift: 300, raisedReading: 30 });
    expect(weighing.outcome).toMatchObject({ ok: false, reason: 'massBehindRearAxle' });
  });

  it('have a message where the bike on the page has another wheelbase or tyre than was measured', () => {
    const { weighing } = weighed(RAISINGS[0]);
    const { lengths } = weighing;
    if (lengths === null) throw new Error('no bike');
    weighing.typed.wheelbase = lengths.wheelbase + 1.5;
    expect(weighing.unlike).toEqual([]);
    weighing.typed.wheelbase = lengths.wheelbase + 12;
    weighing.typed.rearRadius = 280;
    expect(weighing.unlike.map(({ key }) => key)).toEqual(['wheelbase', 'rearRadius']);
    expect(weighing.lengths?.wheelbase).toBe(lengths.wheelbase + 12);
  });

  it('keep nothing from standing: without springs a bike held topped out is weighed too', () => {
    const { session, weighing } = weighed(RAISINGS[0], 'toppedOut');
    const { setup } = REAL;
    const springless = newDocument(BELIEVED, { ...setup, forkSpringRate: 0, shockSpringRate: 0 });
    session.commit(() => succeed(springless), 'No springs');
    expect(outcome(weighing).sprungMass).toBeCloseTo(REAL.bike.frame.sprungMass, 7);
    weighing.held = 'noRider';
    expect(weighing.outcome).toMatchObject({ ok: false });
    expect(weighing.lengths).not.toBeNull();
  });
});
