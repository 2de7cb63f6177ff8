/** Tests of bikes on their wheels, and of each reason for not standing. */
import { onGround } from '../chassis/pose.ts';
import { describe, expect, it } from 'vitest';
import {
  plainBike,
  plainSetup,
  withFork,
  withFrame,
  withSwingarm,
} from '../../../tests/support/plain-bike.ts';
import { made, standing, TOPPED_OUT } from '../../../tests/support/standing.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { stance, type Travel } from './stance.ts';

describe('a bike on its wheels', () => {
  it('stands with its rear axle over the origin and both axles a tyre’s radius high', () => {
    const on = standing();
    expect(on.rearAxle).toEqual({ x: 0, y: on.machine.rearRadius });
    expect(on.frontAxle).toEqual({ x: on.pose.wheelbase, y: on.machine.frontRadius });
  });

  it('weighs what its parts, rider and load weigh', () => {
    const on = standing(plainBike, { ...plainSetup, riderMass: 70, loadMass: 12 });
    expect(on.mass).toBe(160 + 16 + 22 + 70 + 12);
  });

  it('has its centre where the moments of all masses put it', () => {
    // All masses but those of the wheels are zero; a wheel weighs at its axle.
    const bike = withFrame(plainBike, { sprungMass: 0 });
    const on = standing(bike, { ...plainSetup, riderMass: 0 });
    expect(on.centre.x).toBeCloseTo((16 * on.pose.wheelbase) / 38, 10);
    expect(on.centre.y).toBeCloseTo((16 * 299.9 + 22 * 320.4) / 38, 10);
  });

  it('has the rider above the seat mark, square to the ground, however the frame is turned', () => {
    const low = standing(plainBike, { ...plainSetup, riderHeight: 0 });
    const high = standing(plainBike, { ...plainSetup, riderHeight: 250 });
    expect(high.centre.x).toBeCloseTo(low.centre.x, 10);
    expect(high.centre.y - low.centre.y).toBeCloseTo((80 * 250) / low.mass, 10);
  });

  it('has the load above the load mark by its own height', () => {
    const loaded = { ...plainSetup, loadMass: 30, riderHeight: 150 };
    const low = standing(plainBike, { ...loaded, loadHeight: 0 });
    const high = standing(plainBike, { ...loaded, loadHeight: 120 });
    expect(high.centre.x).toBeCloseTo(low.centre.x, 10);
    expect(high.centre.y - low.centre.y).toBeCloseTo((30 * 120) / low.mass, 10);
    const none = standing(plainBike, { ...loaded, loadMass: 0 });
    const mark = onGround(low.pose, plainBike.frame.loadMark);
    expect(low.centre.x * low.mass - none.centre.x * none.mass).toBeCloseTo(30 * mark.x, 6);
    expect(low.centre.y * low.mass - none.centre.y * none.mass).toBeCloseTo(30 * mark.y, 6);
  });

  it('without any mass still stands, with its centre at the rear patch', () => {
    const light = withFrame(plainBike, { sprungMass: 0 });
    const bike = {
      ...light,
      frontWheel: { ...light.frontWheel, unsprungMass: 0 },
      rearWheel: { ...light.rearWheel, unsprungMass: 0 },
    };
    const on = standing(bike, { ...plainSetup, riderMass: 0 });
    expect([on.mass, on.centre.x, on.centre.y]).toEqual([0, 0, 0]);
  });

  it('does not bend its chain over a guide that lies behind both ends of the run', () => {
    // A countershaft behind the pivot: the run ends before it could reach the guide.
    const behind = standing(withFrame(plainBike, { guideRadius: 80, countershaft: { x: -60, y: -10 } }));
    expect(behind.upperRunLever).toBeLessThan(80);
    expect(behind.pullLever).toBe(behind.upperRunLever);
  });

  it('pulls its chain at the guide’s radius only while the free run would pass lower', () => {
    const free = standing();
    expect(free.pullLever).toBe(free.upperRunLever);
    const bent = standing(withFrame(plainBike, { guideRadius: free.upperRunLever + 5 }));
    expect(bent.pullLever).toBeCloseTo(free.upperRunLever + 5, 12);
    expect(bent.upperRunLever).toBe(free.upperRunLever);
    const unguided = standing(withFrame(plainBike, { guideRadius: null, countershaft: { x: 75, y: -80 } }));
    expect(unguided.pullLever).toBe(unguided.upperRunLever);
  });

  it('dips at the front with fork travel and at the rear with wheel travel', () => {
    expect(standing(plainBike, plainSetup, { front: 40, rear: 0 }).rake).toBeLessThan(standing().rake);
    expect(standing(plainBike, plainSetup, { front: 0, rear: 40 }).rake).toBeGreaterThan(standing().rake);
  });
});

