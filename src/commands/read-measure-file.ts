/** Reads a sheet of measurements that a person wrote by hand or the page saved. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { MEASURE_KINDS } from '../core/measure/kinds/all-kinds.ts';
import { MEASURE_STATES } from '../core/measure/held/all-measure-states.ts';
import { MEASURE_PARTS, MEASURE_PART_KEYS } from '../core/measure/held/measure-parts.ts';
import type { StartingBike } from '../core/measure/held/starting-bike.ts';
import { LEAST_PLACES, placesOn, type MeasurePhoto } from '../core/measure/photo/photo.ts';
import type { MeasureRow, MeasureSheet } from '../core/measure/sheet.ts';
import type { Bike } from '../core/parts/bike.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { FORMAT } from '../document/document.ts';
import { openDocument } from '../document/open-document.ts';
import { readPhotos } from './read-photos.ts';
import { nearestName } from './nearest-name.ts';

export interface MeasureFile {
  readonly start: StartingBike;
  readonly sheet: MeasureSheet;
  readonly wanted: string | null;
  /** What was changed so that the file could be read, a sentence each. */
  readonly repairs: readonly string[];
}

export const MEASURE_FORMAT = 'sidestance-measure';
export const MEASURE_SCHEMA = 1;
const FIELDS = [
  'format',
  'schema',
  'about',
  'invented',
  'start',
  'wanted',
  'gaugeZeroed',
  'rows',
  'photos',
] as const;
const ROW_FIELDS = [
  'kind',
  'parts',
  'state',
  'otherState',
  'figure',
  'unit',
  'sd',
  'outOfPlane',
  'fromOther',
  'off',
  'note',
] as const;

type Fields = Readonly<Record<string, unknown>>;

/** The starting bikes by name: the types of bike that come with the program. */
export const STARTS = ['roadSport', 'trackDay', 'twinShockRoadster', 'longTravel'] as const;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The sheet in a text, or one line that says what cannot be read, with the nearest name where a name is unknown. */
export function readMeasureFile(text: string): Result<MeasureFile, string> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return fail(`The file is no JSON: ${error instanceof Error ? error.message : String(error)}.`);
  }
  if (isFields(json) && json.format === FORMAT) return readMeasuredBike(text);
  if (!isFields(json) || json.format !== MEASURE_FORMAT)
    return fail(`The file is no sheet of measurements: its "format" has to be "${MEASURE_FORMAT}".`);
  if (json.schema !== MEASURE_SCHEMA)
    return fail(`This program reads sheets of measurements with "schema": ${MEASURE_SCHEMA}.`);
  const unknown = Object.keys(json).find((key) => !includes(FIELDS, key));
  if (unknown !== undefined) return fail(unknownName('field', unknown, FIELDS));
  const { rows, gaugeZeroed = true, wanted = null, photos: given = [] } = json;
  if (!Array.isArray(rows)) return fail('"rows" has to be a list.');
  if (typeof gaugeZeroed !== 'boolean') return fail('"gaugeZeroed" has to be true or false.');
  if (wanted !== null && typeof wanted !== 'string') return fail('"wanted" has to be the name of a reading.');
  const start = readStart(json.start);
  if (!start.ok) return start;
  const read = readRows(rows);
  if (!read.ok) return read;
  const photos = readPhotos(given);
  if (!photos.ok) return photos;
  return succeed({
    ...start.value,
    sheet: { gaugeZeroed, rows: read.value, photos: photos.value },
    wanted,
  });
}

/** The sheet that a saved bike was measured by, from the bike as it was set then; a row without a figure is left out. */
function readMeasuredBike(text: string): Result<MeasureFile, string> {
  const opened = openDocument(text);
  if (!opened.ok) return fail(opened.reason.sentence);
  const { bike, measure } = opened.value.document;
  const repairs = opened.value.repairs.map(({ sentence }) => sentence);
  if (measure === undefined) return fail('This bike has no rows that it was measured by.');
  const { gaugeZeroed, setup, rows, taken: isMeasured = false } = measure;
  const read = readRows(rows.map((row) => ({ ...row, off: row.off || row.figure.trim() === '' })));
  if (!read.ok) return read;
  const photos = photosOf(measure.photos ?? [], bike, repairs);
  if (!photos.ok) return photos;
  const sheet = { gaugeZeroed, rows: read.value, photos: photos.value };
  return succeed({ start: { bike, setup, isMeasured }, sheet, wanted: null, repairs });
}

