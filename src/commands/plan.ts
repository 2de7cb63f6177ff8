/** Finds setups of a saved bike that reach targets. */
import { availableParallelism } from 'node:os';
import { adjusterOf, ADJUSTERS } from '../core/adjusters/all-adjusters.ts';
import { planSearch, type PlanSearch } from '../core/plan/find-plans.ts';
import type { Plan, PlansFound, PlanStep, WiderRange } from '../core/plan/plan.ts';
import { searchable, usualRange } from '../core/plan/prepare-adjusters.ts';
import type { Choice, Problem, Target } from '../core/plan/problem.ts';
import { sharesFor, threadsFor, WHOLE } from '../core/plan/search-part.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { rideStateOf } from '../core/riding/states/all-ride-states.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import type { BikeWithSetup } from '../document/document.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { extenderWords } from '../words/plan/plan-words.ts';
import { noProblemWords } from '../words/plan/no-problem-words.ts';
import { otherWords, relaxationWords, stopsWords, widerWords } from '../words/plan/no-plan-words.ts';
import { openFile } from './open-file.ts';
import type { Outcome } from './outcome.ts';
import { planHelp } from './plan-help.ts';
import { planRequest } from './plan-request.ts';
import { searchThrough, startShare, type SharedSearch, type ShareThread } from './plan-threads.ts';
import { adjusterUnit } from './set-adjuster.ts';

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };

/** Lines of progress for one search, at most. */
const PROGRESS_LINES = 20;

/** The key it had, beside the present one; nothing where it never had another. */
const formerKey = ({ formerly }: { readonly formerly?: string }): { readonly formerly?: string } =>
  formerly === undefined ? {} : { formerly };

function readingEntries(targets: readonly Target[], values: readonly (number | null)[]) {
  return targets.map(({ reading: key, state }, i) => {
    const reading = READINGS.find((each) => each.key === key);
    return {
      reading: key,
      ...(reading === undefined ? {} : formerKey(reading)),
      state,
      ...(rideStateOf(state).formerly === undefined ? {} : { stateFormerly: rideStateOf(state).formerly }),
      value: values[i],
      unit: QUANTITIES[reading?.quantity ?? 'count'].fileUnit,
    };
  });
}

function stepEntry({ targets }: Problem, { turns, readings }: PlanStep) {
  return {
    turn: turns.map(({ adjuster: key, from, to, minutes }) => {
      const adjuster = adjusterOf(key);
      return { adjuster: key, ...formerKey(adjuster), from, to, unit: adjusterUnit(adjuster), minutes };
    }),
    readings: readingEntries(targets, readings),
  };
}

function planEntry(problem: Problem, { steps, minutes, off, readings }: Plan) {
  return {
    minutes,
    off,
    forkExtenders: extenderWords(steps, METRIC),
    steps: steps.map((step) => stepEntry(problem, step)),
    readings: readingEntries(problem.targets, readings),
  };
}

function widerEntry(problem: Problem, { adjuster, to, by, plan }: WiderRange) {
  return { adjuster, to, by, unit: adjusterUnit(adjusterOf(adjuster)), plan: planEntry(problem, plan) };
}

/** The adjusters that may be turned, and beside them those that might be allowed if nothing else gives a plan. */
function withOthers({ bike, setup }: BikeWithSetup, choices: readonly Choice[]): readonly Choice[] {
  const others = ADJUSTERS.flatMap((adjuster): Choice[] => {
    const own = searchable(adjuster, bike, setup);
    if ('ok' in own || choices.some((choice) => choice.adjuster === adjuster.key)) return [];
    return [{ adjuster: adjuster.key, available: false, ...usualRange(own) }];
  });
  return [...choices, ...others];
}

/** What is printed of a search. */
function planJson(name: string, problem: Problem, found: PlansFound): string {
  const { plans, tried, total, stops, relaxation, wider, beyond, other, withOther } = found;
  const none =
    plans.length > 0
      ? null
      : {
          why: stopsWords(found, problem, METRIC),
          smallestChange: relaxationWords(found, problem, METRIC),
          relaxation:
            relaxation === null
              ? null
              : {
                  target: relaxation.target,
                  to: relaxation.to,
                  by: relaxation.by,
                  plan: planEntry(problem, relaxation.plan),
                },
          widerRange: widerWords(found, problem, METRIC),
          wider: wider === null ? null : widerEntry(problem, wider),
          oneMoreAdjuster: otherWords(found, problem, METRIC),
          other: other === null ? null : widerEntry(problem, other),
          triedBeyond: beyond.tried,
          triedWithOneMore: withOther.tried,
        };
  const printed = {
    bike: name,
    combinations: { tried, total, all: tried === total },
    plans: plans.map((plan) => planEntry(problem, plan)),
    none,
    stopped: {
      noStand: stops.noStand,
      targets: problem.targets.map(({ reading, state }, i) => ({ reading, state, count: stops.targets[i] })),
      warnings: stops.warnings,
    },
  };
  return `${JSON.stringify(printed, null, 2)}\n`;
}

