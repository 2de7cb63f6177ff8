/** Tests of the table of ride states. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { reached } from '../../../tests/support/plain-springs.ts';
import { stanceWith } from '../../../tests/support/standing.ts';
import { SPRUNG_BIKES, SPRUNG_ROAD } from '../../../tests/support/sprung-bikes.ts';
import { rake } from '../readings/rake.ts';
import { trail } from '../readings/trail.ts';
import { RIDE_STATES } from '../riding/states/all-ride-states.ts';
import { standBike } from '../riding/stand-bike.ts';
import { degrees, STANDARD_GRAVITY } from '../units/convert.ts';
import { rideFigures, rideTable } from './ride-table.ts';
import { absent } from '../readings/absent.ts';

describe('the table of ride states', () => {
  it('has the bike of each state, as it stands when it is read alone', () => {
    for (const { bike, setup } of SPRUNG_BIKES)
      for (const { state, found } of rideTable(bike, setup)) {
        const alone = reached(standBike(bike, setup, state));
        const figures = rideFigures(reached(found));
        expect(reached(found).travel).toEqual(alone.travel);
        expect(figures.rake).toBe(degrees(rake.read(alone) as number));
        expect(figures.trail).toBe(trail.read(alone));
        expect(figures.frontRest).toBe(alone.equilibrium?.front.rest ?? null);
        expect(figures.rearLeft).toBeCloseTo((alone.sprung?.most.rear ?? NaN) - alone.travel.rear, 9);
      }
  });

  it('carries the whole weight on both wheels in every state that is a balance, and has no loads in the others', () => {
    for (const { bike, setup } of SPRUNG_BIKES)
      for (const { found } of rideTable(bike, setup)) {
        const on = reached(found);
        const { frontLoad, rearLoad, frontShare } = rideFigures(on);
        if (on.equilibrium === undefined) {
          expect([frontLoad, rearLoad, frontShare]).toEqual([null, null, null]);
          continue;
        }
        const { mass } = on.equilibrium.stance;
        expect((frontLoad ?? NaN) + (rearLoad ?? NaN)).toBeCloseTo(mass * STANDARD_GRAVITY, 6);
        expect(frontShare).toBeCloseTo((100 * (frontLoad ?? NaN)) / (mass * STANDARD_GRAVITY), 9);
      }
  });

  it('keeps the other rows when one does not settle', () => {
    const { bike, setup } = SPRUNG_ROAD;
    const rows = rideTable(bike, { ...setup, acceleration: 1.5 });
    const bad = rows.filter(({ found }) => !found.ok);
    expect(bad.map(({ state, found }) => [state, found.ok ? '' : found.reason])).toEqual([
      ['accelerating', 'frontLifts'],
    ]);
  });

  it('without springs has the two rows that need none', () => {
    const rows = rideTable(plainBike, plainSetup);
    expect(rows.map(({ state }) => state)).toEqual(RIDE_STATES.map(({ key }) => key));
    expect(rows.filter(({ found }) => found.ok).map(({ state }) => state)).toEqual([
      'toppedOut',
      'travelByHand',
    ]);
    const asSet = rideFigures(reached(rows[7].found));
    expect(asSet.frontLeft).toBe(80);
    expect(asSet.frontRest).toBeNull();
  });

  it('gives every row the reason when the parts make no machine', () => {
    const rows = rideTable(plainBike, { ...plainSetup, rearTeeth: 1 });
    for (const { found } of rows) expect(found.ok).toBe(false);
  });

  it('begins each state at the travel given', () => {
    const { bike, setup } = SPRUNG_ROAD;
    const asked: string[] = [];
    rideTable(bike, setup, (state) => {
      asked.push(state);
      return undefined;
    });
    expect(asked).toEqual(RIDE_STATES.map(({ key }) => key));
    const there = reached(standBike(bike, setup, 'riderUp')).travel;
    const row = rideTable(bike, setup, () => there).find(({ state }) => state === 'riderUp');
    if (row === undefined) throw new Error('the table has no row for the rider on board');
    expect(reached(row.found).equilibrium?.rounds).toBeLessThanOrEqual(1);
  });

  it('tells no loads and no anti-squat of a bike without mass', () => {
    const figures = rideFigures(stanceWith({ mass: 0 }));
    expect([figures.frontLoad, figures.rearLoad, figures.frontShare, figures.antiSquat]).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(figures.noAntiSquat).toBe(absent('noMass'));
  });
});
