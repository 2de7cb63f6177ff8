/** Tests of the splits that explain a change: each must add up to the change it explains. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { antiSquat } from '../readings/anti-squat.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import type { Stance } from '../standing/stance.ts';
import { why, type Split } from './why.ts';

function stood(changes: Partial<Setup>): Stance {
  const found = standBike(plainBike, { ...plainSetup, ...changes }, 'toppedOut');
  if (!found.ok) throw new Error(found.reason);
  return found;
}

/** What is left when the parts are taken from the change. */
function remainder({ before, after, parts }: Split<string>): number {
  return parts.reduce((rest, part) => rest - part.amount, after - before);
}

/** Rounding of a few additions of numbers of the size of a wheelbase. */
const ROUNDING = 9;

const changes = fc.record({
  shockLength: fc.double({ min: -8, max: 12, noNaN: true }),
  forkTubes: fc.double({ min: 0, max: 20, noNaN: true }),
  clampOffset: fc.double({ min: 25, max: 40, noNaN: true }),
  headAngleCupsDeg: fc.double({ min: -1, max: 1, noNaN: true }),
  frontTeeth: fc.integer({ min: 14, max: 17 }),
  rearTeeth: fc.integer({ min: 40, max: 50 }),
  axlePosition: fc.double({ min: 0, max: 20, noNaN: true }),
  rearTyre: fc.record({ diameter: fc.double({ min: 600, max: 660, noNaN: true }) }),
  frontTyre: fc.record({ diameter: fc.double({ min: 580, max: 620, noNaN: true }) }),
});

describe('why a change did what it did', () => {
  it('adds up for every reading, whatever adjusters were turned', () => {
    fc.assert(
      fc.property(changes, changes, (from, to) => {
        const explained = why(stood(from), stood(to));
        const splits: (Split<string> | null)[] = [
          explained.rake,
          explained.trail,
          explained.wheelbase,
          explained.swingarmAngle,
          explained.swingarm,
          explained.chain,
        ];
        for (const split of splits) {
          expect(split).not.toBeNull();
          if (split !== null) expect(remainder(split)).toBeCloseTo(0, ROUNDING);
        }
      }),
    );
  });

  it('takes before and after from the readings themselves', () => {
    const before = stood({});
    const after = stood({ shockLength: 5 });
    const { antiSquat: split, trail } = why(before, after);
    expect(split?.before).toBeCloseTo(Number(antiSquat.read(before)), ROUNDING);
    expect(split?.after).toBeCloseTo(Number(antiSquat.read(after)), ROUNDING);
    expect(trail.after).toBeLessThan(trail.before);
  });

  it('gives the whole of a raised rear’s rake to the frame’s pitch, and the trail’s change to rake', () => {
    const { pitch, rake, trail } = why(stood({}), stood({ shockLength: 5 }));
    expect(pitch).toBeLessThan(0);
    expect(rake.parts).toEqual([
      { cause: 'framePitch', amount: pitch },
      { cause: 'axisInFrame', amount: 0 },
    ]);
    expect(trail.parts.find((part) => part.cause === 'tyre')?.amount).toBe(0);
    expect(trail.parts.find((part) => part.cause === 'offset')?.amount).toBe(0);
  });

  it('gives a change of teeth to pull and lever, which work against each other', () => {
    const { chain } = why(stood({}), stood({ rearTeeth: plainSetup.rearTeeth + 3 }));
    const amount = (cause: string) => chain?.parts.find((part) => part.cause === cause)?.amount ?? NaN;
    expect(amount('pullPerThrust')).toBeGreaterThan(0);
    expect(amount('lever')).toBeLessThan(0);
    expect(amount('pivotAhead')).toBe(0);
    expect(amount('loadTransfer')).toBe(0);
  });

  it('splits a torque arm’s part by the torque arm’s own pull and lever, which with the swingarm’s make the whole', () => {
    const housing = { ...plainBike.housing, heldBy: 'torqueArm', armAnchor: { x: -15, y: -80 } } as const;
    const shaft: Bike = {
      ...plainBike,
      drive: { ...plainBike.drive, kind: 'shaft' },
      housing: { ...housing, boltRadius: 95, armLength: 545 },
    };
    const on = (changes: Partial<Setup>, bike = shaft): StandingBike => {
      const there = standBike(bike, { ...plainSetup, ...changes }, 'toppedOut');
      if (!there.ok) throw new Error(there.reason);
      return there;
    };
    const before = on({});
    const after = on({ shockLength: 6 });
    const explained = why(before, after);
    const { chain, swingarm, antiSquat: whole } = explained;
    expect(explained.torqueArm).toBe(true);
    if (chain === null || swingarm === null || whole === null) throw new Error('nothing is split');
    expect(remainder(chain)).toBeCloseTo(0, ROUNDING);
    expect(Math.abs(chain.after)).toBeGreaterThan(1);
    for (const at of ['before', 'after'] as const)
      expect(chain[at] + swingarm[at]).toBeCloseTo(whole[at], ROUNDING);
    // Teeth turn nothing in the housing.
    const teeth = why(before, on({ rearTeeth: plainSetup.rearTeeth + 4 })).chain;
    expect(teeth?.parts.every(({ amount }) => amount === 0)).toBe(true);
    const held = on({}, { ...shaft, housing: { ...shaft.housing, heldBy: 'swingarm' } });
    expect(why(held, before).chain).toBeNull();
    expect(why(held, held).chain).toBeNull();
  });

  it('has no anti-squat to explain for a bike without mass', () => {
    const light = {
      ...plainBike,
      frame: { ...plainBike.frame, sprungMass: 0 },
      frontWheel: { ...plainBike.frontWheel, unsprungMass: 0 },
      rearWheel: { ...plainBike.rearWheel, unsprungMass: 0 },
    };
    const empty = { ...plainSetup, riderMass: 0, loadMass: 0 };
    const before = standBike(light, empty, 'toppedOut');
    const after = standBike(light, { ...empty, shockLength: 5 }, 'toppedOut');
    if (!before.ok || !after.ok) throw new Error('the light bike does not stand');
    const explained = why(before, after);
    expect([explained.antiSquat, explained.chain]).toEqual([null, null]);
    expect(explained.rake.after).toBeLessThan(explained.rake.before);
  });
});
