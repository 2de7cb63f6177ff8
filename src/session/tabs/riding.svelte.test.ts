/** Tests of the bike in all ride states at once. */
import { describe, expect, it } from 'vitest';
import { RIDE_STATES } from '../../core/riding/states/all-ride-states.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import { setAdjuster } from '../../document/edits.ts';
import { FIRST_PREFERENCES } from '../preferences.svelte.ts';
import { Riding } from './riding.svelte.ts';
import { Workbench } from '../workbench.svelte.ts';

function begun(): Workbench {
  return new Workbench(DEMO_BIKES[0]);
}

function layer(bench: Workbench, name: string) {
  return bench.drawing.scene.find((each) => each.name === name);
}

describe('riding', () => {
  it('has the figures of each state that its readings give there', () => {
    const bench = begun();
    bench.session.commit((from) => setAdjuster(from, 'shockLength', 6), 'Shock length');
    const { rows } = bench.stateOf(Riding);
    for (const { key: state } of RIDE_STATES) {
      bench.ride(state);
      const row = rows.find((each) => each.state === state);
      for (const [key, figure] of [
        ['rake', row?.figures?.rake],
        ['trail', row?.figures?.trail],
        ['antiSquat', row?.figures?.antiSquat],
      ] as const) {
        const reading = bench.standing.rows.find((each) => each.reading.key === key);
        expect(reading?.value, `${state} ${key}`).toBeCloseTo(figure ?? NaN, 6);
      }
      expect(row?.baseline?.rake).not.toBeCloseTo(row?.figures?.rake ?? NaN, 2);
    }
  });

  it('names the reason and the adjuster of a row that does not settle, and keeps the others', () => {
    const bench = begun();
    bench.session.commit((from) => setAdjuster(from, 'braking', 1.4), 'Braking');
    const bad = bench.stateOf(Riding).rows.filter(({ figures }) => figures === null);
    expect(bad).toMatchObject([
      { state: 'braking', problem: { reason: 'rearLifts' }, adjusterInTheWay: 'braking' },
    ]);
    expect(bench.stateOf(Riding).effects?.found.sag.ok).toBe(true);
    expect(bench.stateOf(Riding).effects?.found.braked.ok).toBe(false);
  });

  it('says why there is no sag without springs', () => {
    const bench = begun();
    bench.session.commit((from) => setAdjuster(from, 'forkSpringRate', 0), 'Fork spring rate');
    expect(bench.stateOf(Riding).effects).toBeNull();
    expect(bench.stateOf(Riding).noSprings).toMatchObject({ reason: 'rateNotAboveZero', end: 'front' });
    expect(bench.stateOf(Riding).baselineEffects?.sag.ok).toBe(true);
  });

  it('shows outlines of the ticked states, each named, but not of the one drawn in full', () => {
    const bench = begun();
    bench.ride('toppedOut');
    bench.resize(900, 500);
    bench.stateOf(Riding).showGhost('braking', true);
    bench.stateOf(Riding).showGhost('accelerating', true);
    bench.stateOf(Riding).showGhost('toppedOut', true);
    expect(bench.stateOf(Riding).ghostBikes.map(({ name }) => name)).toEqual(['Accelerating', 'Braking']);
    const names = () =>
      layer(bench, 'labels')?.shapes.flatMap((each) => (each.kind === 'label' ? each.text : []));
    expect(names()).toEqual(expect.arrayContaining(['Accelerating', 'Braking']));
    bench.ride('accelerating');
    expect(bench.stateOf(Riding).ghostBikes.map(({ name }) => name)).toEqual(['Braking', 'Topped out']);
    bench.stateOf(Riding).showGhost('braking', false);
    expect(names()).not.toContain('Braking');
  });

  it('makes the ghosts anew only when they, or where they are laid, have changed', () => {
    const bench = begun();
    bench.stateOf(Riding).showGhost('braking', true);
    const first = layer(bench, 'ghosts');
    expect(first?.shapes.length).toBeGreaterThan(4);
    bench.sideView.pan(10, 10);
    bench.ride('accelerating');
    bench.cornerSequence.scrub(0.3, 0);
    expect(layer(bench, 'ghosts')).toBe(first);
    bench.preferences.change({ align: 'frontPatch' });
    const second = layer(bench, 'ghosts');
    expect(second).not.toBe(first);
    bench.cornerSequence.scrub(0.4, 0);
    expect(layer(bench, 'ghosts')).not.toBe(second);
    bench.preferences.change({ align: FIRST_PREFERENCES.align });
    const third = layer(bench, 'ghosts');
    bench.session.preview((from) => setAdjuster(from, 'shockLength', 2));
    expect(layer(bench, 'ghosts')).not.toBe(third);
  });
});
