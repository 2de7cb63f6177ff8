/** Setups that reach targets, found the plain way: every combination stood in every state, all of them sorted. */
import { ADJUSTERS, adjusterOf } from '../../src/core/adjusters/all-adjusters.ts';
import type { NumberAdjusterKey, Setup } from '../../src/core/adjusters/setup.ts';
import type { Bike } from '../../src/core/parts/bike.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { standBike, type StandingBike } from '../../src/core/riding/stand-bike.ts';
import { adjusterRange } from '../../src/core/standing/adjuster-range.ts';
import { QUANTITIES } from '../../src/core/units/all-quantities.ts';
import { warningWords } from '../../src/words/trouble/warning-words.ts';

export interface TriedChoice {
  readonly adjuster: NumberAdjusterKey;
  readonly available: true;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly minutes: number;
}

export interface TriedTarget {
  readonly reading: string;
  readonly state: RideStateKey;
  readonly want:
    | { readonly kind: 'value'; readonly value: number; readonly tolerance: number }
    | { readonly kind: 'window'; readonly least: number; readonly most: number }
    | { readonly kind: 'atLeast' | 'atMost'; readonly value: number };
  readonly weight: number;
}

export interface TriedProblem {
  readonly bike: Bike;
  readonly setup: Setup;
  readonly targets: readonly TriedTarget[];
  /** In working order. */
  readonly choices: readonly TriedChoice[];
}

export interface FoundByTrial {
  readonly tried: number;
  readonly plans: readonly Setup[];
  /** The range let out by the fewest steps; where plans exist nothing is looked for. */
  readonly wider: {
    readonly adjuster: NumberAdjusterKey;
    readonly steps: number;
    readonly setup: Setup;
  } | null;
  readonly relaxation: { readonly target: number; readonly to: number; readonly setup: Setup } | null;
}

interface Trial {
  readonly setup: Setup;
  readonly values: readonly number[];
  readonly cost: number;
  readonly steps: number;
  /** How far beyond each target, in its metric unit; zero where it is met. */
  readonly beyond: readonly number[];
  readonly readings: readonly number[];
}

/** All values on whole steps from where the adjuster stands. */
function valuesOf({ least, most, step, adjuster }: TriedChoice, setup: Setup): number[] {
  const values: number[] = [];
  for (let n = -200; n <= 200; n++) {
    // Where it stands is left to the last digit; a step is a figure that a person sets.
    const value = n === 0 ? setup[adjuster] : Number((setup[adjuster] + n * step).toFixed(6));
    if (value >= least && value <= most) values.push(value);
  }
  return values;
}

const STYLE = { system: 'metric', decimal: '.' } as const;
const ADJUSTER_KEYS = new Set<string>(ADJUSTERS.map(({ key }) => key));

/** What the page warns of in these states, and which springs are coil-bound. */
function warnedOf(bike: Bike, setup: Setup, states: readonly RideStateKey[]): Set<string> {
  const stood = (state: RideStateKey): StandingBike | null => {
    const on = standBike(bike, setup, state);
    return on.ok ? on : null;
  };
  const rested = stood('riderUp');
  const looked = new Set<RideStateKey>([...states, 'riderUp', ...(rested ? [] : (['toppedOut'] as const))]);
  const found = new Set<string>();
  for (const state of looked) {
    const on = stood(state);
    if (on === null) continue;
    const judged = rested ?? stood('toppedOut') ?? on;
    for (const { key } of warningWords({ bike, setup, stance: on, rested: judged }, STYLE))
      if (!ADJUSTER_KEYS.has(key)) found.add(`${state} ${key}`);
    const rests = [on.equilibrium?.front.rest, on.equilibrium?.rear.rest];
    if (rests.includes('coilsClosed')) found.add(`${state} coils`);
  }
  return found;
}

function tryOne(problem: TriedProblem, values: readonly number[], before: Set<string>): Trial | null {
  const { bike, targets, choices } = problem;
  const setup: Setup = {
    ...problem.setup,
    ...Object.fromEntries(choices.map(({ adjuster }, i) => [adjuster, values[i]])),
  };
  const readings: number[] = [];
  for (const target of targets) {
    const on = standBike(bike, setup, target.state);
    if (!on.ok) return null;
    const reading = READINGS.find(({ key }) => key === target.reading);
    if (reading === undefined) throw new Error(target.reading);
    const value = reading.read(on);
    if (typeof value !== 'number') return null;
    readings.push(QUANTITIES[reading.quantity].fromCore(value));
  }
  const warned = warnedOf(bike, setup, [...targets.map(({ state }) => state)]);
  if ([...warned].some((key) => !before.has(key))) return null;
  const beyond = targets.map(({ want }, i) => {
    const [least, most] = endsOf(want);
    const over = Math.max(least - readings[i], readings[i] - most);
    return over > 1e-9 ? over : 0;
  });
  const off = targets.reduce((sum, { want, weight, reading }, i) => {
    const { noticed } = QUANTITIES[READINGS.find(({ key }) => key === reading)?.quantity ?? 'count'];
    const [least, most] = endsOf(want);
    const miss =
      want.kind === 'value'
        ? Math.abs(readings[i] - want.value)
        : Math.max(0, least - readings[i], readings[i] - most);
    return sum + miss * (weight / noticed);
  }, 0);
  let minutes = 0;
  let steps = 0;
  choices.forEach(({ adjuster, minutes: each, step }, i) => {
    const moved = Math.abs(values[i] - problem.setup[adjuster]);
    if (moved === 0) return;
    minutes += each;
    steps += Math.round(moved / step);
  });
  return { setup, values, cost: off + minutes / 60, steps, beyond, readings };
}

