/** Opens a lesson: from text to a lesson and a list of what does not fit here, or to the reason why not. */
import * as v from 'valibot';
import { ADJUSTERS } from '../core/adjusters/all-adjusters.ts';
import type { NumberAdjusterKey } from '../core/adjusters/setup.ts';
import { trialFigure, type UnknownName } from '../core/effects/trial.ts';
import type { Turn } from '../core/effects/turn.ts';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import type { BikeWithSetup } from '../document/document.ts';
import { LONGEST_ABOUT, LONGEST_NAME } from '../document/fields/bounds.ts';
import { noteUnknownKeys } from '../document/fields/read-part.ts';
import type { Repair } from '../document/fields/repair.ts';
import {
  isJsonObject,
  ownValue,
  quote,
  showJson,
  type Json,
  type JsonObject,
} from '../document/json/json.ts';
import type { OpenReason } from '../document/json/open-reason.ts';
import { readJson } from '../document/json/read-json.ts';
import { openJson } from '../document/open-json.ts';
import {
  LARGEST_TURN,
  LESSON_FORMAT,
  LESSON_SCHEMA,
  MOST_MINUTES,
  MOST_NOTES,
  MOST_SHOWN,
  MOST_STEPS,
  MOST_TURNS,
  type FiledLesson,
} from './lesson-file.ts';
import type { LessonCheck, LessonStep, UnreadPrepare, UnreadTrial } from './lesson.ts';

export interface OpenedLesson {
  readonly filed: FiledLesson;
  readonly repairs: readonly Repair[];
}

const FILE_KEYS = [
  ...['format', 'schema', 'title', 'goal', 'minutes', 'caution', 'prepare', 'shows', 'steps', 'check'],
  ...['notes', 'asSet', '$schema'],
];

const name = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(LONGEST_NAME));
const text = v.pipe(v.string(), v.maxLength(LONGEST_ABOUT));
const minutes = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(MOST_MINUTES));
const names = v.pipe(v.array(name), v.maxLength(MOST_SHOWN));
const notes = v.pipe(v.array(text), v.maxLength(MOST_NOTES));
const amount = v.pipe(v.number(), v.minValue(-LARGEST_TURN), v.maxValue(LARGEST_TURN));

const numberAdjusters = ADJUSTERS.filter(({ holds }) => holds === 'number' || holds === 'wholeNumber');
/** Teeth come whole. */
const wholeKeys = ADJUSTERS.filter(({ holds }) => holds === 'wholeNumber').map(({ key }) => key as string);
const adjuster = v.picklist(numberAdjusters.map(({ key }) => key as NumberAdjusterKey));
const state = v.picklist(RIDE_STATES.map(({ key }) => key));

/** A turn of one of these adjusters. */
function turnOf<Key extends string>(key: v.GenericSchema<unknown, Key>) {
  return v.pipe(
    v.union([
      v.strictObject({ adjuster: key, by: amount }),
      v.strictObject({ adjuster: key, times: amount }),
      v.strictObject({ adjuster: key, to: amount }),
      v.strictObject({ adjuster: key, keep: name }),
    ]),
    v.check((each) => {
      if (!wholeKeys.includes(each.adjuster) || 'keep' in each) return true;
      return !('times' in each) && Number.isInteger('by' in each ? each.by : each.to);
    }),
  );
}

/** The fields of a trial with one of these adjusters, in one of these ride states. */
function trialOf<Key extends string, State extends string>(
  key: v.GenericSchema<unknown, Key>,
  ridden: v.GenericSchema<unknown, State>,
) {
  const turns = v.pipe(v.array(turnOf(key)), v.maxLength(MOST_TURNS));
  return { act: text, from: v.optional(turns), turns, state: ridden, figure: name };
}

const turns = v.pipe(v.array(turnOf(adjuster)), v.maxLength(MOST_TURNS));
const anyTurns = v.pipe(
  v.array(turnOf(v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_NAME)))),
  v.maxLength(MOST_TURNS),
);
const trial = trialOf(adjuster, state);
/** A trial that may name adjusters and ride states which this program does not have. */
const anyKey = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_NAME));
const anyTrial = trialOf(anyKey, anyKey);
const texts = {
  point: v.nullable(v.picklist(['more', 'less', 'same'])),
  because: text,
  otherwise: text,
};
const step = v.object({ ...trial, ...texts });
const anyStep = v.object({ ...anyTrial, ...texts });
const check = v.object(trial);
const anyCheck = v.object(anyTrial);

/**
 * Opens the text of a lesson. A step that says nothing usable is left out and named; one whose adjuster, ride state or
 * reading this program does not have stays, is named, and is skipped as the lesson runs. Never throws.
 */
