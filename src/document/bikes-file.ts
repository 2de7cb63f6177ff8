/** The file of several bikes: each with what the shop keeps about it and its setup sheets, and a trainer's own lessons; saved and opened with a report. */
import { countChanges } from './fields/repair.ts';
import * as v from 'valibot';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { LONGEST_ABOUT, LONGEST_NAME } from './fields/bounds.ts';
import type { BikeDocument } from './document.ts';
import { isJsonObject, ownValue, showJson, type Json, type JsonObject } from './json/json.ts';
import { openJson } from './open-json.ts';
import type { OpenReason } from './json/open-reason.ts';
import { openSheetJson } from './open-sheet.ts';
import { readJson } from './json/read-json.ts';
import { documentJson } from './save-document.ts';
import { sheetJson } from './save-sheet.ts';
import type { Sheet } from './sheet.ts';

export const BIKES_FORMAT = 'sidestance-bikes';
export const BIKES_SCHEMA = 1;

/** The largest file of several bikes, in characters: a shop's years of bikes with their sheets. */
export const LARGEST_BIKES_TEXT = 300_000_000;

export interface FiledSheet {
  readonly id: string;
  readonly sheet: Sheet;
}

/** A picture of a bike in the file, as the file it was taken from, in letters of base 64. */
export interface FiledPicture {
  /** Milliseconds since 1970, UTC. */
  readonly keptAt: number;
  /** What kind of picture, such as image/jpeg. */
  readonly type: string;
  readonly data: string;
}

/** A bike in the file, under the id that it has in the store it came from. */
export interface FiledBike {
  readonly id: string;
  readonly card: {
    readonly owner: string;
    readonly notes: string;
    readonly tags: readonly string[];
    readonly archived: boolean;
  };
  readonly document: BikeDocument;
  readonly sheets: readonly FiledSheet[];
  /** Left out where it has none. */
  readonly pictures?: readonly FiledPicture[];
}

/** A trainer's own lesson in the file. What a lesson may hold is judged where it is opened. */
export interface FiledLessonJson {
  readonly id: string;
  /** When it was made. Milliseconds since 1970, UTC. */
  readonly madeAt: number;
  readonly lesson: JsonObject;
}

export interface OpenedBikes {
  readonly bikes: readonly FiledBike[];
  readonly lessons: readonly FiledLessonJson[];
  /** What could not be opened or was repaired, a sentence each. */
  readonly report: readonly string[];
}

/** The text of a file with these bikes and lessons; `savedAt` in ms since 1970, UTC. */
export function saveBikes(
  bikes: readonly FiledBike[],
  savedAt: number,
  lessons: readonly FiledLessonJson[] = [],
): string {
  const filed = {
    format: BIKES_FORMAT,
    schema: BIKES_SCHEMA,
    savedAt,
    bikes: bikes.map(({ id, card, document, sheets, pictures }) => ({
      id,
      card,
      bike: documentJson(document),
      sheets: sheets.map(({ id: sheetId, sheet }) => ({ id: sheetId, sheet: sheetJson(sheet) })),
      ...(pictures && { pictures }),
    })),
    ...(lessons.length > 0 && { lessons }),
  };
  return `${JSON.stringify(filed, null, 1)}\n`;
}

/** Whether parsed JSON says that it is a file of several bikes. */
export function isBikesJson(json: Json): boolean {
  return isJsonObject(json) && ownValue(json, 'format') === BIKES_FORMAT;
}

/** Opens the text of such a file. A bike, sheet or lesson that cannot be used is left out and named; the others open. Never throws. */
export function openBikes(text: string): Result<OpenedBikes, OpenReason> {
  const json = readJson(text, LARGEST_BIKES_TEXT);
  return json.ok ? openBikesJson(json.value) : json;
}

/** The same for JSON that is parsed already. */
export function openBikesJson(json: Json): Result<OpenedBikes, OpenReason> {
  if (!isJsonObject(json) || !isBikesJson(json))
    return fail({
      kind: 'notOurs',
      sentence: `The file does not hold several bikes: it does not say "format": "${BIKES_FORMAT}".`,
    });
  const schema = ownValue(json, 'schema');
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1)
    return fail({
      kind: 'schemaUnreadable',
      path: 'schema',
      sentence: `The file does not say which schema it follows: "schema" is ${showJson(schema)} but must be a whole number from 1.`,
    });
  if (schema > BIKES_SCHEMA)
    return fail({
      kind: 'newer',
      path: 'schema',
      sentence: `The file was saved by a newer Sidestance (schema ${schema}); this one reads up to schema ${BIKES_SCHEMA}.`,
    });
  const given = ownValue(json, 'bikes');
  if (!Array.isArray(given))
    return fail({
      kind: given === undefined ? 'fieldMissing' : 'fieldWrong',
      path: 'bikes',
      sentence: `The file’s bikes are ${showJson(given)}, not a list.`,
    });
  const report: string[] = [];
  const bikes = given.flatMap((each: Json, i): FiledBike[] => {
    const bike = bikeOf(each, `Bike ${i + 1} of the file`, report);
    return bike === null ? [] : [bike];
  });
  return succeed({ bikes, lessons: lessonsOf(json, report), report });
}

