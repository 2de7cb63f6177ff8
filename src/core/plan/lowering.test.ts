/** Tests of the ways to bring a seat down, against every step tried one by one. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { adjusterOf } from '../adjusters/all-adjusters.ts';
import type { Setup } from '../adjusters/setup.ts';
import { rake } from '../readings/rake.ts';
import { seatHeight } from '../readings/seat-height.ts';
import { trail } from '../readings/trail.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { waysToLower, type Lowering } from './lowering.ts';

const { bike, setup } = SPRUNG_ROAD;

function stand(asked: Setup): StandingBike {
  const on = standBike(bike, asked, 'riderUp');
  if (!on.ok) throw new Error(on.reason);
  return on;
}

const before = stand(setup);
const asSet = ({ turned }: Lowering): Setup => ({
  ...setup,
  ...Object.fromEntries(turned.map(({ adjuster, to }) => [adjuster, to])),
});
const dropOf = (asked: Setup): number =>
  Number(seatHeight.read(before)) - Number(seatHeight.read(stand(asked)));
const trailOf = (on: StandingBike): number => Number(trail.read(on));

function way(key: Lowering['key'], drop: number): Lowering {
  const found = waysToLower(bike, setup, drop).find((each) => each.key === key);
  if (found === undefined) throw new Error(`no way ${key}`);
  return found;
}

describe('a seat brought down', () => {
  it('comes down by the figure shown, with the step nearest to what is wanted', () => {
    for (const wanted of [5, 11, 20]) {
      const found = way('rearAlone', wanted);
      expect(found.drop).toBeCloseTo(dropOf(asSet(found)), 9);
      expect(found.reached).toBe(true);
      const { step } = adjusterRange(adjusterOf('shockLength'), bike, setup);
      const [{ to }] = found.turned;
      for (const other of [to - step, to + step])
        expect(Math.abs(dropOf({ ...setup, shockLength: other }) - wanted)).toBeGreaterThanOrEqual(
          Math.abs(found.drop - wanted),
        );
    }
  });

  it('costs trail at the rear alone, and next to none at both ends', () => {
    const alone = way('rearAlone', 20);
    const both = way('bothEnds', 20);
    expect(trailOf(stand(asSet(alone)))).toBeGreaterThan(trailOf(before) + 2);
    const kept = Math.abs(trailOf(stand(asSet(both))) - trailOf(before));
    expect(kept).toBeLessThan(0.5);
    // No other place of the fork tubes, each with its own nearest shock, keeps it better.
    const forkTubes = asSet(both).forkTubes;
    const { step } = adjusterRange(adjusterOf('forkTubes'), bike, setup);
    for (const tubes of [forkTubes - step, forkTubes + step]) {
      const lengths = Array.from({ length: 161 }, (_, i) => asSet(both).shockLength + (i - 80) * 0.5);
      const nearest = lengths.reduce((a, b) =>
        Math.abs(dropOf({ ...setup, forkTubes: tubes, shockLength: b }) - 20) <
        Math.abs(dropOf({ ...setup, forkTubes: tubes, shockLength: a }) - 20)
          ? b
          : a,
      );
      const on = stand({ ...setup, forkTubes: tubes, shockLength: nearest });
      expect(Math.abs(trailOf(on) - trailOf(before))).toBeGreaterThanOrEqual(kept - 1e-9);
    }
  });

  it('names every cost as the readings have it, in its ride state', () => {
    const { costs, ...found } = way('bothEnds', 15);
    const after = stand(asSet({ costs, ...found }));
    expect(costs.find(({ reading }) => reading === 'rake')?.after).toBeCloseTo(
      (Number(rake.read(after)) * 180) / Math.PI,
      9,
    );
    const gas = standBike(bike, asSet({ costs, ...found }), 'accelerating');
    expect(gas.ok).toBe(true);
    expect(costs.find(({ reading }) => reading === 'antiSquat')?.state).toBe('accelerating');
  });

  it('goes as far as its adjusters do, and says that it falls short', () => {
    const far = way('preload', 400);
    expect(far.reached).toBe(false);
    expect(far.turned).toEqual([{ adjuster: 'shockPreload', from: setup.shockPreload, to: 0 }]);
  });

  it('has no way where nothing is to come down, or the bike does not stand', () => {
    expect(waysToLower(bike, setup, 0)).toEqual([]);
    expect(waysToLower(bike, setup, NaN)).toEqual([]);
    expect(waysToLower(bike, { ...setup, shockSpringRate: 0 }, 10)).toEqual([]);
  });
});