export function openLesson(given: string): Result<OpenedLesson, OpenReason> {
  const json = readJson(given);
  return json.ok ? openLessonJson(json.value) : json;
}

/** Opens a lesson that was read as JSON already. Never throws. */
export function openLessonJson(json: Json): Result<OpenedLesson, OpenReason> {
  if (!isJsonObject(json) || ownValue(json, 'format') !== LESSON_FORMAT)
    return fail({
      kind: 'notOurs',
      sentence: `This is not a lesson: it does not say "format": "${LESSON_FORMAT}".`,
    });
  const schema = ownValue(json, 'schema');
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1)
    return fail({
      kind: 'schemaUnreadable',
      path: 'schema',
      sentence: `The lesson does not say which schema it follows: "schema" is ${showJson(schema)} but must be a whole number from 1.`,
    });
  if (schema > LESSON_SCHEMA)
    return fail({
      kind: 'newer',
      path: 'schema',
      sentence: `The lesson was saved by a newer Sidestance (schema ${schema}); this one reads up to schema ${LESSON_SCHEMA}.`,
    });
  return openCurrent(json);
}

function openCurrent(json: JsonObject): Result<OpenedLesson, OpenReason> {
  const repairs: Repair[] = [];
  noteUnknownKeys(json, FILE_KEYS, '', repairs);
  const title = v.safeParse(name, ownValue(json, 'title'));
  if (!title.success)
    return fail(wrong(json, 'title', `The lesson’s title`, `text of at most ${LONGEST_NAME} characters`));
  const question = checkOf(json, repairs);
  if (question === null)
    return fail(wrong(json, 'check', 'The question at the end', `a question that this program can ask`));
  const prepare = v.safeParse(v.optional(turns, []), ownValue(json, 'prepare'));
  const unreadPrepare = prepare.success ? null : unreadPrepareOf(json, repairs);
  if (!prepare.success && unreadPrepare === null)
    return fail(wrong(json, 'prepare', 'How the bike is made ready', `a list of adjusters to turn`));
  const steps = stepsOf(json, repairs);
  if (steps.length === 0)
    return fail({
      kind: ownValue(json, 'steps') === undefined ? 'fieldMissing' : 'fieldWrong',
      path: 'steps',
      sentence: ['The lesson has no step that can be used.', ...repairs.map(({ sentence }) => sentence)]
        .slice(0, 4)
        .join(' '),
    });
  const shows = optional(json, 'shows', names, [], repairs);
  const caution = optional(json, 'caution', text, '', repairs);
  const lesson = {
    key: 'filed',
    title: title.output,
    goal: optional(json, 'goal', text, '', repairs),
    minutes: optional(json, 'minutes', minutes, 10, repairs),
    ...(caution !== '' && { caution }),
    prepare: prepare.success ? prepare.output : [],
    ...(unreadPrepare !== null && { unreadPrepare }),
    shows,
    steps,
    check: question,
    notes: optional(json, 'notes', notes, [], repairs),
  };
  noteNotThere([...steps, lesson.check], lesson.prepare, shows, repairs);
  return succeed({ filed: { lesson, asSet: bikeOf(json, repairs) }, repairs });
}

function wrong(json: JsonObject, path: string, what: string, expected: string): OpenReason {
  const found = ownValue(json, path);
  return {
    kind: found === undefined ? 'fieldMissing' : 'fieldWrong',
    path,
    sentence: `${what} (${path}) is ${showJson(found)} but must be ${expected}.`,
  };
}

function stepsOf(json: JsonObject, repairs: Repair[]): LessonStep[] {
  const given = ownValue(json, 'steps');
  if (!Array.isArray(given)) return [];
  if (given.length > MOST_STEPS)
    repairs.push({
      path: 'steps',
      sentence: `The lesson has ${given.length} steps; those after the first ${MOST_STEPS} were left out.`,
    });
  return given.slice(0, MOST_STEPS).flatMap((each: Json, index): LessonStep[] => {
    const read = v.safeParse(step, each);
    if (read.success) return [read.output as LessonStep];
    const any = v.safeParse(anyStep, each);
    if (any.success && isJsonObject(each)) {
      const { act, figure, point, because, otherwise } = any.output;
      const unread = unreadOf(each, any.output);
      noteUnread(`Step ${index + 1}`, `steps[${index}]`, unread, repairs);
      return [{ ...NOTHING_DONE, act, figure, point, because, otherwise, unread }];
    }
    const [issue] = read.issues;
    const field = v.getDotPath(issue) ?? '';
    const path = `steps[${index}]${field === '' ? '' : `.${field}`}`;
    repairs.push({
      path,
      sentence: `Step ${index + 1} was left out: ${quote(path)} is ${showJson(issue.input)}, which this program cannot use.`,
    });
    return [];
  });
}

