/** Tests of making a machine from a bike and its setup. */
import { describe, expect, it } from 'vitest';
import {
  PLAIN_DRIVE,
  plainBike,
  plainSetup,
  withFork,
  withFrame,
  withSwingarm,
} from '../../../tests/support/plain-bike.ts';
import { linkedBike } from '../../../tests/support/linked-bike.ts';
import { made } from '../../../tests/support/standing.ts';
import type { Bike } from '../parts/bike.ts';
import type { Setup } from '../adjusters/setup.ts';
import { chainLoop } from '../drive/chain-loop.ts';
import { axleForChain } from './axle-in-slot.ts';
import { machine } from './machine.ts';

describe('a machine', () => {
  it('has the radii of its tyres and sprockets', () => {
    const parts = made();
    expect(parts.frontRadius).toBeCloseTo(299.9, 10);
    expect(parts.rearRadius).toBeCloseTo(320.4, 10);
    // Pitch diameters of 15 and 45 teeth at 25.4 mm are 122.17 and 364.12 (tandwiel.info), scaled by 0.625.
    expect(parts.frontSprocketRadius).toBeCloseTo((122.17 * 0.625) / 2, 2);
    expect(parts.rearSprocketRadius).toBeCloseTo((364.12 * 0.625) / 2, 2);
  });

  it('takes the tube above the clamp from the leg and adds the extender', () => {
    const parts = made(plainBike, { ...plainSetup, forkTubes: 12, forkExtenders: 7 });
    expect(parts.front.legLength).toBe(725 + 7 - 12);
  });
});

describe('a machine with a given chain', () => {
  it('has its axle where the chain puts it, whatever the axle adjuster says', () => {
    const chained = made(plainBike, { ...plainSetup, chainLinks: 114, axlePosition: 99 });
    const back = chained.rear.arm - chained.rear.slotFrontArm;
    expect(back).toBeGreaterThan(0);
    expect(back).toBeLessThan(30);
    const place = axleForChain(
      made(),
      chainLoop(15, 45, 15.875),
      { slot: 30, slack: 30, rearTravel: 0, rule: { halfLink: false } },
      114,
    );
    expect(place.ok && place.axlePosition).toBeCloseTo(back, 9);
  });

  it('has its axle further forward with more teeth', () => {
    const back = (rearTeeth: number) => {
      const { rear } = made(plainBike, { ...plainSetup, chainLinks: 114, rearTeeth });
      return rear.arm - rear.slotFrontArm;
    };
    expect(back(44)).toBeGreaterThan(back(45));
  });

  it('is refused with the chains that fit when this one does not', () => {
    expect(machine(plainBike, { ...plainSetup, chainLinks: 100 })).toMatchObject({
      ok: false,
      reason: 'chainTooShort',
      links: 100,
      nearest: [114, 116],
    });
  });

  it('ignores the chain on a shaft drive', () => {
    const shaft: Bike = { ...plainBike, drive: { ...PLAIN_DRIVE, kind: 'shaft' } };
    expect(machine(shaft, { ...plainSetup, chainLinks: 100 })).toMatchObject({ ok: true });
  });
});

describe('a machine with an eccentric pivot', () => {
  it('keeps every bolt of the frame where it was and moves only the pivot', () => {
    const moved = made(linkedBike, { ...plainSetup, pivotForward: 4, pivotUp: 3 });
    const { frame } = linkedBike;
    expect([moved.places.countershaft.x, moved.places.countershaft.y]).toEqual([
      frame.countershaft.x - 4,
      frame.countershaft.y - 3,
    ]);
    expect(moved.places.seat).toEqual({ x: frame.seat.x - 4, y: frame.seat.y - 3 });
    expect(moved.front.head.x - made(linkedBike).front.head.x).toBeCloseTo(-4, 12);
  });
});

