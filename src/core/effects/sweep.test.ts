/** Tests of readings as curves. */
import { describe, expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { standAlong } from '../../../tests/support/stand-along.ts';
import { standing } from '../../../tests/support/standing.ts';
import { standBike } from '../riding/stand-bike.ts';
import { ADJUSTERS } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { READINGS } from '../readings/all-readings.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import { finalDriveRatio } from '../readings/final-drive-ratio.ts';
import { rake } from '../readings/rake.ts';
import { squatRatio } from '../readings/squat-ratio.ts';
import { degrees } from '../units/convert.ts';
import { curveAlong, sweepPlace, sweptTo, type SweepAsked, type SweepAxis } from './sweep.ts';
import { absent } from '../readings/absent.ts';

const RIDDEN = { front: 40, rear: 40 };

function asked(axis: SweepAxis, from: number, to: number, change: Partial<SweepAsked> = {}): SweepAsked {
  return { bike: plainBike, setup: plainSetup, travel: RIDDEN, axis, from, to, count: 27, ...change };
}

const rear: SweepAxis = { kind: 'travel', end: 'rear' };

describe('a sweep over travel', () => {
  it('is the bike stood at each place, the other end as it was', () => {
    const curve = curveAlong(asked(rear, 0, 130), antiSquat);
    expect(curve.x).toHaveLength(27);
    expect([curve.x[0], curve.x[26]]).toEqual([0, 130]);
    curve.x.forEach((x, i) =>
      expect(curve.y[i]).toBe(antiSquat.read(standing(plainBike, plainSetup, { front: 40, rear: x }))),
    );
    expect(curve).toMatchObject({ xUnit: 'mm', yUnit: '%', lowStop: null, highStop: null, key: 'antiSquat' });
  });

  it('of the front, and of both by a stated ratio, uses what is asked', () => {
    const front = standAlong(asked({ kind: 'travel', end: 'front' }, 0, 120));
    expect(front.stances.map((on) => on.travel)).toEqual(front.x.map((x) => ({ front: x, rear: 40 })));
    const both = standAlong(asked({ kind: 'travel', end: 'both', frontPerRear: 0.9 }, 0, 130));
    expect(both.stances.map((on) => on.travel)).toEqual(both.x.map((x) => ({ front: 0.9 * x, rear: x })));
  });

  it('is in the units of files: degrees for angles', () => {
    const curve = curveAlong(asked(rear, 10, 20, { count: 2 }), rake);
    expect(curve.y[0]).toBeCloseTo(
      degrees(standing(plainBike, plainSetup, { front: 40, rear: 10 }).rake),
      12,
    );
    expect(curve.yUnit).toBe('deg');
  });

  it('stops where there is no travel left, and says why on both sides', () => {
    const curve = curveAlong(asked(rear, -20, 150, { count: 18 }), antiSquat);
    expect([curve.x[0], curve.x[curve.x.length - 1]]).toEqual([0, 130]);
    expect(curve.lowStop).toMatchObject({ x: -10, noStand: { reason: 'rearTravelBeyond', found: -10 } });
    expect(curve.highStop).toMatchObject({ x: 140, noStand: { reason: 'rearTravelBeyond', limit: 130 } });
  });
});

describe('a sweep over an adjuster', () => {
  it.each(ADJUSTERS.flatMap((adjuster) => ('range' in adjuster ? [[adjuster.key, adjuster] as const] : [])))(
    'of %s takes every reading at every place, as the set bike has it',
    (key, adjuster) => {
      const needsLinks = !doesApply(adjuster, plainBike, plainSetup);
      const bike = needsLinks ? linkedBike : plainBike;
      const { least, most } = adjusterRange(adjuster, bike, plainSetup);
      const over = asked({ kind: 'adjuster', adjuster: adjuster.key }, least, most, { count: 5, bike });
      const swept = standAlong(over);
      expect(swept.x.length).toBeGreaterThan(2);
      expect(swept.xQuantity).toBe(adjuster.quantity);
      for (const reading of READINGS)
        curveAlong(over, reading).y.forEach((y, i) => {
          const on = standing(bike, { ...plainSetup, [key]: swept.x[i] }, RIDDEN);
          const value = reading.read(on);
          if (typeof value !== 'number' || typeof y !== 'number') expect(y).toBe(value);
          else expect(y).toBeCloseTo(reading.quantity === 'angle' ? degrees(value) : value, 10);
        });
    },
  );

  it('of teeth takes whole teeth, whatever count is asked', () => {
    const curve = curveAlong(
      asked({ kind: 'adjuster', adjuster: 'rearTeeth' }, 39.5, 48.2, { count: 201 }),
      finalDriveRatio,
    );
    expect(curve.x).toEqual([40, 41, 42, 43, 44, 45, 46, 47, 48]);
    expect(curve.y[5]).toBe(3);
    expect(curve).toMatchObject({ xUnit: '1', xQuantity: 'teeth' });
  });

  it('keeps the standing stretch next to the present value', () => {
    const curve = curveAlong(
      asked({ kind: 'adjuster', adjuster: 'shockLength' }, -900, 900, { count: 181 }),
      rake,
    );
    expect(curve.x).toContain(0);
    expect(curve.lowStop?.noStand.reason).toBe('swingarmCannotReach');
    expect(curve.highStop?.noStand.reason).toBeDefined();
    const steps = curve.x.slice(1).map((x, i) => x - curve.x[i]);
    for (const step of steps) expect(step).toBeCloseTo(10, 9);
  });
});

describe('a sweep over an adjuster in a ride state', () => {
  it('settles the bike anew at every place, as the state itself does', () => {
    const bike = linkedBike;
    const axis: SweepAxis = { kind: 'adjuster', adjuster: 'acceleration' };
    const swept = standAlong(
      asked(axis, 0, 0.6, { count: 7, bike, setup: sprungSetup, state: 'accelerating' }),
    );
    expect(swept.x).toHaveLength(7);
    swept.x.forEach((acceleration, i) => {
      const on = standBike(bike, { ...sprungSetup, acceleration }, 'accelerating');
      if (!on.ok) throw new Error(on.reason);
      expect(swept.stances[i].travel.rear).toBeCloseTo(on.travel.rear, 7);
      expect(swept.stances[i].equilibrium?.front.wheelLoad).toBeCloseTo(
        on.equilibrium?.front.wheelLoad ?? 0,
        5,
      );
    });
  });

  it('stops where the front wheel lifts, and says so', () => {
    const axis: SweepAxis = { kind: 'adjuster', adjuster: 'acceleration' };
    const setup = { ...sprungSetup, acceleration: 0.4 };
    const swept = standAlong(
      asked(axis, 0, 3, { count: 31, bike: linkedBike, setup, state: 'accelerating' }),
    );
    expect(swept.highStop?.noStand.reason).toBe('frontLifts');
  });

  it('over travel knows the springs where they are known', () => {
    const known = standAlong(asked(rear, 0, 100, { count: 3, bike: linkedBike, setup: sprungSetup }));
    expect(known.stances.map((on) => on.sprung !== undefined)).toEqual([true, true, true]);
    const unknown = standAlong(asked(rear, 0, 100, { count: 3 }));
    expect(unknown.stances.map((on) => on.sprung !== undefined)).toEqual([false, false, false]);
  });
});

describe('a range in which the bike stands, cannot stand, and stands again', () => {
  it('keeps the stretch of the present value, not the first', () => {
    // A head insert turned once round is the same bike again.
    const curve = curveAlong(
      asked({ kind: 'adjuster', adjuster: 'headAngleCupsDeg' }, -400, 400, { count: 801 }),
      rake,
    );
    expect(curve.x).toContain(0);
    expect(curve.x).not.toContain(-360);
    expect(curve.lowStop).not.toBeNull();
    expect(curve.highStop).not.toBeNull();
  });
});

describe('a sweep that finds nothing', () => {
  it('is empty, with the reasons at both ends', () => {
    const curve = curveAlong(asked(rear, 200, 300), antiSquat);
    expect(curve).toMatchObject({ x: [], y: [] });
    expect(curve.lowStop).toMatchObject({ x: 200, noStand: { reason: 'rearTravelBeyond' } });
    expect(curve.highStop).toMatchObject({ x: 300, noStand: { reason: 'rearTravelBeyond' } });
  });

  it('of a bike without a machine names its reason', () => {
    const broken = { ...plainSetup, rearTyre: { code: '' } };
    expect(standAlong(asked(rear, 0, 130, { setup: broken })).lowStop?.noStand.reason).toBe(
      'tyreCodeUnreadable',
    );
  });

  it('has no place at all in a range that is not a number', () => {
    expect(standAlong(asked(rear, NaN, 130))).toMatchObject({
      x: [],
      stances: [],
      lowStop: null,
      highStop: null,
    });
  });

  it('keeps the reason of a reading without a number in its place', () => {
    const level = { ...plainSetup, riderMass: 0 };
    const bike = {
      ...plainBike,
      frame: { ...plainBike.frame, sprungMass: 0 },
      frontWheel: { ...plainBike.frontWheel, unsprungMass: 0 },
      rearWheel: { ...plainBike.rearWheel, unsprungMass: 0 },
    };
    const curve = curveAlong(asked(rear, 0, 130, { bike, setup: level, count: 3 }), squatRatio);
    expect(curve.y).toEqual([absent('noMass'), absent('noMass'), absent('noMass')]);
  });
});

it('a place on the axis is the setup and travel that stand there, and is found again', () => {
  const axes: SweepAxis[] = [
    rear,
    { kind: 'travel', end: 'front' },
    { kind: 'travel', end: 'both', frontPerRear: 0.8 },
    { kind: 'adjuster', adjuster: 'forkTubes' },
  ];
  for (const axis of axes) {
    const at = sweptTo(axis, 12, plainSetup, RIDDEN);
    expect(sweepPlace(axis, at.setup, at.travel)).toBe(12);
  }
});
