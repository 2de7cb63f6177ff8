/** Tests of what an adjuster does in the ride state shown. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { ADJUSTERS, adjusterOf, type NumberAdjuster } from '../adjusters/all-adjusters.ts';
import { doesApply } from '../adjusters/does-apply.ts';
import type { Setup } from '../adjusters/setup.ts';
import { adjusterRange } from '../standing/adjuster-range.ts';
import { standBike } from '../riding/stand-bike.ts';
import { RIDE_STATES, type RideStateKey } from '../riding/states/all-ride-states.ts';
import {
  heightBetween,
  heightEffect,
  readingEffect,
  stateToSeeIt,
  type StandWith,
} from './adjuster-effect.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { seatHeight } from '../readings/seat-height.ts';

const { bike, setup } = SPRUNG_ROAD;

const inState =
  (state: RideStateKey): StandWith =>
  (asked: Setup) => {
    const on = standBike(bike, asked, state);
    return on.ok ? on : null;
  };

describe('the height that an adjuster gives', () => {
  it('at the rear is the change of the reading of the seat', () => {
    for (const state of ['riderUp', 'toppedOut', 'accelerating'] as const) {
      const stand = inState(state);
      const found = heightEffect(adjusterOf('shockLength'), setup, 0, 6, stand);
      const [before, after] = [stand(setup), stand({ ...setup, shockLength: 6 })];
      if (before === null || after === null) throw new Error('The road bike stands in every state.');
      expect(found?.before).toBeCloseTo(Number(seatHeight.read(before)), 9);
      expect(found?.after).toBeCloseTo(Number(seatHeight.read(after)), 9);
      expect((found?.after ?? 0) - (found?.before ?? 0)).toBeGreaterThan(6);
    }
  });

  it('of all adjusters together is the change of the same place between both setups', () => {
    const stand = inState('riderUp');
    const found = heightEffect(adjusterOf('shockLength'), setup, 0, 6, stand);
    const to = { ...setup, shockLength: 6, forkTubes: setup.forkTubes + 5 };
    const [before, after] = [stand(setup), stand(to)];
    if (found === null || before === null || after === null) throw new Error('The road bike stands.');
    const all = heightBetween(found, setup, to, stand);
    expect(all?.before).toBeCloseTo(Number(seatHeight.read(before)), 9);
    expect(all?.after).toBeCloseTo(Number(seatHeight.read(after)), 9);
    expect(heightBetween(found, setup, to, () => null)).toBeNull();
  });

  it('goes the way the list of adjusters says, for each whose buttons say raise and lower', () => {
    const raising = ADJUSTERS.filter((each): each is NumberAdjuster => each.moves?.turnedAsHeight === true);
    let counted = 0;
    for (const { bike: each, setup: from } of SPRUNG_BIKES)
      for (const adjuster of raising.filter((one) => doesApply(one, each, from))) {
        const value = from[adjuster.key];
        const { step } = adjusterRange(adjuster, each, setup);
        const found = heightEffect(adjuster, from, value, value + step, (asked) => {
          const on = standBike(each, asked, 'riderUp');
          return on.ok ? on : null;
        });
        expect(Math.sign((found?.after ?? 0) - (found?.before ?? 0)), adjuster.key).toBe(
          adjuster.moves?.more === 'up' ? 1 : -1,
        );
        counted += 1;
      }
    expect(counted).toBeGreaterThan(6);
  });

  it('is none of an adjuster that moves no end', () => {
    expect(heightEffect(adjusterOf('clampOffset'), setup, 30, 32, inState('riderUp'))).toBeNull();
  });
});

describe('the reading that an adjuster changes', () => {
  it('is named by every adjuster that says no end, and is a reading there is', () => {
    for (const { key, moves, reading } of ADJUSTERS) {
      expect(moves === undefined, key).toBe(reading !== undefined);
      if (reading !== undefined) expect(READINGS.map((each) => each.key)).toContain(reading);
    }
  });

  it('changes by the difference of the readings themselves', () => {
    const stand = inState('riderUp');
    const found = readingEffect(adjusterOf('clampOffset'), setup, setup.clampOffset, 33, stand);
    const [before, after] = [stand(setup), stand({ ...setup, clampOffset: 33 })];
    if (found === null || before === null || after === null) throw new Error('The road bike stands.');
    expect(found.reading.key).toBe('trail');
    expect(found.before).toBe(metricReading(found.reading, before));
    expect(found.after).toBe(metricReading(found.reading, after));
    expect(found.after).toBeLessThan(found.before - 2);
  });

  it('changes in some ride state by a step, unless what the adjuster needs is zero', () => {
    const carrying = {
      ...setup,
      riderMass: 80,
      passengerMass: 60,
      loadMass: 10,
      dragForce: 200,
      braking: 0.5,
    };
    for (const adjuster of ADJUSTERS) {
      if (adjuster.holds !== 'number' && adjuster.holds !== 'wholeNumber') continue;
      if (adjuster.reading === undefined || !doesApply(adjuster, bike, carrying)) continue;
      const value = carrying[adjuster.key];
      const { most, step } = adjusterRange(adjuster, bike, carrying);
      const to = value + step <= most ? value + step : value - step;
      const moved = RIDE_STATES.some(({ key }) => {
        const found = readingEffect(adjuster, carrying, value, to, inState(key));
        return found !== null && Math.abs(found.after - found.before) > 1e-6;
      });
      expect(moved, adjuster.key).toBe(true);
    }
  });
});

describe('a state to see an adjuster in', () => {
  const seen = (key: NumberAdjuster['key'], state: RideStateKey) =>
    stateToSeeIt(adjusterOf(key), bike, setup, inState(state));

  it('is offered for springs and loads topped out: with the rider on board', () => {
    for (const key of ['forkSpringRate', 'shockPreload'] as const)
      expect(seen(key, 'toppedOut'), key).toBe('riderUp');
  });

  it('is the one that an adjuster of riding is about', () => {
    expect(seen('acceleration', 'riderUp')).toBe('accelerating');
    expect(seen('braking', 'riderUp')).toBe('braking');
    expect(seen('leanDeg', 'riderUp')).toBe('midCorner');
    expect(seen('rearTravelUsed', 'riderUp')).toBe('travelByHand');
  });

  it('is missing when what the adjuster needs is zero', () => {
    const still = { ...setup, dragForce: 0, passengerMass: 0, loadMass: 0 };
    for (const key of ['dragHeight', 'passengerHeight', 'loadHeight'] as const) {
      expect(stateToSeeIt(adjusterOf(key), bike, still, inState('riderUp')), key).toBe('none');
      const { needs } = adjusterOf(key);
      if (needs === undefined) throw new Error(`${key} needs nothing`);
      const given = { ...still, [needs]: 50 };
      expect(stateToSeeIt(adjusterOf(key), bike, given, inState('accelerating')), key).toBeNull();
    }
  });

  it('is not offered where the adjuster acts', () => {
    expect(seen('forkSpringRate', 'riderUp')).toBeNull();
    expect(seen('forkTubes', 'toppedOut')).toBeNull();
    expect(seen('acceleration', 'accelerating')).toBeNull();
  });
});