/** The photos of a saved bike that count; one that does not yet is left out, and said. */
function photosOf(
  given: readonly unknown[],
  bike: Bike,
  repairs: string[],
): Result<readonly MeasurePhoto[], string> {
  const read = readPhotos(given);
  if (!read.ok) return read;
  return succeed(
    read.value.flatMap((photo, index) => {
      const clicks = photo.clicks.filter(({ part }) => MEASURE_PARTS[part].applies(bike));
      const seen = { ...photo, clicks };
      if (placesOn(seen) >= LEAST_PLACES) return [seen];
      repairs.push(`Photo ${index + 1} shows fewer than ${LEAST_PLACES} places of this bike; left out.`);
      return [];
    }),
  );
}

function readRows(rows: readonly unknown[]): Result<readonly MeasureRow[], string> {
  const read: MeasureRow[] = [];
  for (const [index, row] of rows.entries()) {
    const found = readRow(row);
    if (!found.ok) return fail(`Row ${index + 1}: ${found.reason}`);
    read.push(found.value);
  }
  return succeed(read);
}

interface Start {
  readonly start: StartingBike;
  readonly repairs: readonly string[];
}

function readStart(start: unknown): Result<Start, string> {
  if (start === undefined) return succeed({ start: DEMO_BIKES[0], repairs: [] });
  if (typeof start === 'string') {
    const at = STARTS.findIndex((each) => each === start);
    return at < 0
      ? fail(unknownName('starting bike', start, STARTS))
      : succeed({ start: DEMO_BIKES[at], repairs: [] });
  }
  const opened = openDocument(JSON.stringify(start));
  if (!opened.ok) return fail(`"start": ${opened.reason.sentence}`);
  const { document, repairs } = opened.value;
  return succeed({ start: document, repairs: repairs.map(({ sentence }) => `"start": ${sentence}`) });
}

function readRow(row: unknown): Result<MeasureRow, string> {
  if (!isFields(row)) return fail('a row has to be an object with "kind" and "figure".');
  const unknown = Object.keys(row).find((key) => !includes(ROW_FIELDS, key));
  if (unknown !== undefined) return fail(unknownName('field', unknown, ROW_FIELDS));
  const kind = MEASURE_KINDS.find(({ key }) => key === row.kind);
  if (kind === undefined) return fail(unknownName('kind', row.kind, keysOf(MEASURE_KINDS)));
  const parts = readNames('part', row.parts ?? [], MEASURE_PART_KEYS);
  if (!parts.ok) return parts;
  const states = readNames(
    'state',
    [
      row.state ?? kind.state,
      ...(row.otherState === undefined || row.otherState === null ? [] : [row.otherState]),
    ],
    keysOf(MEASURE_STATES),
  );
  if (!states.ok) return states;
  const { figure, unit = '', sd = null, outOfPlane = 0, fromOther = false, off = false } = row;
  if (typeof figure !== 'string' && typeof figure !== 'number')
    return fail('"figure" has to be a number, or a text such as "17 3/4 in" or "120/70-17".');
  if (typeof unit !== 'string') return fail('"unit" has to be a text such as "mm".');
  if (sd !== null && typeof sd !== 'number') return fail('"sd" has to be a number.');
  if (typeof outOfPlane !== 'number') return fail('"outOfPlane" has to be a number of mm.');
  if (typeof fromOther !== 'boolean' || typeof off !== 'boolean')
    return fail('"fromOther" and "off" have to be true or false.');
  const [state, otherState = null] = states.value;
  return succeed({
    kind: kind.key,
    parts: parts.value,
    state,
    otherState,
    figure: String(figure),
    unit,
    sd,
    outOfPlane,
    fromOther,
    off,
  });
}

function readNames<Name extends string>(
  what: string,
  given: unknown,
  names: readonly Name[],
): Result<readonly Name[], string> {
  if (!Array.isArray(given)) return fail(`the ${what}s have to be a list of names.`);
  const found: Name[] = [];
  for (const each of given as readonly unknown[]) {
    const name = names.find((known) => known === each);
    if (name === undefined) return fail(unknownName(what, each, names));
    found.push(name);
  }
  return succeed(found);
}

function unknownName(what: string, given: unknown, names: readonly string[]): string {
  const typed = typeof given === 'string' ? given : JSON.stringify(given ?? null);
  return `there is no ${what} “${typed}”; the nearest is “${nearestName(typed, names)}”.`;
}

function includes(names: readonly string[], name: string): boolean {
  return names.includes(name);
}

function keysOf<Key extends string>(list: readonly { readonly key: Key }[]): readonly Key[] {
  return list.map(({ key }) => key);
}