function checkOf(json: JsonObject, repairs: Repair[]): LessonCheck | null {
  const given = ownValue(json, 'check') ?? null;
  const read = v.safeParse(check, given);
  if (read.success) return read.output as LessonCheck;
  const any = v.safeParse(anyCheck, given);
  if (!any.success || !isJsonObject(given)) return null;
  const { act, figure } = any.output;
  const unread = unreadOf(given, any.output);
  noteUnread('The question', 'check', unread, repairs);
  return { ...NOTHING_DONE, act, figure, unread };
}

/** A list of turns that names an adjuster which this program does not have; null where it is no such list. */
function unreadPrepareOf(json: JsonObject, repairs: Repair[]): UnreadPrepare | null {
  const filed = ownValue(json, 'prepare');
  const any = v.safeParse(anyTurns, filed);
  const unknown = any.success ? any.output.find((each) => !v.is(adjuster, each.adjuster)) : undefined;
  if (!Array.isArray(filed) || unknown === undefined) return null;
  const name = quote(unknown.adjuster);
  repairs.push({
    path: 'prepare',
    sentence: `The lesson makes the bike ready with the adjuster “${name}”, which this program does not have. It stays in the lesson, and its steps are skipped.`,
  });
  return { filed, no: { ok: false, reason: 'unknownAdjuster', name } };
}

/** What stands in place of a trial that cannot be made; it is never tried. */
const NOTHING_DONE = { turns: [], state: 'riderUp' } as const;

/** The first name in a trial that this program does not have. */
function unreadOf(filed: JsonObject, any: v.InferOutput<typeof anyCheck>): UnreadTrial {
  const named = [...(any.from ?? []), ...any.turns].map((each) => each.adjuster);
  const unknown = named.find((each) => !v.is(adjuster, each));
  const no: UnknownName =
    unknown === undefined
      ? { ok: false, reason: 'unknownRideState', name: quote(any.state) }
      : { ok: false, reason: 'unknownAdjuster', name: quote(unknown) };
  return { filed, no };
}

function noteUnread(what: string, path: string, { no }: UnreadTrial, repairs: Repair[]): void {
  const noun = no.reason === 'unknownAdjuster' ? 'adjuster' : 'ride state';
  repairs.push({
    path,
    sentence: `${what} names the ${noun} “${no.name}”, which this program does not have. It stays in the lesson and is skipped.`,
  });
}

function optional<T>(
  json: JsonObject,
  key: string,
  schema: v.GenericSchema<unknown, T>,
  fallback: T,
  repairs: Repair[],
): T {
  const found = ownValue(json, key);
  if (found === undefined) return fallback;
  const read = v.safeParse(schema, found);
  if (read.success) return read.output;
  repairs.push({ path: key, sentence: `${key} is ${showJson(found)} and cannot be used; left out.` });
  return fallback;
}

/** Names the readings that a lesson looks at and this program does not have. */
function noteNotThere(
  trials: readonly (LessonStep | LessonCheck)[],
  prepare: readonly Turn[],
  shows: readonly string[],
  repairs: Repair[],
): void {
  const isReading = (key: string): boolean => READINGS.some((each) => each.key === key);
  const kept = (each: readonly Turn[]): string[] => each.flatMap((one) => ('keep' in one ? [one.keep] : []));
  trials.forEach(({ figure, from = [], turns: made }, index) => {
    const what = index === trials.length - 1 ? 'The question' : `Step ${index + 1}`;
    const missing = [
      ...(trialFigure(figure) === null ? [figure] : []),
      ...kept([...from, ...made]).filter((key) => !isReading(key)),
    ];
    for (const key of missing)
      repairs.push({
        path: index === trials.length - 1 ? 'check' : `steps[${index}]`,
        sentence: `${what} names the reading “${quote(key)}”, which this program does not have. It stays in the lesson and is skipped.`,
      });
  });
  for (const key of [...shows, ...kept(prepare)].filter((each) => !isReading(each)))
    repairs.push({
      path: 'shows',
      sentence: `The lesson names the reading “${quote(key)}”, which this program does not have.`,
    });
}

function bikeOf(json: JsonObject, repairs: Repair[]): BikeWithSetup | null {
  const given = ownValue(json, 'asSet');
  if (given === undefined) return null;
  const opened = openJson(given);
  if (!opened.ok) {
    repairs.push({
      path: 'asSet',
      sentence: `The lesson’s bike cannot be used, so it runs on yours. ${opened.reason.sentence}`,
    });
    return null;
  }
  repairs.push(...opened.value.repairs);
  const { bike, setup } = opened.value.document;
  return { bike, setup };
}
