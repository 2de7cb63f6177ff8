/** Opens a setup sheet: from text to a sheet and a list of repairs, or to the reason why not. */
import * as v from 'valibot';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { LONGEST_ABOUT, LONGEST_NAME } from './fields/bounds.ts';
import { isJsonObject, ownValue, showJson, type Json, type JsonObject } from './json/json.ts';
import { openJson } from './open-json.ts';
import type { OpenReason } from './json/open-reason.ts';
import { readJson } from './json/read-json.ts';
import { noteUnknownKeys } from './fields/read-part.ts';
import type { Repair } from './fields/repair.ts';
import { NOTES } from './sheet-notes.ts';
import { SHEET_FORMAT, SHEET_SCHEMA, type Sheet } from './sheet.ts';

export interface OpenedSheet {
  readonly sheet: Sheet;
  readonly repairs: readonly Repair[];
}

const FILE_KEYS = [
  'format',
  'schema',
  'day',
  'madeAt',
  'notes',
  'further',
  'readings',
  'u',
  'corrections',
  'asSet',
  '$schema',
];

/** More than any workshop adds, so that a damaged file does not fill the page. */
export const MOST_FURTHER = 200;
export const MOST_CORRECTIONS = 10_000;
/** The latest moment of a date, ms since 1970, by ECMA-262. */
export const LATEST_MS = 8.64e15;

const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** Whether a text is a day of the calendar, as 2026-11-26. */
export function isDay(text: string): boolean {
  if (!DAY.test(text)) return false;
  const date = new Date(`${text}T00:00:00Z`);
  return Number.isFinite(date.getTime()) && date.toISOString().startsWith(text);
}

const name = v.pipe(v.string(), v.maxLength(LONGEST_NAME));
const text = v.pipe(v.string(), v.maxLength(LONGEST_ABOUT));
const moment = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(LATEST_MS));
const further = v.object({ name, text });
const correction = v.object({ at: moment, what: name, from: text, to: text });
const figure = v.pipe(v.number(), v.finite());

/** Opens the text of a setup sheet. What is wrong beside its bike and its day is left out and said. Never throws. */
export function openSheet(given: string): Result<OpenedSheet, OpenReason> {
  const json = readJson(given);
  return json.ok ? openSheetJson(json.value) : json;
}

/** The same for JSON that is parsed already. */
export function openSheetJson(json: Json): Result<OpenedSheet, OpenReason> {
  if (!isJsonObject(json) || ownValue(json, 'format') !== SHEET_FORMAT)
    return fail({
      kind: 'notOurs',
      sentence: `This is not a setup sheet: it does not say "format": "${SHEET_FORMAT}".`,
    });
  const schema = ownValue(json, 'schema');
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1)
    return fail({
      kind: 'schemaUnreadable',
      path: 'schema',
      sentence: `The sheet does not say which schema it follows: "schema" is ${showJson(schema)} but must be a whole number from 1.`,
    });
  if (schema > SHEET_SCHEMA)
    return fail({
      kind: 'newer',
      path: 'schema',
      sentence: `The sheet was saved by a newer Sidestance (schema ${schema}); this one reads up to schema ${SHEET_SCHEMA}.`,
    });
  const day = ownValue(json, 'day');
  if (typeof day !== 'string' || !isDay(day))
    return fail({
      kind: day === undefined ? 'fieldMissing' : 'fieldWrong',
      path: 'day',
      sentence: `The sheet’s day (day) is ${showJson(day)} but must be a day such as 2026-11-26.`,
    });
  const asSet = openJson(ownValue(json, 'asSet') ?? null);
  if (!asSet.ok)
    return fail({
      ...asSet.reason,
      sentence: `The sheet’s bike cannot be used. ${asSet.reason.sentence}`,
    });
  const repairs: Repair[] = [...asSet.value.repairs];
  noteUnknownKeys(json, FILE_KEYS, '', repairs);
  const { bike, setup } = asSet.value.document;
  return succeed({
    sheet: {
      format: SHEET_FORMAT,
      schema: SHEET_SCHEMA,
      day,
      madeAt: momentOf(json, repairs),
      notes: notesOf(json, repairs),
      further: listOf(json, 'further', further, MOST_FURTHER, repairs),
      readings: figuresOf(json, 'readings', repairs),
      ...(ownValue(json, 'u') !== undefined && { u: spreadsOf(json, repairs) }),
      corrections: listOf(json, 'corrections', correction, MOST_CORRECTIONS, repairs),
      bike,
      setup,
    },
    repairs,
  });
}