/** What a shell expects of a program that Ctrl+C ended. */
const ENDED = 130;

/**
 * Everything the command does except writing to the streams; progress goes to the error stream, line by line. Once
 * `isEnded` says so, what was found until then is printed. `start` starts a thread for a share of a long search; without
 * it this thread searches alone.
 */
export async function planCommand(
  args: readonly string[],
  tell: (line: string) => void,
  isEnded: () => boolean = () => false,
  start: ((search: SharedSearch) => ShareThread) | null = null,
): Promise<Outcome> {
  const refuse = (line: string): Outcome => ({ code: 1, out: '', err: `${line}\n` });
  const request = planRequest(args);
  if (!request.ok) return refuse(request.reason);
  const { file, help, targets, choices } = request.value;
  if (file === null) return { code: 0, out: planHelp(DEMO_BIKES[0]), err: '' };
  const opened = openFile(file);
  if (!opened.ok) return refuse(opened.reason);
  const { document, repairs } = opened.value;
  if (help) return { code: 0, out: planHelp(document), err: '' };
  const { bike, setup } = document;
  const problem: Problem = { bike, setup, targets, choices: withOthers(document, choices) };
  const alone = planSearch(problem);
  if (!alone.ok) return refuse(noProblemWords(alone, problem, METRIC));
  const shares = start === null ? [WHOLE] : sharesFor(threadsFor(alone.total, availableParallelism()));
  const search = planSearch(problem, shares[0]);
  if (!search.ok) return refuse(noProblemWords(search, problem, METRIC));
  const threads = start === null ? [] : shares.slice(1).map((share) => start({ problem, share }));
  await searchThrough(search, threads, progressReport(search, threads, tell), isEnded);
  const notes = repairs.map(({ sentence }) => `${sentence}\n`).join('');
  const out = planJson(bike.name, problem, search.found());
  if (search.isDone()) return { code: 0, out, err: notes };
  const ended = `Ended by Ctrl+C after ${search.tried()} of ${search.total} combinations. What was found until then is printed.\n`;
  return { code: ENDED, out, err: `${notes}${ended}` };
}

/** Tells how far a search is, in a line for each twentieth of it, and once when it goes on beyond the ranges. */
function progressReport(
  search: PlanSearch,
  threads: readonly ShareThread[],
  tell: (line: string) => void,
): () => void {
  const { triedBeyond, total, best } = search;
  const tried = (): number =>
    search.tried() + (search.awaited() === 0 ? 0 : threads.reduce((sum, thread) => sum + thread.tried(), 0));
  let told = 0;
  let isBeyondTold = false;
  return () => {
    if (triedBeyond() > 0 && !isBeyondTold) {
      isBeyondTold = true;
      tell('no plan within the ranges, looking beyond them');
    }
    if (told === PROGRESS_LINES || tried() * PROGRESS_LINES < (told + 1) * total) return;
    told = Math.floor((tried() * PROGRESS_LINES) / total);
    const plan = best();
    const found = plan === null ? 'no plan yet' : `best so far ${plan.minutes} min of work`;
    tell(`${tried()} of ${total} combinations tried, ${found}`);
  };
}

/** `args` are the command's arguments, `shareFile` is what a thread runs for a share; the result is the exit code. */
export async function run(args: readonly string[], shareFile: URL): Promise<number> {
  let isEnded = false;
  // Once: a second Ctrl+C ends the program at once, as usual.
  process.once('SIGINT', () => (isEnded = true));
  const { code, out, err } = await planCommand(
    args,
    (line) => process.stderr.write(`${line}\n`),
    () => isEnded,
    (search) => startShare(shareFile, search),
  );
  process.stderr.write(err);
  process.stdout.write(out);
  return code;
}
