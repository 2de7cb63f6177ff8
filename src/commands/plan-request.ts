/** Reads what the plan command is asked: a file, targets in ride states, and adjusters with ranges. */
import { ADJUSTERS, type Adjuster } from '../core/adjusters/all-adjusters.ts';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import type { Tyre } from '../core/parts/tyre.ts';
import type { Choice, Target, TyreKey, Wanted } from '../core/plan/problem.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import type { QuantityKey } from '../core/units/all-quantities.ts';
import { parseQuantity } from '../core/units/parse-quantity.ts';
import { quote } from '../document/json/json.ts';
import { nearestName } from './nearest-name.ts';
import { parseTyre } from './parse-tyre.ts';

export interface PlanRequest {
  readonly file: string | null;
  readonly help: boolean;
  readonly targets: readonly Target[];
  readonly choices: readonly Choice[];
}

type Take<T> = Result<T, string>;

const OPTIONS = ['--target', '--keep', '--with', '--minutes'] as const;
type Option = (typeof OPTIONS)[number];

const FORMS: Readonly<Record<Option, string>> = {
  '--target': '--target swingarmAngle@toppedOut=12.2',
  '--keep': '--keep trail@riderUp',
  '--with': '--with shockLength,forkTubes=0..10',
  '--minutes': '--minutes forkTubes=15',
};

/** As the bike reads now, as the end of an open window. */
const NOW = 'now';

/** What may be kept by one word: the sag of both ends with the rider on board. */
const SAG = ['frontTravel', 'rearTravel'] as const;

/** The request behind the arguments, or one line that says what is wrong with them. */
export function planRequest(args: readonly string[]): Take<PlanRequest> {
  const files: string[] = [];
  const given: { readonly option: Option; readonly words: string }[] = [];
  let help = false;
  for (let i = 0; i < args.length; i++) {
    const [name, ...rest] = args[i].split('=');
    const option = OPTIONS.find((each) => each === name);
    if (args[i] === '--help' || args[i] === '-h') help = true;
    else if (option !== undefined) {
      if (rest.length === 0) i++;
      const words = rest.length > 0 ? rest.join('=') : args[i];
      if (words === undefined || words === '') return fail(`${option} needs more, as in ${FORMS[option]}.`);
      given.push({ option, words });
    } else if (args[i].startsWith('-')) return fail(`There is no option ${args[i]}; --help lists them.`);
    else files.push(args[i]);
  }
  if (files.length > 1) return fail(`One file at a time, not ${files.length}: ${files.join(', ')}.`);
  if (files.length === 0 && !help)
    return fail(`Which file? npm run plan -- FILE ${FORMS['--target']} ${FORMS['--with']}, or --help.`);
  const targets: Target[] = [];
  const choices: Choice[] = [];
  const minutes = new Map<string, number>();
  for (const { option, words } of given) {
    if (option === '--with') {
      for (const part of words.split(',')) {
        const choice = choiceFrom(part.trim());
        if (!choice.ok) return choice;
        choices.push(choice.value);
      }
    } else if (option === '--minutes') {
      const set = minutesFrom(words);
      if (!set.ok) return set;
      minutes.set(set.value.key, set.value.minutes);
    } else {
      const found = option === '--keep' ? keptFrom(words) : targetFrom(words);
      if (!found.ok) return found;
      targets.push(...found.value);
    }
  }
  for (const key of minutes.keys())
    if (!choices.some(({ adjuster }) => adjuster === key))
      return fail(`--minutes names ${key}, which --with does not.`);
  return succeed({
    file: files[0] ?? null,
    help,
    targets,
    choices: choices.map((choice) => {
      const own = minutes.get(choice.adjuster);
      return own === undefined ? choice : { ...choice, minutes: own };
    }),
  });
}

function targetFrom(words: string): Take<Target[]> {
  const at = words.indexOf('=');
  if (at < 1) return fail(`--target names a reading and its value, as in ${FORMS['--target']}.`);
  const what = readingAt(words.slice(0, at));
  if (!what.ok) return what;
  const { reading, state, quantity } = what.value;
  const weighed = splitWeight(words.slice(at + 1));
  if (!weighed.ok) return weighed;
  const { rest, weight } = weighed.value;
  const window = rest.split('..');
  if (window.length === 2 && window.some((end) => end.trim() === '')) {
    const [low, high] = window.map((end) => end.trim());
    if (low === high) return fail(`"${quote(rest)}" is a window without an end; as in =90.. or =..now.`);
    const kind = high === '' ? 'atLeast' : 'atMost';
    const end = kind === 'atLeast' ? low : high;
    if (end === NOW) return succeed([{ reading, state, weight, want: { kind } }]);
    const value = numberFrom(end, quantity);
    return value.ok ? succeed([{ reading, state, weight, want: { kind, value: value.value } }]) : value;
  }
  if (window.length === 2) {
    const least = numberFrom(window[0], quantity);
    if (!least.ok) return least;
    const most = numberFrom(window[1], quantity);
    if (!most.ok) return most;
    return succeed([
      { reading, state, weight, want: { kind: 'window', least: least.value, most: most.value } },
    ]);
  }
  const [value, around] = splitTolerance(rest);
  const aim = numberFrom(value, quantity);
  if (!aim.ok) return aim;
  const want = withTolerance({ kind: 'value', value: aim.value }, around, quantity);
  return want.ok ? succeed([{ reading, state, weight, want: want.value }]) : want;
}