function momentOf(json: JsonObject, repairs: Repair[]): number {
  const madeAt = ownValue(json, 'madeAt');
  const read = v.safeParse(moment, madeAt);
  if (read.success) return read.output;
  repairs.push({
    path: 'madeAt',
    sentence: `When the sheet was made (madeAt) is ${showJson(madeAt)}, not a moment; taken as the first of its day.`,
  });
  return 0;
}

function notesOf(json: JsonObject, repairs: Repair[]): Record<string, string> {
  const given = ownValue(json, 'notes');
  if (given === undefined) return {};
  if (!isJsonObject(given)) {
    repairs.push({
      path: 'notes',
      sentence: `The notes are ${showJson(given)}, not a group of texts; left out.`,
    });
    return {};
  }
  noteUnknownKeys(
    given,
    NOTES.map(({ key }) => key),
    'notes',
    repairs,
  );
  return Object.fromEntries(
    NOTES.flatMap(({ key, label }) => {
      const found = ownValue(given, key);
      if (found === undefined) return [];
      const read = v.safeParse(text, found);
      if (read.success) return [[key, read.output]];
      repairs.push({
        path: `notes.${key}`,
        sentence: `The note “${label}” (notes.${key}) is ${showJson(found)} but must be text of at most ${LONGEST_ABOUT} characters; left out.`,
      });
      return [];
    }),
  );
}

function listOf<T>(
  json: JsonObject,
  key: string,
  each: v.GenericSchema<unknown, T>,
  most: number,
  repairs: Repair[],
): T[] {
  const given = ownValue(json, key);
  if (given === undefined) return [];
  if (!Array.isArray(given)) {
    repairs.push({ path: key, sentence: `${key} is ${showJson(given)}, not a list; left out.` });
    return [];
  }
  const good = given.slice(0, most).flatMap((entry): T[] => {
    const read = v.safeParse(each, entry);
    return read.success ? [read.output] : [];
  });
  const lost = given.length - good.length;
  if (lost > 0)
    repairs.push({
      path: key,
      sentence: `${lost} of ${given.length} entries of ${key} cannot be used and ${lost === 1 ? 'was' : 'were'} left out.`,
    });
  return good;
}

/** Readings of any name: a former build may have had others, and they are kept by value. */
function figuresOf(
  json: JsonObject,
  from: 'readings' | 'u',
  repairs: Repair[],
): Record<string, Record<string, number>> {
  const what = from === 'readings' ? 'kept readings' : 'standard deviations of the kept readings (u)';
  const given = ownValue(json, from);
  if (given === undefined) return {};
  if (!isJsonObject(given)) {
    repairs.push({
      path: from,
      sentence: `The ${what} are ${showJson(given)}, not figures by ride state; left out.`,
    });
    return {};
  }
  let lost = 0;
  const kept = Object.entries(given).map(([state, figures]): [string, Record<string, number>] => {
    if (!isJsonObject(figures)) {
      lost++;
      return [state, {}];
    }
    const good = Object.entries(figures).flatMap(([key, value]): [string, number][] => {
      const read = v.safeParse(figure, value);
      if (read.success) return [[key, read.output]];
      lost++;
      return [];
    });
    return [state, Object.fromEntries(good)];
  });
  if (lost > 0)
    repairs.push({
      path: from,
      sentence: `${lost} of the ${what} are not numbers and were left out.`,
    });
  return Object.fromEntries(kept);
}

/** Standard deviations of the readings: one below zero says nothing and is left out. */
function spreadsOf(json: JsonObject, repairs: Repair[]): Record<string, Record<string, number>> {
  let lost = 0;
  const kept = Object.entries(figuresOf(json, 'u', repairs)).map(([state, figures]) => {
    const good = Object.entries(figures).filter(([, u]) => u >= 0);
    lost += Object.keys(figures).length - good.length;
    return [state, Object.fromEntries(good)] as const;
  });
  if (lost > 0)
    repairs.push({
      path: 'u',
      sentence: `${lost} of the standard deviations of the kept readings (u) are below zero and were left out.`,
    });
  return Object.fromEntries(kept);
}
