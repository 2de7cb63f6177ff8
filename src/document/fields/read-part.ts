/** Reads parsed JSON against the fields of a part, replacing what can be replaced and noting every change. */
import * as v from 'valibot';
import { anyPart, type AnyField, type AnyPart, type Leaf, type Part } from './field.ts';
import { isJsonObject, ownValue, quote, showJson, type JsonObject } from '../json/json.ts';
import type { Repair } from './repair.ts';

/** An essential field that is missing or wrong, in a sentence that names it. */
export interface Fault {
  readonly path: string;
  readonly missing: boolean;
  readonly sentence: string;
  /** The sentence within another one, without its full stop. */
  readonly clause: string;
  /** What is wrong, without the place in the file. */
  readonly problem: string;
}

export interface ReadPart<T> {
  /** Only to be used when there is no fault. */
  readonly value: T;
  readonly repairs: readonly Repair[];
  readonly faults: readonly Fault[];
}

interface Notes {
  readonly repairs: Repair[];
  readonly faults: Fault[];
}

/**
 * Reads `json` as the part; `path` is where it stands in the file, such as `baseline.bike`. `known` is a part that was
 * read before: what `json` takes over from it unchanged is not read again. Never throws.
 */
export function readPart<T>(typed: Part<T>, json: unknown, path: string, known?: T): ReadPart<T> {
  const notes: Notes = { repairs: [], faults: [] };
  const value = partOf(anyPart(typed), json, path, notes, known);
  // Built field by field from the table that Part<T> types, so it is a T when no fault was noted.
  return { value: value as T, ...notes };
}

function partOf(each: AnyPart, json: unknown, path: string, notes: Notes, known?: unknown): unknown {
  const given = isJsonObject(json) ? json : undefined;
  if (given === undefined && !hasEssential(each)) {
    // One note for the whole part instead of one for each field in it.
    const fallback = partOf(each, {}, path, { repairs: [], faults: [] });
    if (json !== undefined || saysSomething(each))
      notes.repairs.push(
        replaced(
          each.words,
          path,
          json === undefined ? 'is missing' : `is ${showJson(json)}, not a group of values`,
          inWords(each, fallback),
        ),
      );
    return fallback;
  }
  const source: JsonObject = given ?? {};
  const before: JsonObject = isJsonObject(known) ? known : {};
  const entries = Object.entries(each.fields).map(([key, field]): [string, unknown] => {
    const found = ownValue(source, key);
    const knownHere = ownValue(before, key);
    // The sign of a zero is a change: no file keeps it.
    const unchanged = found !== undefined && Object.is(found, knownHere);
    return [key, unchanged ? found : fieldOf(field, found, `${path}.${key}`, notes, knownHere)];
  });
  noteUnknown(source, each, path, notes);
  return Object.fromEntries(entries);
}

function fieldOf(field: AnyField, json: unknown, path: string, notes: Notes, known: unknown): unknown {
  return field.kind === 'part' ? partOf(field, json, path, notes, known) : leafOf(field, json, path, notes);
}

function leafOf(leaf: Leaf<unknown>, json: unknown, path: string, notes: Notes): unknown {
  if (json === undefined) {
    if (leaf.absent.kind === 'essential') {
      notes.faults.push({
        path,
        missing: true,
        clause: `There is no ${leaf.words} (${path})`,
        sentence: `There is no ${leaf.words} (${path}).`,
        problem: `There is no ${leaf.words}.`,
      });
      return undefined;
    }
    if (leaf.absent.kind === 'assumed')
      notes.repairs.push(replaced(leaf.words, path, 'is missing', value(leaf, leaf.absent.value)));
    return leaf.absent.value;
  }
  const read = v.safeParse(leaf.validator, json);
  if (read.success) {
    noteLeftOut(json, read.output, path, notes.repairs);
    return read.output;
  }
  const wrong = `is ${showJson(json)} but must be ${leaf.expected}`;
  if (leaf.absent.kind === 'essential' || leaf.refuseWrong) {
    const clause = `The ${leaf.words} (${path}) ${wrong}`;
    notes.faults.push({
      path,
      missing: false,
      clause,
      sentence: `${clause}.`,
      problem: `The ${leaf.words} ${wrong}.`,
    });
    return undefined;
  }
  const taken = leaf.nearest?.(json) ?? leaf.absent.value;
  notes.repairs.push(replaced(leaf.words, path, wrong, value(leaf, taken)));
  return taken;
}

