/** The rows that a bike was measured by, as they are kept with it: what was typed, never what was found. */
import * as v from 'valibot';
import type { Setup } from '../core/adjusters/setup.ts';
import { LARGEST_LENGTH } from '../core/parts/bounds.ts';
import { LONGEST_ABOUT } from './fields/bounds.ts';
import { isJsonObject, ownValue, showJson, type Json, type JsonObject } from './json/json.ts';
import { noteUnknownKeys, readPart } from './fields/read-part.ts';
import type { Repair } from './fields/repair.ts';
import { SETUP_PART } from './fields/setup-fields.ts';

/**
 * One row. Kind, parts and states are named by key; a key that this program does not know is kept, so that a row of a
 * newer one is not lost.
 */
export interface KeptRow {
  readonly kind: string;
  readonly parts: readonly string[];
  readonly state: string;
  /** The second state of a change between two; null for any other kind. */
  readonly otherState: string | null;
  /** As typed; empty while nothing is. */
  readonly figure: string;
  /** As typed behind it, such as `in`; empty for the metric unit of the kind. */
  readonly unit: string;
  /** Standard deviation, mm, degrees or kg; null for that of the kind. */
  readonly sd: number | null;
  /** How far one part lies behind the other, mm. */
  readonly outOfPlane: number;
  readonly fromOther: boolean;
  /** Left out by the person. */
  readonly off: boolean;
  readonly note: string;
}

export interface KeptMeasure {
  readonly gaugeZeroed: boolean;
  /** Where the adjusters stood while the bike was measured. */
  readonly setup: Setup;
  readonly rows: readonly KeptRow[];
  /** Whether the bike was taken over from these rows: then the travel in `setup` is that at which it was measured. */
  readonly taken?: boolean;
  /** As in the file: they are read with the panel that shows them, and one that cannot be read stays. Left out where there is none. */
  readonly photos?: readonly JsonObject[];
}

/** Far more than anyone measures; keeps a damaged file from filling the page. */
export const MOST_ROWS = 2000;
const LONGEST_KEY = 40;
/** Far more than anyone takes. */
export const MOST_PHOTOS = 20;
/** Longer than any figure that a person types, a tyre's size code included. */
export const LONGEST_FIGURE = 60;
const MOST_PARTS = 4;
/** A standard deviation of zero would make a row count without end, mm, degrees or kg. */
const LEAST_SD = 1e-6;

const key = v.pipe(v.string(), v.maxLength(LONGEST_KEY));
const typed = v.pipe(v.string(), v.maxLength(LONGEST_FIGURE));
const between = (least: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(LARGEST_LENGTH));

/** What a row means where it leaves a value out. */
export const ROW_DEFAULTS = {
  parts: [],
  otherState: null,
  unit: '',
  sd: null,
  outOfPlane: 0,
  fromOther: false,
  off: false,
  note: '',
} as const satisfies Partial<KeptRow>;

const row: v.GenericSchema<unknown, KeptRow> = v.object({
  kind: key,
  parts: v.optional(v.pipe(v.array(key), v.maxLength(MOST_PARTS)), []),
  state: key,
  otherState: v.optional(v.nullable(key), ROW_DEFAULTS.otherState),
  figure: typed,
  unit: v.optional(typed, ROW_DEFAULTS.unit),
  sd: v.optional(v.nullable(between(LEAST_SD)), ROW_DEFAULTS.sd),
  outOfPlane: v.optional(between(0), ROW_DEFAULTS.outOfPlane),
  fromOther: v.optional(v.boolean(), ROW_DEFAULTS.fromOther),
  off: v.optional(v.boolean(), ROW_DEFAULTS.off),
  note: v.optional(v.pipe(v.string(), v.maxLength(LONGEST_ABOUT)), ROW_DEFAULTS.note),
});

/** What the published schema says of the sheet, beside its setup. */
export const MEASURE_LIMITS = {
  rows: MOST_ROWS,
  key: LONGEST_KEY,
  figure: LONGEST_FIGURE,
  parts: MOST_PARTS,
  leastSd: LEAST_SD,
  largest: LARGEST_LENGTH,
  note: LONGEST_ABOUT,
} as const;

/** The sheet of a file; null where it has none. A row that cannot be read is left out, and said. Never throws. */
export function measureOf(json: Json | undefined, setup: Setup, repairs: Repair[]): KeptMeasure | null {
  if (json === undefined || json === null) return null;
  if (!isJsonObject(json)) {
    repairs.push({
      path: 'measure',
      sentence: `What the bike was measured by (measure) is ${showJson(json)}, not a group of values; left out.`,
    });
    return null;
  }
  noteUnknownKeys(json, ['gaugeZeroed', 'setup', 'rows', 'taken', 'photos'], 'measure', repairs);
  const zeroed = ownValue(json, 'gaugeZeroed');
  const photos = photosOf(ownValue(json, 'photos'), repairs);
  return {
    gaugeZeroed: zeroed !== false,
    setup: setupOf(ownValue(json, 'setup'), setup, repairs),
    rows: rowsOf(ownValue(json, 'rows'), repairs),
    ...(ownValue(json, 'taken') === true && { taken: true }),
    ...(photos.length > 0 && { photos }),
  };
}

/** Without a setup of its own the sheet was measured as the file's bike is set. */
function setupOf(json: Json | undefined, own: Setup, repairs: Repair[]): Setup {
  if (json === undefined) return own;
  const read = readPart(SETUP_PART, json, 'measure.setup');
  const [fault] = read.faults;
  if (fault === undefined) {
    repairs.push(...read.repairs);
    return read.value;
  }
  repairs.push({
    path: 'measure.setup',
    sentence: `measure.setup cannot be used (${fault.clause}); taken as the file’s own setup.`,
  });
  return own;
}

/** The groups of values of a list. */
function photosOf(json: Json | undefined, repairs: Repair[]): readonly JsonObject[] {
  return listOf(json, 'photos', repairs, (each) => (isJsonObject(each) ? [each] : [])).slice(0, MOST_PHOTOS);
}

function rowsOf(json: Json | undefined, repairs: Repair[]): readonly KeptRow[] {
  return listOf(json, 'rows', repairs, (each) => {
    const read = v.safeParse(row, each);
    return read.success ? [read.output] : [];
  });
}

/** What can be read of a list; the rest is left out, and said. */
function listOf<Each>(
  json: Json | undefined,
  name: 'photos' | 'rows',
  repairs: Repair[],
  read: (each: Json) => readonly Each[],
): readonly Each[] {
  if (json === undefined) return [];
  const path = `measure.${name}`;
  if (!Array.isArray(json)) {
    repairs.push({ path, sentence: `${path} is ${showJson(json)}, not a list; left out.` });
    return [];
  }
  const given: readonly Json[] = json;
  const good = given.slice(0, MOST_ROWS).flatMap(read);
  const lost = given.length - good.length;
  if (lost > 0)
    repairs.push({
      path,
      sentence: `${lost} of ${given.length} measured ${name} cannot be used and ${lost === 1 ? 'was' : 'were'} left out.`,
    });
  return good;
}
