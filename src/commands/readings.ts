/** Prints the readings of a saved bike. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { driveNoun } from '../core/parts/drive-noun.ts';
import { readingsOf } from '../words/worded-readings.ts';
import { absentWords } from '../words/absent-words.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import type { Bike } from '../core/parts/bike.ts';
import { machine, type Machine } from '../core/standing/machine.ts';
import { barTightWords, withBarTight } from '../words/trouble/bar-tight-words.ts';
import { warningWords } from '../words/trouble/warning-words.ts';
import { noStandWords } from '../words/trouble/no-stand-words.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import { standMachine, type StandingBike } from '../core/riding/stand-bike.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import type { BikeDocument } from '../document/document.ts';
import { openFile } from './open-file.ts';
import type { Outcome } from './outcome.ts';
import { readingsHelp } from './readings-help.ts';
import { setAdjusterFromWords } from './set-adjuster.ts';

interface Request {
  readonly file: string | null;
  readonly sets: readonly string[];
  readonly help: boolean;
}

type ReadingEntry =
  | { readonly value: number; readonly unit: string }
  | { readonly value: null; readonly unit: string; readonly reason: string };

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };

function requestFrom(args: readonly string[]): Result<Request, string> {
  const files: string[] = [];
  const sets: string[] = [];
  let help = false;
  for (let i = 0; i < args.length; i++) {
    const arg = args[i];
    if (arg === '--help' || arg === '-h') help = true;
    else if (arg === '--set') {
      i++;
      if (i === args.length) return fail('--set takes an adjuster and its value, as in --set forkTubes=5.');
      sets.push(args[i]);
    } else if (arg.startsWith('--set=')) sets.push(arg.slice('--set='.length));
    else if (arg.startsWith('-')) return fail(`There is no option ${arg}; --help lists them.`);
    else files.push(arg);
  }
  if (files.length > 1) return fail(`One file at a time, not ${files.length}: ${files.join(', ')}.`);
  if (files.length === 0 && !help)
    return fail('Which file? npm run readings -- FILE [--set forkTubes=5 …], or --help.');
  return succeed({ file: files[0] ?? null, sets, help });
}

function entriesOf(standing: StandingBike): Result<Record<string, ReadingEntry>, string> {
  const entries: [string, ReadingEntry][] = [];
  const add = (key: string, formerly: string | undefined, entry: ReadingEntry): void => {
    entries.push([key, entry]);
    if (formerly !== undefined) entries.push([formerly, entry]);
  };
  for (const { key, formerly, label, quantity, read } of readingsOf(standing.machine.driveKind)) {
    const { fromCore, fileUnit: unit } = QUANTITIES[quantity];
    const found = read(standing);
    if (typeof found !== 'number') {
      add(key, formerly, { value: null, unit, reason: `${label}: ${absentWords(found)}.` });
      continue;
    }
    const value = fromCore(found);
    if (!Number.isFinite(value)) return fail(`${label} (${key}) came out as no finite number.`);
    add(key, formerly, { value, unit });
  }
  return succeed(Object.fromEntries(entries));
}

/** What is printed of one state: its readings, or why the bike does not come to rest in it. */
type StateEntry = Record<string, ReadingEntry> | { readonly noAnswer: string };

/**
 * The JSON that is printed for a document, or one line that says why the bike cannot be put together or stand. A ride
 * state in which the springs give no answer, for example without a rate, holds the reason instead.
 */
export function readingsJson({ bike, setup, schema }: BikeDocument): Result<string, string> {
  const made = machine(bike, setup);
  if (!made.ok)
    return fail(`The bike cannot be put together: ${noStandWords(made, driveNoun(bike.drive.kind), METRIC)}`);
  const states: [string, StateEntry][] = [];
  for (const { key, formerly, label, springsCarry } of RIDE_STATES) {
    const add = (entry: StateEntry): void => {
      states.push([key, entry]);
      if (formerly !== undefined) states.push([formerly, entry]);
    };
    const standing = standMachine(made, setup, key);
    if (!standing.ok) {
      const why = noStandWords(standing, driveNoun(bike.drive.kind), METRIC);
      if (!springsCarry) return fail(`The bike cannot stand in the ride state “${label}”: ${why}`);
      add({ noAnswer: why });
      continue;
    }
    const entries = entriesOf(standing);
    if (!entries.ok) return fail(`${label}: ${entries.reason}`);
    add(entries.value);
  }
  const warnings = warningsOf(bike, setup, made);
  return succeed(
    `${JSON.stringify({ bike: bike.name, schema, warnings, states: Object.fromEntries(states) }, null, 2)}\n`,
  );
}

/** What a rider must be warned of: at rest with the rider on board, or topped out where the springs give no rest. */
function warningsOf(
  bike: Bike,
  setup: Setup,
  made: Machine,
): { warning: string; state: string; words: string }[] {
  const rested = standMachine(made, setup, 'riderUp');
  const stance = rested.ok ? rested : standMachine(made, setup, 'toppedOut');
  if (!stance.ok) return [];
  const others = warningWords({ bike, setup, stance, rested: stance }, METRIC);
  const all = withBarTight(others, barTightWords(bike, made, METRIC));
  return all.map(({ key, lead, text }) => ({
    warning: key,
    state: rested.ok ? 'riderUp' : 'toppedOut',
    words: `${lead}. ${text}`,
  }));
}

/** Everything the command does except writing to the streams. */
export function readingsCommand(args: readonly string[]): Outcome {
  // A refusal is one line. Repairs are printed beside an answer, because the answer rests on them.
  const fail = (line: string): Outcome => ({ code: 1, out: '', err: `${line}\n` });
  const request = requestFrom(args);
  if (!request.ok) return fail(request.reason);
  const { file, sets, help } = request.value;
  if (file === null) return { code: 0, out: readingsHelp(DEMO_BIKES[0]), err: '' };
  const opened = openFile(file);
  if (!opened.ok) return fail(opened.reason);
  let { document } = opened.value;
  if (help) return { code: 0, out: readingsHelp(document), err: '' };
  const notes = opened.value.repairs.map((repair) => repair.sentence);
  for (const words of sets) {
    const set = setAdjusterFromWords(document, words);
    if (!set.ok) return fail(set.reason);
    document = set.value.document;
    if (set.value.remark !== null) notes.push(set.value.remark);
  }
  const json = readingsJson(document);
  if (!json.ok) return fail(json.reason);
  return { code: 0, out: json.value, err: notes.map((line) => `${line}\n`).join('') };
}

/** `args` are the command's arguments; the result is the exit code. */
export function run(args: readonly string[]): number {
  const { code, out, err } = readingsCommand(args);
  process.stderr.write(err);
  process.stdout.write(out);
  return code;
}
