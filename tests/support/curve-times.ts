/** Timing curves one by one, under node as in a page: for four setups together, and for all readings at once. */
import { curveAlong, type SweepAxis } from '../../src/core/effects/sweep.ts';
import { rearWheelTravel } from '../../src/core/linkage/rear-wheel-travel.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance } from '../../src/core/standing/stance.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { standAlong } from './stand-along.ts';

export interface CurveTimes {
  readonly name: string;
  /** Of each run, ms. */
  readonly times: readonly number[];
}

export const PLACES = 201;
const TEETH = [14, 15, 16, 17];
const LONG = { warmUp: 40, runs: 150 };
const SHORT = { warmUp: 0, runs: 2 };

/** Runs that follow one another, each with another setup, so that nothing can be remembered. */
function timesOf(short: boolean, name: string, run: (i: number) => number): CurveTimes {
  const { warmUp, runs } = short ? SHORT : LONG;
  let kept = 0;
  const times: number[] = [];
  for (let i = 0; i < warmUp + runs; i++) {
    const began = performance.now();
    kept += run(i);
    if (i >= warmUp) times.push(performance.now() - began);
  }
  if (Number.isNaN(kept)) throw new Error(`${name}: what was timed gave no number`);
  return { name, times };
}

/**
 * The others are compared with the first: a bike that is only stood on its wheels, as often as four curves have
 * places. `short` runs each twice, which tries it out and measures nothing.
 */
export function curveTimes(short: boolean): CurveTimes[] {
  const [{ bike, setup }] = DEMO_BIKES;
  const to = rearWheelTravel(bike.swingarm);
  const travel = { front: 30, rear: 30 };
  const rear: SweepAxis = { kind: 'travel', end: 'rear' };
  const setups = (i: number) =>
    TEETH.map((frontTeeth) => ({ ...setup, frontTeeth, forkTubes: (i % 100) / 10 }));
  const reading = (key: string) => {
    const found = READINGS.find((each) => each.key === key);
    if (found === undefined) throw new Error(`no reading ${key}`);
    return found;
  };
  const four = (key: string, axis: SweepAxis, from: number, most: number, state?: RideStateKey) => {
    const read = reading(key);
    const along = state === undefined ? axisName(axis) : `${axisName(axis)}, ${state}`;
    return timesOf(short, `${key} against ${along}, 4 setups`, (i) =>
      setups(i).reduce((sum, each) => {
        const asked = { bike, setup: each, travel, state, axis, from, to: most, count: PLACES };
        const curve = curveAlong(asked, read);
        if (curve.y.length !== PLACES) throw new Error(`${key}: only ${curve.y.length} places stand`);
        return sum + curve.x[7];
      }, 0),
    );
  };
  return [
    timesOf(short, 'the bike only stood, as often', (i) =>
      setups(i).reduce((sum, each) => {
        const made = machine(bike, each);
        if (!made.ok) throw new Error(made.reason);
        for (let place = 0; place < PLACES; place++) {
          const on = stance(made, { front: 30, rear: (to * place) / (PLACES - 1) });
          if (!on.ok) throw new Error(on.reason);
          sum += on.rake;
        }
        return sum;
      }, 0),
    ),
    four('trail', rear, 0, to),
    four('antiSquat', rear, 0, to),
    four('rearWheelRate', rear, 0, to),
    four('antiSquat', { kind: 'adjuster', adjuster: 'shockLength' }, -5, 5, 'toppedOut'),
    four('antiSquat', { kind: 'adjuster', adjuster: 'shockPreload' }, 0, 20, 'riderUp'),
    timesOf(short, `all ${READINGS.length} readings against rear travel, 1 setup`, (i) => {
      const [first] = setups(i);
      const { stances } = standAlong({ bike, setup: first, travel, axis: rear, from: 0, to, count: PLACES });
      return READINGS.reduce((sum, each) => sum + stances.map(each.read).length, 0);
    }),
  ];
}

function axisName(axis: SweepAxis): string {
  return axis.kind === 'travel' ? `${axis.end} travel` : axis.adjuster;
}