function keptFrom(words: string): Take<Target[]> {
  const weighed = splitWeight(words);
  if (!weighed.ok) return weighed;
  const { rest, weight } = weighed.value;
  const [name, around] = splitTolerance(rest);
  const places =
    name.trim() === 'sag' ? SAG.map((reading) => readingAt(`${reading}@riderUp`)) : [readingAt(name)];
  const targets: Target[] = [];
  for (const place of places) {
    if (!place.ok) return place;
    const { reading, state, quantity } = place.value;
    const want = withTolerance({ kind: 'keep' }, around, quantity);
    if (!want.ok) return want;
    targets.push({ reading, state, weight, want: want.value });
  }
  return succeed(targets);
}

function withTolerance(
  want: Extract<Wanted, { kind: 'value' | 'keep' }>,
  around: string | null,
  quantity: QuantityKey,
): Take<Wanted> {
  if (around === null) return succeed(want);
  const tolerance = numberFrom(around, quantity);
  return tolerance.ok ? succeed({ ...want, tolerance: tolerance.value }) : tolerance;
}

/** "12.2 ± 0.1", also with "+-". */
function splitTolerance(words: string): [string, string | null] {
  const [value, around] = words.split(/±|\+-/);
  return [value, around ?? null];
}

/** "12.2 x3" counts three times. */
function splitWeight(words: string): Take<{ readonly rest: string; readonly weight: number }> {
  const match = /^(.*\S)\s*[x×]\s*([\d.]+)$/.exec(words.trim());
  if (match === null) return succeed({ rest: words, weight: 1 });
  const weight = Number(match[2]);
  return Number.isFinite(weight)
    ? succeed({ rest: match[1], weight })
    : fail(`The weight "${quote(match[2])}" is not a number.`);
}

function readingAt(
  words: string,
): Take<Pick<Target, 'reading' | 'state'> & { readonly quantity: QuantityKey }> {
  const [name, ridden] = words.split('@').map((word) => word.trim());
  const reading = READINGS.find(({ key, formerly }) => key === name || formerly === name);
  if (reading === undefined) return fail(noName('reading', name, READINGS));
  if (ridden === undefined || ridden === '')
    return fail(`${name}: in which ride state? As in ${name}@riderUp.`);
  const state = RIDE_STATES.find(({ key, formerly }) => key === ridden || formerly === ridden);
  if (state === undefined) return fail(noName('ride state', ridden, RIDE_STATES));
  return succeed({ reading: reading.key, state: state.key, quantity: reading.quantity });
}

function noName(what: string, name: string, list: readonly { readonly key: string }[]): string {
  const nearest = nearestName(
    name,
    list.map(({ key }) => key),
  );
  return `There is no ${what} named "${quote(name)}"; the nearest is ${nearest}, and --help lists them all.`;
}

function adjusterNamed(name: string): Take<Adjuster> {
  const adjuster = ADJUSTERS.find(({ key, formerly }) => key === name || formerly === name);
  return adjuster === undefined ? fail(noName('adjuster', name, ADJUSTERS)) : succeed(adjuster);
}

/** "forkTubes", "forkTubes=0..10" or "forkTubes=0..10/0.5". */
function choiceFrom(words: string): Take<Choice> {
  const [name, range, more] = words.split('=');
  const found = adjusterNamed(name.trim());
  if (!found.ok) return found;
  const adjuster = found.value;
  if (range === undefined) return succeed({ adjuster: adjuster.key, available: true });
  if (adjuster.holds === 'tyre' && more === undefined) return tyresFrom(adjuster.key, range);
  const match = /^(.+?)\.\.([^/]+?)(?:\/(.+))?$/.exec(range);
  if (match === null || more !== undefined || adjuster.holds === 'tyre')
    return fail(
      `"${quote(words)}" is no adjuster with its range, as in ${FORMS['--with']} or forkTubes=0..10/0.5.`,
    );
  const figures: number[] = [];
  for (const text of match.slice(1, 4)) {
    if (text === undefined) continue;
    const figure = numberFrom(text, adjuster.quantity);
    if (!figure.ok) return figure;
    figures.push(figure.value);
  }
  const [least, most, step] = figures;
  const choice: Choice = { adjuster: adjuster.key, available: true, least, most };
  return succeed(step === undefined ? choice : { ...choice, step });
}

/** "180/60-17+190/55-17": the sizes that may go on. */
function tyresFrom(adjuster: TyreKey, words: string): Take<Choice> {
  const tyres: Tyre[] = [];
  for (const text of words.split('+')) {
    const tyre = parseTyre(text.trim(), 'metric');
    if (!tyre.ok) return fail(`"${quote(text.trim())}" is no tyre, as in rearTyre=180/60-17+190/55-17.`);
    tyres.push(tyre.value);
  }
  return succeed({ adjuster, available: true, tyres });
}

function minutesFrom(words: string): Take<{ readonly key: string; readonly minutes: number }> {
  const [name, text = ''] = words.split('=');
  const found = adjusterNamed(name.trim());
  if (!found.ok) return found;
  const minutes = Number(text);
  return text.trim() === '' || !Number.isFinite(minutes)
    ? fail(`--minutes names an adjuster and minutes, as in ${FORMS['--minutes']}.`)
    : succeed({ key: found.value.key, minutes });
}

function numberFrom(text: string, quantity: QuantityKey): Take<number> {
  const parsed = parseQuantity(text, quantity, 'metric');
  return parsed.ok ? parsed : fail(`"${quote(text.trim())}" is no figure that fits here.`);
}
