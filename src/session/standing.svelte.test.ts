/** Tests of the bike on its wheels: state, cornerPart, the last good picture, and staying near the last rest. */
import { describe, expect, it } from 'vitest';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import { Preferences } from './preferences.svelte.ts';
import { readIn } from '../../tests/support/read-in.ts';
import { loadCase, RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import { CORNER_PLACES } from '../core/riding/states/corner-sequence.ts';
import { standBike } from '../core/riding/stand-bike.ts';
import { succeed } from '../core/numeric/result.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { setBaseline, setAdjuster } from '../document/edits.ts';
import { BikeSession } from './bike-session.svelte.ts';
import { Standing } from './standing.svelte.ts';
import { beginHistory } from '../document/history.ts';

const [road, track] = DEMO_BIKES;

function begun(document = road): { session: BikeSession; standing: Standing } {
  const session = new BikeSession(document);
  return { session, standing: new Standing(session, readIn('toppedOut')) };
}

describe('a standing bike', () => {
  it('is read in the state that is chosen, as the core reads it', () => {
    const { standing } = begun();
    for (const { key: state } of RIDE_STATES) {
      standing.choose(state);
      const alone = standBike(road.bike, road.setup, state);
      if (!alone.ok) throw new Error(alone.reason);
      expect(standing.live?.stance.travel.front).toBeCloseTo(alone.travel.front, 8);
      expect(standing.ride).toEqual(loadCase(state, road.setup));
    }
  });

  it('rolls from state to state and comes back to the one it was in', () => {
    const { standing } = begun();
    standing.choose('riderUp');
    const before = standing.live?.stance.travel;
    for (const { part, state } of CORNER_PLACES) {
      standing.scrub(part);
      expect(standing.ride).toEqual(loadCase(state, road.setup));
      expect(standing.cornerPart).toBe(part);
    }
    standing.scrub(1.7);
    expect(standing.cornerPart).toBe(1);
    standing.scrub(null);
    expect(standing.state).toBe('riderUp');
    expect(standing.live?.stance.travel.rear).toBeCloseTo(before?.rear ?? NaN, 8);
    standing.scrub(0.4);
    standing.choose('accelerating');
    expect(standing.cornerPart).toBeNull();
  });

  it('begins from where the state rested last: a small change takes few rounds', () => {
    const { session, standing } = begun();
    standing.choose('braking');
    const cold = standing.live?.stance.equilibrium?.rounds ?? 0;
    session.preview((from) => setAdjuster(from, 'riderMass', 78.2));
    const warm = standing.live?.stance.equilibrium?.rounds ?? Infinity;
    expect(warm).toBeLessThan(cold);
    expect(warm).toBeLessThanOrEqual(3);
    expect(standing.nearOf('braking')).toEqual(standing.live?.stance.travel);
    expect(standing.nearOf('accelerating')).toBeUndefined();
  });

  it('stays on the same rest while an adjuster turns, where a falling rate leaves the bike two', () => {
    const stroke = [0, 21, 35, 42, 49, 62];
    const travelTable = [0, 30, 60, 90, 110, 130].map((wheelTravel, i) => ({
      wheelTravel,
      shockStroke: stroke[i],
    }));
    const bike = {
      ...road.bike,
      swingarm: { ...road.bike.swingarm, links: null, wheelTravel: 130, travelTable },
    };
    const setup = { ...road.setup, shockSpringRate: 80, riderMass: 140 };
    const { session, standing } = begun({ ...road, bike, setup, baseline: { bike, setup } });
    standing.choose('riderUp');
    for (let mass = 140; mass >= 80; mass -= 5) {
      session.preview((from) => setAdjuster(from, 'riderMass', mass));
      expect(standing.live?.stance.travel.rear, `${mass} kg`).toBeGreaterThan(90);
    }
    session.commitDraft('Rider weight');
    // Read alone, the same bike sits high on its springs.
    const alone = standBike(bike, { ...setup, riderMass: 80 }, 'riderUp');
    expect(alone.ok && alone.travel.rear).toBeLessThan(20);
    session.open(beginHistory({ ...session.document, setup: { ...session.document.setup } }));
    expect(standing.live?.stance.travel.rear).toBeLessThan(20);
  });

  it('knows nothing of one bike’s rest when another is opened', () => {
    const { session, standing } = begun();
    standing.choose('accelerating');
    standing.choose('riderUp');
    session.open(beginHistory(track));
    expect(standing.nearOf('accelerating')).toBeUndefined();
    const alone = standBike(track.bike, track.setup, 'riderUp');
    expect(standing.live?.stance.travel).toEqual(alone.ok ? alone.travel : null);
  });

  it('keeps the last good picture while the state cannot be, compared with the baseline in the same state', () => {
    const { session, standing } = begun();
    standing.choose('riderUp');
    session.commit((from) => setAdjuster(from, 'shockLength', 4), 'Shock length');
    session.commit((from) => setAdjuster(from, 'acceleration', 1.5), 'Acceleration');
    const shown = standing.live;
    standing.choose('accelerating');
    expect(standing.problem).toMatchObject({ reason: 'frontLifts', found: 1.5 });
    expect(standing.adjusterInTheWay).toBe('acceleration');
    // The bike before the last change stood in this state.
    expect(standing.undoHelps).toBe(true);
    session.commit((from) => setAdjuster(from, 'forkPreload', 18), 'Fork preload');
    expect(standing.undoHelps).toBe(false);
    expect(standing.live).toBe(shown);
    const was = standBike(road.bike, road.setup, 'riderUp');
    expect(standing.baseline?.stance.travel.rear).toBeCloseTo(was.ok ? was.travel.rear : NaN, 8);
    session.commit((from) => setAdjuster(from, 'acceleration', 0.5), 'Acceleration');
    expect(standing.problem).toBeNull();
    expect(standing.adjusterInTheWay).toBeNull();
    expect(standing.live?.asked.state).toBe('accelerating');
  });

  it('without springs hangs on its stops where a state needs them, even if it never stood in another', () => {
    const setup = { ...road.setup, shockSpringRate: 0 };
    const springless = { ...road, setup, baseline: { bike: road.bike, setup } };
    const { session, standing } = begun();
    standing.choose('midCorner');
    session.open(beginHistory(springless));
    expect(standing.problem).toBeNull();
    expect(standing.state).toBe('toppedOut');
    standing.choose('midCorner');
    expect(standing.problem).toMatchObject({ reason: 'rateNotAboveZero', end: 'rear' });
    expect(standing.adjusterInTheWay).toBe('shockSpringRate');
    expect(standing.live?.asked.state).toBe('toppedOut');
    expect(standing.live?.setup).toBe(setup);
    session.commit((from) => setAdjuster(from, 'shockSpringRate', 130), 'Shock spring rate');
    expect(standing.live?.stance.equilibrium).toBeDefined();
  });

  it('opens with the rider on board, keeps the state that is chosen, and quotes the swingarm angle topped out beside it', () => {
    const session = new BikeSession(road);
    const preferences = new Preferences();
    const standing = new Standing(session, preferences);
    expect(standing.state).toBe('riderUp');
    const rowOf = () => standing.rows.find(({ reading }) => reading.key === 'swingarmAngle');
    const hanging = standBike(road.bike, road.setup, 'toppedOut');
    expect(rowOf()?.quoted).toEqual({
      state: 'toppedOut',
      value: hanging.ok ? QUANTITIES.angle.fromCore(hanging.swingarmAngle) : null,
    });
    expect(rowOf()?.value).toBeLessThan(Number(rowOf()?.quoted?.value) - 1);
    standing.choose('braking');
    expect(preferences.data.rideState).toBe('braking');
    session.open(beginHistory({ ...road }));
    expect(standing.state).toBe('braking');
    standing.choose('toppedOut');
    expect(rowOf()?.quoted).toBeNull();
  });

  it('holds the anti-squat against the neutral point of this bike while accelerating, and nowhere else', () => {
    const standing = new Standing(new BikeSession(road), new Preferences());
    const rowOf = (key: string) => standing.rows.find(({ reading }) => reading.key === key);
    expect(rowOf('antiSquat')?.neutral).toBeNull();
    standing.choose('accelerating');
    expect(rowOf('antiSquat')?.neutral).toBe(rowOf('neutralAntiSquat')?.value);
    expect(rowOf('rake')?.neutral).toBeNull();
  });

  it('hangs while parts are placed, unless the travel is set by hand or another state is chosen', () => {
    const standing = new Standing(new BikeSession(road), new Preferences());
    standing.hang(true);
    expect(standing.live?.asked.state).toBe('toppedOut');
    standing.hang(false);
    expect(standing.live?.asked.state).toBe('riderUp');
    standing.choose('travelByHand');
    standing.hang(true);
    expect(standing.state).toBe('travelByHand');
    standing.choose('braking');
    expect(standing.state).toBe('braking');
    standing.hang(false);
    expect(standing.state).toBe('braking');
  });

  it('stands a bike that is not the present one in the same way, such as the one a hand took hold of', () => {
    const { session, standing } = begun();
    standing.scrub(0.3);
    session.preview((from) => setAdjuster(from, 'shockLength', 5));
    const found = standing.stand(session.history.present);
    expect('stance' in found ? found.setup.shockLength : null).toBe(0);
    expect(standing.live?.setup.shockLength).toBe(5);
    session.cancel();
    session.commit((from) => succeed(setBaseline(from)), 'Set as baseline');
    expect(standing.baseline?.asked.cornerPart).toBe(0.3);
  });
});