function lessonsOf(json: JsonObject, report: string[]): FiledLessonJson[] {
  const given = ownValue(json, 'lessons') ?? [];
  if (!Array.isArray(given)) {
    report.push(`The file’s lessons are ${showJson(given)}, not a list; left out.`);
    return [];
  }
  return given.flatMap((each: Json, i): FiledLessonJson[] => {
    const read = v.safeParse(lessonEntry, each);
    const lesson = isJsonObject(each) ? ownValue(each, 'lesson') : undefined;
    if (read.success && isJsonObject(lesson)) return [{ ...read.output, lesson }];
    report.push(`Lesson ${i + 1} of the file was left out: it has no id, or nothing under “lesson”.`);
    return [];
  });
}

const id = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_NAME));
const lessonEntry = v.object({
  id,
  madeAt: v.fallback(v.pipe(v.number(), v.finite()), 0),
});
/** Four letters hold three bytes; the last four may end in signs that hold none. */
const BASE_64 = /^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/;
const picture = v.object({
  keptAt: v.fallback(v.pipe(v.number(), v.finite()), 0),
  type: v.pipe(v.string(), v.regex(/^image\/[\w.+-]{1,40}$/)),
  data: v.pipe(v.string(), v.minLength(1), v.regex(BASE_64)),
});
const card = v.object({
  owner: v.fallback(v.pipe(v.string(), v.maxLength(LONGEST_NAME)), ''),
  notes: v.fallback(v.pipe(v.string(), v.maxLength(LONGEST_ABOUT)), ''),
  tags: v.fallback(v.array(v.pipe(v.string(), v.maxLength(LONGEST_NAME))), []),
  archived: v.fallback(v.boolean(), false),
});
const NOTHING_NOTED = { owner: '', notes: '', tags: [], archived: false };

function bikeOf(json: Json, called: string, report: string[]): FiledBike | null {
  const entry: JsonObject = isJsonObject(json) ? json : {};
  const named = v.safeParse(id, ownValue(entry, 'id'));
  if (!named.success) {
    report.push(`${called} was left out: its id is ${showJson(ownValue(entry, 'id'))}.`);
    return null;
  }
  const opened = openJson(ownValue(entry, 'bike') ?? null);
  if (!opened.ok) {
    report.push(`${called} was left out. ${opened.reason.sentence}`);
    return null;
  }
  const { document, repairs } = opened.value;
  const { name } = document.bike;
  if (repairs.length > 0)
    report.push(
      `${name} was opened with ${countChanges(repairs)} repairs, the first: ${repairs[0].sentence}`,
    );
  const noted = v.safeParse(card, ownValue(entry, 'card'));
  const given = ownValue(entry, 'sheets');
  if (given !== undefined && !Array.isArray(given))
    report.push(`The sheets of ${name} are ${showJson(given)}, not a list; left out.`);
  const sheets = (Array.isArray(given) ? given : []).flatMap((each: Json, i): FiledSheet[] => {
    const sheet = sheetOf(each, `Sheet ${i + 1} of ${name}`, report);
    return sheet === null ? [] : [sheet];
  });
  const pictures = picturesOf(ownValue(entry, 'pictures'), name, report);
  return {
    id: named.output,
    card: noted.success ? noted.output : NOTHING_NOTED,
    document,
    sheets,
    ...(pictures.length > 0 && { pictures }),
  };
}

function picturesOf(given: Json | undefined, name: string, report: string[]): FiledPicture[] {
  if (given !== undefined && !Array.isArray(given))
    report.push(`The pictures of ${name} are ${showJson(given)}, not a list; left out.`);
  return (Array.isArray(given) ? given : []).flatMap((each: Json, i): FiledPicture[] => {
    const read = v.safeParse(picture, each);
    if (read.success) return [read.output];
    report.push(`Picture ${i + 1} of ${name} was left out: it is damaged.`);
    return [];
  });
}

function sheetOf(json: Json, called: string, report: string[]): FiledSheet | null {
  const entry: JsonObject = isJsonObject(json) ? json : {};
  const named = v.safeParse(id, ownValue(entry, 'id'));
  if (!named.success) {
    report.push(`${called} was left out: its id is ${showJson(ownValue(entry, 'id'))}.`);
    return null;
  }
  const opened = openSheetJson(ownValue(entry, 'sheet') ?? null);
  if (!opened.ok) {
    report.push(`${called} was left out. ${opened.reason.sentence}`);
    return null;
  }
  const { sheet, repairs } = opened.value;
  if (repairs.length > 0)
    report.push(
      `${called} was opened with ${countChanges(repairs)} repairs, the first: ${repairs[0].sentence}`,
    );
  return { id: named.output, sheet };
}
