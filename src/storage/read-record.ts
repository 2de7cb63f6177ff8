/** Reads what lies on a shelf of the store as bikes: another build or a faulty disk may have left anything there. */
import * as v from 'valibot';
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import type { BikeWrite, Shelf, StoredBike, UnreadableRecord } from './bike-store.ts';

/** The latest moment of a date, ms since 1970, by ECMA-262. */
const LATEST_MS = 8.64e15;
const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

// A bike can be opened by its id and text alone; the rest only says when and by whom it was saved.
const storedBike = v.object({
  id: v.string(),
  text: v.string(),
  name: v.fallback(v.string(), 'Bike without a name'),
  revision: v.fallback(count, 0),
  writer: v.fallback(v.string(), 'unknown'),
  savedAt: v.fallback(v.pipe(v.number(), v.minValue(0), v.maxValue(LATEST_MS)), 0),
});

/** The bike that a record holds, with defaults for what is wrong beside its id and text; or why it holds none. */
export function readRecord(record: unknown): Result<StoredBike, UnreadableRecord> {
  const read = v.safeParse(storedBike, record);
  if (read.success) return succeed(read.output);
  const { id, name, text } =
    typeof record === 'object' && record !== null
      ? (record as Readonly<Record<string, unknown>>)
      : ({} as Readonly<Record<string, unknown>>);
  const called = typeof name === 'string' ? `“${name}”` : 'A record without a name';
  const why = typeof id === 'string' ? `its text is ${wordsFor(text)}` : `its id is ${wordsFor(id)}`;
  const marked = typeof id === 'string' || typeof id === 'number' ? id : wordsFor(id);
  return fail({ key: `${typeof id} ${marked} ${called}`, sentence: `${called} is not a bike: ${why}.` });
}

const knownFields = v.object({ known: v.fallback(v.nullable(count), null) });

/** The write that a page left behind; null where the record holds none. */
export function readWrite(record: unknown): BikeWrite | null {
  const read = readRecord(record);
  const rest = v.safeParse(knownFields, record);
  if (!read.ok || !rest.success) return null;
  const { id, name, writer, savedAt, text } = read.value;
  return { id, name, writer, savedAt, text, known: rest.output.known };
}

/** Words for what stands in the place of a text. A store can hold what JSON cannot, so only numbers are written out. */
function wordsFor(value: unknown): string {
  if (value === undefined) return 'missing';
  if (value === null) return 'empty';
  if (typeof value === 'number') return `the number ${value}`;
  return Array.isArray(value) ? 'a list' : `not text but of type ${typeof value}`;
}

/** All records of a shelf: the bikes, and apart from them what is not a bike. */
export function shelfOf(records: readonly unknown[]): Shelf<StoredBike> {
  const read = records.map(readRecord);
  return {
    bikes: read.flatMap((each) => (each.ok ? [each.value] : [])),
    unreadable: read.flatMap((each) => (each.ok ? [] : [each.reason])),
  };
}