/** That something was wrong and what was taken instead. */
function replaced(words: string, path: string, wrong: string, taken: string): Repair {
  return {
    path,
    sentence: `The ${words} (${path}) ${wrong}; taken as ${taken}.`,
    problem: `The ${words} ${wrong}.`,
  };
}

const UNITS: Readonly<Record<string, string>> = { length: ' mm', angle: '°', mass: ' kg' };

function value(leaf: Leaf<unknown>, of: unknown): string {
  if (leaf.standsIn !== undefined && of === absentValue(leaf)) return leaf.standsIn;
  if (of === null) return 'none';
  if (leaf.quantity !== null) return `${String(of)}${UNITS[leaf.quantity] ?? ''}`;
  return showJson(of);
}

function absentValue({ absent }: Leaf<unknown>): unknown {
  return absent.kind === 'essential' ? undefined : absent.value;
}

/** Values named one by one where a whole group was missing. */
const MOST_VALUES_TOLD = 6;

/** What stands in for a group that was missing, such as "300 mm forward of the pivot, 200 mm above the pivot". */
function inWords(each: AnyPart, fallback: unknown): string {
  const told = valuesIn(each, fallback);
  return told.length > MOST_VALUES_TOLD ? 'the usual value of each of its fields' : told.join(', ');
}

function valuesIn(each: AnyPart, fallback: unknown): string[] {
  return Object.entries(each.fields).flatMap(([key, field]) => {
    const of = isJsonObject(fallback) ? fallback[key] : undefined;
    if (field.kind === 'part') return valuesIn(field, of);
    const place = `${each.words}, `;
    // A place's fields are named after it, and the sentence has named it already.
    if (field.words.startsWith(place)) return [`${value(field, of)} ${field.words.slice(place.length)}`];
    return [`${field.words} ${value(field, of)}`];
  });
}

function hasEssential(field: AnyField): boolean {
  return field.kind === 'part'
    ? Object.values(field.fields).some(hasEssential)
    : field.absent.kind === 'essential';
}

function saysSomething(field: AnyField): boolean {
  return field.kind === 'part'
    ? Object.values(field.fields).some(saysSomething)
    : field.absent.kind === 'assumed';
}

/** Notes what a validator left out of a value that holds others: a tyre's second size, a row's third number. */
function noteLeftOut(json: unknown, kept: unknown, path: string, repairs: Repair[]): void {
  if (Array.isArray(json) && Array.isArray(kept))
    json.forEach((each, i) => noteLeftOut(each, kept[i], `${path}[${i}]`, repairs));
  else if (isJsonObject(json) && isJsonObject(kept)) noteUnknownKeys(json, Object.keys(kept), path, repairs);
}

/** A file of something else could hold thousands of names; this many are listed one by one. */
const MOST_UNKNOWN_NAMED = 12;

function noteUnknown(source: JsonObject, each: AnyPart, path: string, notes: Notes): void {
  noteUnknownKeys(source, Object.keys(each.fields), path, notes.repairs);
}

/** Notes the names in `source` that are not among `known`; they are left out of the document. */
export function noteUnknownKeys(
  source: JsonObject,
  known: readonly string[],
  path: string,
  repairs: Repair[],
): void {
  const unknown = Object.keys(source).filter((key) => !known.includes(key));
  const prefix = path === '' ? '' : `${path}.`;
  unknown.slice(0, MOST_UNKNOWN_NAMED).forEach((key) => {
    // A line break in a name must not break its line in the list.
    const name = `${prefix}${quote(JSON.stringify(key).slice(1, -1))}`;
    repairs.push({ path: name, sentence: `${name} is not used by this file format and was left out.` });
  });
  const more = unknown.length - MOST_UNKNOWN_NAMED;
  if (more > 0)
    repairs.push({
      path,
      sentence: `${more} more unknown fields ${path === '' ? '' : `of ${path} `}were left out.`,
      changes: more,
    });
}
