/** Tests of the grips: they follow the hand along their own line, in the adjuster's steps and within its range. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { standing } from '../../../tests/support/standing.ts';
import type { Setup } from '../adjusters/setup.ts';
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { gripPlace, GRIPS, pulledAdjuster, type GripKey } from './grips.ts';

const TRAVEL = { front: 40, rear: 40 };
const before = standing(plainBike, plainSetup, TRAVEL);
const pulled = (key: GripKey, x: number, y: number) =>
  pulledAdjuster(plainBike, plainSetup, before, key, { x, y }, (setup) => standing(plainBike, setup, TRAVEL));

const range = (key: GripKey) => adjusterRange(adjusterOf(key), plainBike, plainSetup);

describe('every grip', () => {
  it.each(GRIPS.map((grip) => grip.key))(
    '%s leaves its adjuster alone when it is not pulled, or pulled square to its line',
    (key) => {
      expect(pulled(key, 0, 0)).toBe(plainSetup[key]);
      if (key !== 'axlePosition') expect(pulled(key, 50, 0)).toBe(plainSetup[key]);
    },
  );

  it.each(GRIPS.map((grip) => grip.key))(
    '%s gives whole steps within the adjuster’s range, however far it is pulled',
    (key) => {
      const { least, most, step } = range(key);
      for (const far of [-1e4, -37.3, -3.2, 4.1, 22.9, 1e4]) {
        const value = pulled(key, far, -far);
        expect(value).toBeGreaterThanOrEqual(least);
        expect(value).toBeLessThanOrEqual(most);
        const steps = value / step;
        expect(steps).toBeCloseTo(Math.round(steps), 6);
      }
    },
  );
});

describe('the top clamp', () => {
  it('goes the way of the hand: pulled 15 mm down, the front stands within a step of 15 mm lower', () => {
    const forkTubes = pulled('forkTubes', 0, -15);
    expect(forkTubes).toBeGreaterThan(plainSetup.forkTubes);
    const setup = { ...plainSetup, forkTubes };
    const rise =
      gripPlace(standing(plainBike, setup, TRAVEL), 'forkTubes').y - gripPlace(before, 'forkTubes').y;
    expect(Math.abs(rise + 15)).toBeLessThan(range('forkTubes').step);
  });

  it('goes up with less tube above it', () => {
    expect(pulled('forkTubes', 0, 3)).toBeLessThan(plainSetup.forkTubes);
  });
});

describe('the axle', () => {
  it('moves back in its slot when pulled back along the arm', () => {
    const { swingarmAngle } = before;
    expect(pulled('axlePosition', -12 * Math.cos(swingarmAngle), -12 * Math.sin(swingarmAngle))).toBe(12);
    // Square to the arm, a pull of any length moves nothing.
    expect(pulled('axlePosition', -80 * Math.sin(swingarmAngle), 80 * Math.cos(swingarmAngle))).toBe(0);
    expect(pulled('axlePosition', 80 * Math.sin(swingarmAngle), -80 * Math.cos(swingarmAngle))).toBe(0);
  });

  it('is drawn on the rear axle', () => {
    expect(gripPlace(before, 'axlePosition')).toEqual({ x: 0, y: before.rearAxle.y });
  });
});

describe('the tail', () => {
  it('follows the hand: after a pull of 15 mm up, the tail stands within a step of 15 mm higher', () => {
    const shockLength = pulled('shockLength', 0, 15);
    expect(shockLength).toBeGreaterThan(0);
    const setup = { ...plainSetup, shockLength };
    const rise =
      gripPlace(standing(plainBike, setup, TRAVEL), 'shockLength').y - gripPlace(before, 'shockLength').y;
    // Half a step of the shock, times about three at the tail, and what the curve bends.
    expect(Math.abs(rise - 15)).toBeLessThan(2 * range('shockLength').step);
  });

  it('goes down with a shorter shock', () => {
    expect(pulled('shockLength', 0, -15)).toBeLessThan(0);
  });
});

it('an end that sinks as it is raised follows the hand too, by more of the adjuster', () => {
  // As on springs: each mm of shock costs half a mm of travel.
  const sinking = (setup: Setup) =>
    standing(plainBike, setup, { front: 40, rear: 40 + (setup.shockLength - plainSetup.shockLength) / 2 });
  const pull = { x: 0, y: 12 };
  const shockLength = pulledAdjuster(plainBike, plainSetup, before, 'shockLength', pull, sinking);
  const rise =
    gripPlace(sinking({ ...plainSetup, shockLength }), 'shockLength').y - gripPlace(before, 'shockLength').y;
  expect(Math.abs(rise - 12)).toBeLessThan(2 * range('shockLength').step);
  expect(shockLength).toBeGreaterThan(pulled('shockLength', 0, 12));
});

it('a bike that does not stand with the adjuster moved on leaves the grip where it is', () => {
  expect(pulledAdjuster(plainBike, plainSetup, before, 'shockLength', { x: 0, y: 9 }, () => null)).toBe(
    plainSetup.shockLength,
  );
});

it.each(GRIPS.map(({ key }) => key))(
  '%s spreads a short range over the reach asked for, and no less',
  (key) => {
    const { least, most, step } = range(key);
    const reach = 750;
    const at = (part: number) => {
      const pull = key === 'axlePosition' ? { x: -part * reach, y: 0 } : { x: 0, y: part * reach };
      const stand = (setup: Setup) => standing(plainBike, setup, TRAVEL);
      return pulledAdjuster(plainBike, plainSetup, before, key, pull, stand, reach);
    };
    // A hundredth of the reach, 1.5 px of 150, gives a hundredth of the range.
    expect(Math.abs(at(0.01) - plainSetup[key])).toBeLessThanOrEqual((most - least) / 100 + step);
    expect([at(1), at(-1)].sort((a, b) => a - b)).toEqual([least, most]);
  },
);
