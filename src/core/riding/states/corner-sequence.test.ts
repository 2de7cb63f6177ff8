/** Tests of the corner sequence from braking to the exit. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../../tests/support/cases.ts';
import { reached } from '../../../../tests/support/plain-springs.ts';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../../tests/support/sprung-bikes.ts';
import { radians } from '../../units/convert.ts';
import { machine } from '../../standing/machine.ts';
import { forcesIn } from '../../../../tests/support/forces-in.ts';
import { loadCase } from './all-ride-states.ts';
import { CORNER_PLACES, cornerSequenceCase } from './corner-sequence.ts';
import { standBike, standRide } from '../stand-bike.ts';

const road = SPRUNG_ROAD;
const setup = { ...road.setup, leanDeg: 42, cornerAcceleration: 0.1, dragForce: 120 };

describe('the corner sequence', () => {
  it.each(CORNER_PLACES)(
    'at $part is the ride state $state itself, with the same rest',
    ({ part, state }) => {
      expect(cornerSequenceCase(part, setup)).toEqual(loadCase(state, setup));
      for (const { bike, setup: asSet } of SPRUNG_BIKES) {
        const made = reached(machine(bike, asSet));
        expect(reached(standRide(made, cornerSequenceCase(part, asSet))).travel).toEqual(
          reached(standBike(bike, asSet, state)).travel,
        );
      }
    },
  );

  it('goes evenly from the brake to the closed throttle, into the corner, and from there to the gas', () => {
    const off = forcesIn(cornerSequenceCase(0.125, setup));
    expect(off?.acceleration).toBeCloseTo(-(setup.braking + setup.engineDeceleration) / 2, 12);
    expect(off?.engineBraking).toBeCloseTo(setup.engineDeceleration / 2, 12);
    expect(off?.slowedByDrag).toBe(0.5);
    const in4 = forcesIn(cornerSequenceCase(0.375, setup));
    expect(in4?.lean).toBeCloseTo(radians(21), 12);
    expect(in4?.acceleration).toBeCloseTo((-setup.engineDeceleration + 0.1) / 2, 12);
    expect(in4?.frontBrakeShare).toBe(setup.brakeFrontShare / 100);
    expect(in4?.drag).toEqual({ force: 120, height: setup.dragHeight });
    const out = forcesIn(cornerSequenceCase(0.9, setup));
    expect(out?.lean).toBeCloseTo(radians(42 * 0.2), 12);
    expect(out?.acceleration).toBeCloseTo(0.1 + (setup.acceleration - 0.1) * 0.8, 12);
  });

  it('does not jump anywhere: neighbouring places have neighbouring forces', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.999, noNaN: true }), (part) => {
        const here = forcesIn(cornerSequenceCase(part, setup));
        const next = forcesIn(cornerSequenceCase(part + 0.001, setup));
        if (here === null || next === null)
          throw new Error('every place of the corner sequence is a balance');
        expect(Math.abs(next.acceleration - here.acceleration)).toBeLessThan(0.003);
        expect(Math.abs(next.lean - here.lean)).toBeLessThan(0.003);
      }),
    );
  });

  it('says so where the throttle is both open and closed in the corner, all the way there and from there', () => {
    const both = { ...setup, cornerEngineDeceleration: 0.1 };
    for (const part of [0.3, 0.5, 0.6])
      expect(standRide(reached(machine(road.bike, both)), cornerSequenceCase(part, both))).toMatchObject({
        reason: 'throttleOpenAndClosed',
      });
    expect(standBike(road.bike, { ...setup, cornerBraking: 0.1 }, 'midCorner')).toMatchObject({
      reason: 'throttleOpenAndClosed',
    });
  });

  it('begins at 0, ends at 1, and is carried by the springs at every place', () => {
    expect(CORNER_PLACES[0].part).toBe(0);
    expect(CORNER_PLACES[CORNER_PLACES.length - 1].part).toBe(1);
    for (const { state } of CORNER_PLACES) expect(loadCase(state, setup).kind).toBe('equilibrium');
  });

  it('ends at its ends, whatever is asked beyond them', () => {
    expect(cornerSequenceCase(-1, setup)).toEqual(loadCase('braking', setup));
    expect(cornerSequenceCase(7, setup)).toEqual(loadCase('accelerating', setup));
  });
});