describe('a machine does not stand', () => {
  const refusal = (bike: Bike, travel: Travel = TOPPED_OUT, setup: Partial<Setup> = {}) =>
    stance(made(bike, { ...plainSetup, ...setup }), travel);

  it('with travel that is not a number, below zero or more than there is', () => {
    expect(refusal(plainBike, { front: NaN, rear: 0 })).toEqual({ ok: false, reason: 'inputNotANumber' });
    expect(refusal(plainBike, { front: 0, rear: Infinity })).toEqual({
      ok: false,
      reason: 'inputNotANumber',
    });
    expect(refusal(plainBike, { front: 121, rear: 0 })).toEqual({
      ok: false,
      reason: 'forkTravelBeyond',
      end: 'front',
      found: 121,
      limit: 120,
    });
    expect(refusal(plainBike, { front: -1, rear: 0 })).toMatchObject({ reason: 'forkTravelBeyond' });
    expect(refusal(plainBike, { front: 0, rear: 131 })).toEqual({
      ok: false,
      reason: 'rearTravelBeyond',
      end: 'rear',
      found: 131,
      limit: 130,
    });
    expect(refusal(plainBike, { front: 0, rear: -1 })).toMatchObject({ reason: 'rearTravelBeyond' });
  });

  it('but does up to its last millimetre of travel', () => {
    expect(refusal(plainBike, { front: 120, rear: 130 }).ok).toBe(true);
  });

  it('on a fork with hardly anything left below the clamp', () => {
    expect(refusal(withFork(plainBike, { length: 60 }), { front: 10, rear: 0 })).toMatchObject({
      reason: 'forkTooShort',
      end: 'front',
      found: 45,
      limit: 50,
    });
  });

  it('when travel takes the arm over the top', () => {
    const long = withSwingarm(plainBike, { wheelTravel: 900 });
    expect(refusal(long, { front: 0, rear: 800 })).toMatchObject({
      reason: 'swingarmCannotReach',
      end: 'rear',
    });
  });

  it('when the axles are closer than the radii differ', () => {
    // The front axle laid on the rear one, on wheels of very different size.
    const axle = { x: -580 * Math.cos(0.165806), y: -580 * Math.sin(0.165806) };
    const bike = withFrame(withFork(plainBike, { length: 405 }), {
      axisAngleDeg: 0,
      steeringHead: { x: axle.x - 30, y: axle.y + 400 },
    });
    expect(refusal(bike, TOPPED_OUT, { frontTyre: { diameter: 500 } })).toMatchObject({
      reason: 'axlesTooClose',
    });
  });

  it('when the frame would be on its head', () => {
    expect(refusal(withFrame(plainBike, { steeringHead: { x: -1500, y: 530 } }))).toMatchObject({
      reason: 'upsideDown',
    });
  });

  it('when the steering axis lies almost flat', () => {
    const bike = withFrame(plainBike, { axisAngleDeg: 80, steeringHead: { x: 100, y: 100 } });
    expect(refusal(bike)).toMatchObject({ reason: 'axisFlat', limit: 1.3 });
  });

  it('when the pivot is not ahead of the rear patch', () => {
    const bike = withSwingarm(plainBike, { toppedOutAngleDeg: 86, length: 130, wheelTravel: 0 });
    // A longer fork tips the bike back, and its upright arm with it.
    expect(refusal(withFork(bike, { length: 900 }))).toMatchObject({ reason: 'pivotBehindPatch', limit: 10 });
  });

  it('when the sprockets overlap', () => {
    const bike = withFrame(plainBike, { countershaft: { x: -500, y: -60 } });
    expect(refusal(bike)).toMatchObject({ reason: 'sprocketsOverlap' });
  });
});
