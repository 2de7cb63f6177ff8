/** Tests of a change split among the adjusters that were turned. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import type { Bike } from '../parts/bike.ts';
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import { onceTurned } from '../adjusters/working-order.ts';
import { standBike } from '../riding/stand-bike.ts';
import { heightEffect } from './adjuster-effect.ts';
import { splitByAdjuster, type AdjusterSplit, type StoodSetup } from './split-by-adjuster.ts';

function stood(setup: Setup, bike: Bike = plainBike): StoodSetup {
  const stance = standBike(bike, setup, 'toppedOut');
  if (!stance.ok) throw new Error(stance.reason);
  return { bike, setup, stance };
}

function splits(changes: Partial<Setup>, bike: Bike = plainBike): AdjusterSplit[] {
  return splitByAdjuster(stood(plainSetup), stood({ ...plainSetup, ...changes }, bike), (asSet) => {
    const found = standBike(asSet.bike, asSet.setup, 'toppedOut');
    return found.ok ? found : null;
  });
}

function rakeOf(changes: Partial<Setup>, bike?: Bike): AdjusterSplit {
  const found = splits(changes, bike).find(({ key }) => key === 'rake');
  if (found === undefined) throw new Error('no rake');
  return found;
}

const total = ({ parts }: AdjusterSplit): number => parts.reduce((sum, { amount }) => sum + amount, 0);

const changes = fc.record(
  {
    shockLength: fc.double({ min: -8, max: 12, noNaN: true }),
    forkTubes: fc.double({ min: 0, max: 20, noNaN: true }),
    clampOffset: fc.double({ min: 25, max: 40, noNaN: true }),
    headAngleCupsDeg: fc.double({ min: -1, max: 1, noNaN: true }),
    frontTeeth: fc.integer({ min: 14, max: 17 }),
    rearTeeth: fc.integer({ min: 40, max: 50 }),
    axlePosition: fc.double({ min: 0, max: 20, noNaN: true }),
  },
  { requiredKeys: [] },
);

describe('a change split among adjusters', () => {
  it('gives an adjuster what its own effect shows, once its turn has come', () => {
    let checked = 0;
    fc.assert(
      fc.property(changes, (turned) => {
        const setup = { ...plainSetup, ...turned };
        const stand = (asked: Setup) => {
          const found = standBike(plainBike, asked, 'toppedOut');
          return found.ok ? found : null;
        };
        const seat = splits(turned).find(({ key }) => key === 'seatHeight');
        const shock = seat?.parts.find(({ cause }) => cause === 'shockLength');
        if (shock === undefined) return;
        const then = onceTurned('shockLength', plainSetup, setup);
        const [from, to] = [plainSetup.shockLength, setup.shockLength];
        const effect = heightEffect(adjusterOf('shockLength'), then, from, to, stand);
        expect(effect === null ? NaN : effect.after - effect.before).toBeCloseTo(shock.amount, 9);
        checked++;
      }),
    );
    expect(checked).toBeGreaterThan(20);
  });

  it('adds up for every reading, whatever was turned', () => {
    fc.assert(
      fc.property(changes, (turned) => {
        for (const split of splits(turned)) {
          expect(total(split)).toBeCloseTo(split.after - split.before, 9);
          expect(split.parts.map(({ cause }) => cause).toSorted()).toEqual(
            Object.keys(turned)
              .filter((key) => turned[key as keyof typeof turned] !== plainSetup[key as keyof Setup])
              .toSorted(),
          );
        }
      }),
    );
  });

  it('gives one adjuster all that it did alone', () => {
    const { before, after, parts } = rakeOf({ shockLength: 5 });
    expect(parts).toEqual([{ cause: 'shockLength', amount: after - before }]);
    expect(after).toBeLessThan(before);
  });

  it('gives each what it does when its turn comes in the order of the work, rear first', () => {
    const { parts } = rakeOf({ forkTubes: 12, shockLength: 5 });
    const alone = rakeOf({ shockLength: 5 });
    const both = rakeOf({ shockLength: 5, forkTubes: 12 });
    expect(parts.map(({ cause }) => cause)).toEqual(['shockLength', 'forkTubes']);
    expect(parts[0].amount).toBeCloseTo(alone.after - alone.before, 12);
    expect(parts[1].amount).toBeCloseTo(both.after - alone.after, 12);
  });

  it('shares out what does not stand in between by the mean over the orders that stand', () => {
    const turned = { shockLength: 5, forkTubes: 12 };
    const found = splitByAdjuster(stood(plainSetup), stood({ ...plainSetup, ...turned }), ({ setup }) => {
      // With the shock alone it does not stand; with the fork alone it does.
      const on = standBike(plainBike, setup, 'toppedOut');
      return setup.forkTubes === 12 && on.ok ? on : null;
    }).find(({ key }) => key === 'rake');
    const fork = rakeOf({ forkTubes: 12 });
    const amount = found?.parts.find(({ cause }) => cause === 'forkTubes')?.amount;
    expect(amount).toBeCloseTo(fork.after - fork.before, 12);
  });

  it('counts what was drawn anew as one cause, the bike', () => {
    const longer: Bike = { ...plainBike, fork: { ...plainBike.fork, length: plainBike.fork.length - 20 } };
    const { parts } = rakeOf({ shockLength: 5 }, longer);
    expect(parts.map(({ cause }) => cause)).toEqual(['bike', 'shockLength']);
    expect(rakeOf({}, { ...plainBike }).parts).toEqual([]);
  });

  it('has no parts where no order leads through bikes that stand', () => {
    const found = splitByAdjuster(
      stood(plainSetup),
      stood({ ...plainSetup, shockLength: 5, forkTubes: 12 }),
      () => null,
    );
    expect(found.length).toBeGreaterThan(5);
    for (const { parts } of found) expect(parts).toEqual([]);
  });
});
