/** Tests of what one step of every adjuster does. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { ADJUSTERS } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { RIDE_STATES } from '../riding/states/all-ride-states.ts';
import { standBike } from '../riding/stand-bike.ts';
import { aimOf, movedBeside, noticedMove, sortedByAim, whatMovesWhat } from './what-moves-what.ts';

const { bike, setup } = SPRUNG_ROAD;

describe('one step of every adjuster', () => {
  it('moves every reading as trying it does, to the last digit, in every ride state', () => {
    let checked = 0;
    for (const sprung of SPRUNG_BIKES)
      for (const { key: state } of RIDE_STATES)
        for (const { adjuster, from, to, moved } of whatMovesWhat(sprung.bike, sprung.setup, state)) {
          expect(from).toBe(sprung.setup[adjuster]);
          const before = standBike(sprung.bike, sprung.setup, state);
          const after = standBike(sprung.bike, { ...sprung.setup, [adjuster]: to }, state);
          if (!before.ok || !after.ok) throw new Error(adjuster);
          const tried = READINGS.flatMap((reading) => {
            const [was, is] = [metricReading(reading, before), metricReading(reading, after)];
            return typeof was === 'number' && typeof is === 'number'
              ? [{ reading: reading.key, before: was, after: is }]
              : [];
          });
          expect(moved).toEqual(tried);
          checked += moved.length;
        }
    expect(checked).toBeGreaterThan(10_000);
  });

  it('is tried up and down for every number that a mechanic sets on this bike, within its range', () => {
    const steps = whatMovesWhat(bike, { ...setup, shockMountShim: 0, forkTubes: 40 }, 'toppedOut');
    const set = ADJUSTERS.filter((each) => each.kind === 'part' && each.holds !== 'wholeNumberOrNone').filter(
      (each) => doesApply(each, bike, setup),
    );
    expect(new Set(steps.map(({ adjuster }) => adjuster))).toEqual(new Set(set.map(({ key }) => key)));
    const stepsOf = (key: string) =>
      steps.flatMap(({ adjuster, from, to }) =>
        adjuster === key ? [Math.sign(Number(to) - Number(from))] : [],
      );
    expect(stepsOf('shockLength')).toEqual([1, -1]);
    expect(stepsOf('shockMountShim')).toEqual([1]);
    expect(stepsOf('forkTubes')).toEqual([-1]);
    const tyres = steps.flatMap(({ adjuster, from, to }) => (adjuster === 'rearTyre' ? [[from, to]] : []));
    expect(tyres).toEqual([
      [setup.rearTyre, { code: '180/60-17' }],
      [setup.rearTyre, { code: '180/55-17' }],
    ]);
    const measured = whatMovesWhat(bike, { ...setup, rearTyre: { diameter: 630 } }, 'toppedOut');
    expect(measured.some(({ adjuster }) => adjuster === 'rearTyre')).toBe(false);
  });

  it('is none where the bike does not stand', () => {
    expect(whatMovesWhat(bike, { ...setup, forkSpringRate: 0 }, 'riderUp')).toEqual([]);
  });
});

describe('sorted for one reading', () => {
  const steps = whatMovesWhat(bike, setup, 'riderUp');

  it('the clamps come first for trail, the shock before the fork for the swingarm, and what leaves it last', () => {
    const order = (wished: string) => sortedByAim(steps, wished).map(({ adjuster }) => adjuster);
    expect(order('trail')[0]).toBe('clampOffset');
    expect(order('swingarmAngle').indexOf('shockLength')).toBeLessThan(
      order('swingarmAngle').indexOf('forkTubes'),
    );
    const parts = sortedByAim(steps, 'trail').map((step) => aimOf(step, 'trail'));
    const moving = parts.filter(({ move }) => move >= 0.01).map(({ part }) => part);
    expect(moving).toEqual([...moving].sort((a, b) => b - a));
    expect(parts.slice(moving.length).every(({ move }) => move < 0.01)).toBe(true);
    expect(moving.length).toBeLessThan(parts.length);
  });

  it('names beside it what a step moves most, and never the reading itself', () => {
    for (const step of steps) {
      const beside = movedBeside(step, 'trail', 3);
      expect(beside.length).toBeLessThanOrEqual(3);
      expect(beside.some(({ reading }) => reading === 'trail')).toBe(false);
      const sizes = beside.map(noticedMove);
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    }
    expect(steps.some((step) => movedBeside(step, 'trail', 3).length === 3)).toBe(true);
  });
});