function endsOf(want: TriedTarget['want']): readonly [number, number] {
  switch (want.kind) {
    case 'value':
      return [want.value - want.tolerance, want.value + want.tolerance];
    case 'window':
      return [want.least, want.most];
    case 'atLeast':
      return [want.value, Infinity];
    case 'atMost':
      return [-Infinity, want.value];
  }
}

/** Every value of one adjuster outside its range that the bike allows, with how many steps outside. */
function outside(
  { least, most, step, adjuster }: TriedChoice,
  { bike, setup }: Pick<TriedProblem, 'bike' | 'setup'>,
): { readonly value: number; readonly out: number }[] {
  const own = adjusterRange(adjusterOf(adjuster), bike, setup);
  const rows: { value: number; out: number }[] = [];
  for (const way of [-1, 1])
    for (let n = way, out = 0; Math.abs(n) <= 300; n += way) {
      const value = Number((setup[adjuster] + n * step).toFixed(6));
      if (value < own.least || value > own.most) break;
      if (way < 0 ? value < least : value > most) rows.push({ value, out: ++out });
    }
  return rows;
}

/** What single range gives a plan when it is let out by the fewest steps: every one is let out, and all are sorted. */
function widerByTrial(problem: TriedProblem, lists: readonly number[][], before: Set<string>) {
  const all = problem.choices.flatMap((choice, place) =>
    outside(choice, problem).map(({ value, out }) => ({ place, value, out })),
  );
  for (let out = 1; out <= Math.max(0, ...all.map((each) => each.out)); out++) {
    const met = all
      .filter((each) => each.out === out)
      .flatMap(({ place, value }, shell) => {
        const held = lists.map((list, i) => (i === place ? [value] : list));
        return rowsOf(held)
          .flatMap((values) => tryOne(problem, values, before) ?? [])
          .filter(({ beyond }) => beyond.every((over) => over === 0))
          .map((trial) => ({ trial, place, shell }));
      })
      .sort(
        (a, b) =>
          a.trial.cost - b.trial.cost ||
          a.trial.steps - b.trial.steps ||
          a.shell - b.shell ||
          better(a.trial, b.trial),
      );
    if (met.length > 0)
      return { adjuster: problem.choices[met[0].place].adjuster, steps: out, setup: met[0].trial.setup };
  }
  return null;
}

function rowsOf(lists: readonly (readonly number[])[]): number[][] {
  let rows: number[][] = [[]];
  for (const list of lists) rows = rows.flatMap((row) => list.map((value) => [...row, value]));
  return rows;
}

function better(a: Trial, b: Trial): number {
  if (a.cost !== b.cost) return a.cost - b.cost;
  if (a.steps !== b.steps) return a.steps - b.steps;
  for (let i = 0; i < a.values.length; i++) if (a.values[i] !== b.values[i]) return a.values[i] - b.values[i];
  return 0;
}

/** The same search as the planner's, by trial. */
export function plansByTrial(problem: TriedProblem): FoundByTrial {
  const { bike, setup, targets, choices } = problem;
  const before = warnedOf(bike, setup, [...targets.map(({ state }) => state)]);
  const lists = choices.map((choice) => valuesOf(choice, setup));
  const rows = rowsOf(lists);
  const sound = rows.flatMap((values) => tryOne(problem, values, before) ?? []);

  const turned = ({ values }: Trial) =>
    new Set(choices.flatMap(({ adjuster }, i) => (values[i] === setup[adjuster] ? [] : [adjuster])));
  const unlike = (a: Trial, b: Trial): boolean => {
    const [ofA, ofB] = [turned(a), turned(b)];
    const onlyA = [...ofA].filter((key) => !ofB.has(key));
    const onlyB = [...ofB].filter((key) => !ofA.has(key));
    if (onlyA.length > 0 || onlyB.length > 0) return onlyA.length > 0 && onlyB.length > 0;
    return lists.some((list, i) => {
      const apart = Math.abs(list.indexOf(a.values[i]) - list.indexOf(b.values[i]));
      return apart > 0 && apart * 4 >= list.length - 1;
    });
  };
  const met = sound.filter(({ beyond }) => beyond.every((over) => over === 0)).sort(better);
  const plans: Trial[] = [];
  for (const trial of met)
    if (plans.length < 5 && plans.every((plan) => unlike(plan, trial))) plans.push(trial);

  const sizeOf = ({ beyond }: Trial): number => {
    const target = beyond.findIndex((over) => over > 0);
    const { reading, weight } = targets[target];
    const { noticed } = QUANTITIES[READINGS.find(({ key }) => key === reading)?.quantity ?? 'count'];
    return beyond[target] * (weight / noticed);
  };
  const near = sound
    .filter(({ beyond }) => beyond.filter((over) => over > 0).length === 1)
    .sort((a, b) => sizeOf(a) - sizeOf(b) || better(a, b));
  const target = near[0]?.beyond.findIndex((over) => over > 0) ?? -1;
  return {
    tried: rows.length,
    plans: plans.map((plan) => plan.setup),
    wider: plans.length > 0 ? null : widerByTrial(problem, lists, before),
    relaxation:
      plans.length > 0 || near.length === 0
        ? null
        : { target, to: near[0].readings[target], setup: near[0].setup },
  };
}
