/** Opens a saved bike: from parsed JSON to a document and a list of repairs, or to the reason why not. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { BIKE_PART } from './fields/bike-fields.ts';
import { LONGEST_NAME } from './fields/bounds.ts';
import { FORMAT, SCHEMA, type Baseline, type BikeDocument, type BikeWithSetup } from './document.ts';
import type { Part } from './fields/field.ts';
import { isJsonObject, ownValue, showJson, type Json, type JsonObject } from './json/json.ts';
import { measureOf } from './measure.ts';
import { runMigrations } from './migrations.ts';
import type { OpenReason } from './json/open-reason.ts';
import { noteUnknownKeys, readPart, type Fault } from './fields/read-part.ts';
import type { Repair } from './fields/repair.ts';
import { SETUP_PART } from './fields/setup-fields.ts';

export interface Opened {
  readonly document: BikeDocument;
  /** Every change made on the way; empty when the file was whole and of the present schema. */
  readonly repairs: readonly Repair[];
}

/** The fields of a file, and `$schema`, by which an editor names the published schema. */
const FILE_KEYS = ['format', 'schema', 'bike', 'setup', 'baseline', 'measure', '$schema'];

/**
 * Opens a saved bike that is parsed already. A missing or impossible optional field takes its default, and each such
 * change is a sentence in `repairs`; a missing or impossible essential one refuses the file in words that name it. A
 * bike that cannot stand is still a document: geometry is not judged here. Never throws.
 */
export function openJson(json: Json): Result<Opened, OpenReason> {
  if (!isJsonObject(json) || ownValue(json, 'format') !== FORMAT)
    return fail({
      kind: 'notOurs',
      sentence: `The file is not a Sidestance bike: it does not say "format": "${FORMAT}".`,
    });
  const schema = ownValue(json, 'schema');
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 0)
    return fail({
      kind: 'schemaUnreadable',
      path: 'schema',
      sentence: `The file does not say which schema it follows: "schema" is ${showJson(schema)} but must be a whole number.`,
    });
  if (schema > SCHEMA)
    return fail({
      kind: 'newer',
      path: 'schema',
      sentence: `The file was saved by a newer Sidestance (schema ${schema}); this one reads up to schema ${SCHEMA}.`,
    });
  const repairs: Repair[] = [];
  const current = runMigrations(json, schema, SCHEMA, ({ from, about }) => {
    if (about !== null)
      repairs.push({ path: '', sentence: `The file is of an older schema (${from}): ${about}.` });
  });
  return openCurrent(current, repairs);
}

function openCurrent(json: JsonObject, repairs: Repair[]): Result<Opened, OpenReason> {
  noteUnknownKeys(json, FILE_KEYS, '', repairs);
  const bike = readPart(BIKE_PART, ownValue(json, 'bike'), 'bike');
  const setup = readPart(SETUP_PART, ownValue(json, 'setup'), 'setup');
  const faults = [...bike.faults, ...setup.faults];
  if (faults.length > 0) return fail(reasonOf(faults));
  repairs.push(...bike.repairs, ...setup.repairs);
  const own: BikeWithSetup = { bike: bike.value, setup: setup.value };
  const baseline = baselineOf(ownValue(json, 'baseline'), own, repairs);
  const measure = measureOf(ownValue(json, 'measure'), own.setup, repairs);
  const measured = measure === null ? {} : { measure };
  return succeed({ document: { format: FORMAT, schema: SCHEMA, ...own, baseline, ...measured }, repairs });
}

/** The most faults in one message; nobody reads more. */
const MOST_FAULTS_TOLD = 6;

function reasonOf(faults: readonly Fault[]): OpenReason {
  const [first] = faults;
  const told = faults.slice(0, MOST_FAULTS_TOLD).map((fault) => fault.sentence);
  const more = faults.length - told.length;
  return {
    kind: first.missing ? 'fieldMissing' : 'fieldWrong',
    path: first.path,
    sentence: [...told, ...(more > 0 ? [`${more} more essential fields are missing or wrong.`] : [])].join(
      ' ',
    ),
  };
}

/** A file without a baseline means "the bike as it is here"; a damaged one means the same, with a note. */
function baselineOf(json: Json | undefined, own: BikeWithSetup, repairs: Repair[]): Baseline {
  if (json === undefined) return own;
  if (!isJsonObject(json)) {
    repairs.push({
      path: 'baseline',
      sentence: `baseline is ${showJson(json)}, not a bike and its setup; taken as the file’s own bike and setup.`,
    });
    return own;
  }
  noteUnknownKeys(json, ['name', 'bike', 'setup'], 'baseline', repairs);
  return {
    ...baselineName(ownValue(json, 'name'), repairs),
    bike: halfOf(BIKE_PART, ownValue(json, 'bike'), 'baseline.bike', own.bike, repairs),
    setup: halfOf(SETUP_PART, ownValue(json, 'setup'), 'baseline.setup', own.setup, repairs),
  };
}

function baselineName(json: Json | undefined, repairs: Repair[]): Pick<Baseline, 'name'> {
  if (json === undefined) return {};
  if (typeof json === 'string' && json.length <= LONGEST_NAME) return { name: json };
  repairs.push({
    path: 'baseline.name',
    sentence: `The baseline’s name (baseline.name) is ${showJson(json)} but must be text of at most ${LONGEST_NAME} characters; left out.`,
  });
  return {};
}

function halfOf<T>(part: Part<T>, json: Json | undefined, path: string, own: T, repairs: Repair[]): T {
  if (json === undefined) return own;
  const read = readPart(part, json, path);
  if (read.faults.length > 0) {
    repairs.push({
      path,
      sentence: `${path} cannot be used (${read.faults[0].clause}); taken as the file’s own ${part.words}.`,
    });
    return own;
  }
  repairs.push(...read.repairs);
  return read.value;
}