describe('a machine is refused', () => {
  const refusal = (bike: Bike, setup: Partial<Setup> = {}) => machine(bike, { ...plainSetup, ...setup });

  it('with a tyre that has no size, saying which', () => {
    expect(refusal(plainBike, { frontTyre: { code: 'soft' } })).toEqual({
      ok: false,
      reason: 'tyreCodeUnreadable',
      end: 'front',
    });
    expect(refusal(plainBike, { rearTyre: { diameter: 20 } })).toEqual({
      ok: false,
      reason: 'tyreSizeImpossible',
      end: 'rear',
    });
  });

  it('with teeth no sprocket has, saying which and how many', () => {
    expect(refusal(plainBike, { frontTeeth: 5 })).toMatchObject({
      reason: 'teethImpossible',
      end: 'front',
      found: 5,
    });
    expect(refusal(plainBike, { rearTeeth: 44.5 })).toMatchObject({
      reason: 'teethImpossible',
      end: 'rear',
      found: 44.5,
    });
  });

  it('with a chain of no pitch, naming the nearer limit', () => {
    const chain = (chainPitch: number): Bike => ({ ...plainBike, drive: { ...PLAIN_DRIVE, chainPitch } });
    expect(refusal(chain(0))).toMatchObject({ reason: 'chainPitchImpossible', found: 0, limit: 4 });
    expect(refusal(chain(80))).toMatchObject({ reason: 'chainPitchImpossible', found: 80, limit: 40 });
  });

  it('with an axle outside its slot, saying how far back and how long the slot is', () => {
    expect(refusal(plainBike, { axlePosition: 31 })).toMatchObject({
      reason: 'axleOutOfSlot',
      found: 31,
      limit: 30,
    });
    expect(refusal(plainBike, { axlePosition: -1 })).toMatchObject({ reason: 'axleOutOfSlot', found: -1 });
    expect(refusal(plainBike, { axlePosition: 30 })).toMatchObject({ ok: true });
  });

  it('with a table that does not rise, or an arm that cannot hang so', () => {
    expect(refusal(withSwingarm(plainBike, { travelTable: [] }))).toMatchObject({
      reason: 'travelTableUnusable',
    });
    expect(refusal(plainBike, { shockLength: 400 })).toMatchObject({
      reason: 'swingarmCannotReach',
      end: 'rear',
      found: 400,
    });
  });

  it('with any mass below zero', () => {
    expect(refusal(withFrame(plainBike, { sprungMass: -1 }))).toMatchObject({
      reason: 'massNegative',
      found: -1,
    });
    expect(refusal(plainBike, { riderMass: -2 })).toMatchObject({ reason: 'massNegative', found: -2 });
    expect(refusal(plainBike, { loadMass: -3 })).toMatchObject({ reason: 'massNegative', found: -3 });
    const front = { ...plainBike, frontWheel: { ...plainBike.frontWheel, unsprungMass: -4 } };
    const rear = { ...plainBike, rearWheel: { ...plainBike.rearWheel, unsprungMass: -5 } };
    expect(refusal(front)).toMatchObject({ reason: 'massNegative', found: -4 });
    expect(refusal(rear)).toMatchObject({ reason: 'massNegative', found: -5 });
  });

  it('with anything that is not a number, wherever it stands', () => {
    for (const bike of [
      withFrame(plainBike, { seat: { x: NaN, y: 0 } }),
      withFrame(plainBike, { guideRadius: Infinity }),
      withFork(plainBike, { axleLead: NaN }),
      withFork(plainBike, { travel: Infinity }),
      withSwingarm(plainBike, { wheelTravel: NaN }),
      withFrame(plainBike, { sprungMass: NaN }),
    ])
      expect(refusal(bike)).toEqual({ ok: false, reason: 'inputNotANumber' });
    expect(refusal(plainBike, { frontTeeth: NaN })).toMatchObject({ reason: 'inputNotANumber' });
    expect(refusal(plainBike, { shockLength: NaN })).toMatchObject({ reason: 'inputNotANumber' });
  });

  it('with numbers far beyond any motorcycle, before they overflow', () => {
    expect(refusal(withFrame(plainBike, { steeringHead: { x: 1e160, y: 0 } }))).toEqual({
      ok: false,
      reason: 'inputTooLarge',
    });
  });
});
