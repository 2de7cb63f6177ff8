/** The way from a bike as it is set to another setup, in steps of working order. */
import type { Setup } from '../adjusters/setup.ts';
import { metricReading } from '../readings/metric-reading.ts';
import type { RideStateKey } from '../riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../riding/stand-bike.ts';
import { machine } from '../standing/machine.ts';
import type { Plan, PlanStep, Turn } from './plan.ts';
import type { Prepared } from './prepared.ts';
import type { Setting } from './problem.ts';

/**
 * The plan that leads to `setup`: rear first, front last, height after what moves it. Where a bike would not stand
 * between two turns, such as with a bigger sprocket on the old chain, they are one step.
 */
export function planTo(prepared: Prepared, setup: Setup, off: number): Plan {
  const turns = prepared.adjusters.flatMap(({ key, start, minutes }): Turn[] => {
    // Every value of the search is a number or a tyre.
    const to = setup[key] as Setting;
    return to === start ? [] : [{ adjuster: key, from: start, to, minutes }];
  });
  const steps: PlanStep[] = [];
  let at = prepared.setup;
  let together: Turn[] = [];
  for (const [place, turn] of turns.entries()) {
    at = { ...at, [turn.adjuster]: turn.to };
    together.push(turn);
    if (place < turns.length - 1 && !machine(prepared.bike, at).ok) continue;
    steps.push({ turns: together, readings: readingsOf(prepared, at) });
    together = [];
  }
  return {
    setup,
    steps,
    minutes: turns.reduce((sum, { minutes }) => sum + minutes, 0),
    off,
    readings: readingsOf(prepared, setup),
  };
}

/** The readings of the targets with another setup, each in its state. */
function readingsOf({ bike, targets }: Prepared, setup: Setup): (number | null)[] {
  const stood = new Map<RideStateKey, StandingBike | null>();
  return targets.map(({ reading, state }) => {
    let on = stood.get(state);
    if (on === undefined) {
      const found = standBike(bike, setup, state);
      on = found.ok ? found : null;
      stood.set(state, on);
    }
    const value = on === null ? null : metricReading(reading, on);
    return typeof value === 'number' ? value : null;
  });
}
