/** The list of bikes as the index keeps it: what each entry says, and what a save, a sheet or a card changes in it. */
import * as v from 'valibot';
import type { BikeCard, BikeSummary, ListedBike, StoredSheet } from './bike-store.ts';

/** A bike that nothing was noted about. */
export const EMPTY_CARD: BikeCard = { owner: '', notes: '', tags: [], archived: false };

export function latestFirst(a: BikeSummary, b: BikeSummary): number {
  return b.savedAt - a.savedAt;
}

type SheetTime = Pick<StoredSheet, 'day' | 'madeAt'>;

/** Setup sheets in time order: by their day, those of one day as they were made. */
export function inTimeOrder(a: SheetTime, b: SheetTime): number {
  if (a.day !== b.day) return a.day < b.day ? -1 : 1;
  return a.madeAt - b.madeAt;
}

export function summaryOf({ id, name, revision, writer, savedAt }: BikeSummary): BikeSummary {
  return { id, name, revision, writer, savedAt };
}

/** The entry of a bike: what was noted about it before stays. */
export function listed(bike: BikeSummary, before: Partial<ListedBike> | null): ListedBike {
  const { card = EMPTY_CARD, sheets = 0, latestSheet = null } = before ?? {};
  return { ...summaryOf(bike), card, sheets, latestSheet };
}

function sameEntry(a: ListedBike, b: ListedBike): boolean {
  return (
    a.id === b.id &&
    a.revision === b.revision &&
    a.writer === b.writer &&
    a.savedAt === b.savedAt &&
    a.name === b.name &&
    a.sheets === b.sheets &&
    a.latestSheet === b.latestSheet &&
    a.card.owner === b.card.owner &&
    a.card.notes === b.card.notes &&
    a.card.archived === b.card.archived &&
    a.card.tags.join('\n') === b.card.tags.join('\n')
  );
}

/** The list as it was, where the next one says the same: then nothing that follows from it is made anew. */
export function sameOrNext(
  before: readonly ListedBike[],
  next: readonly ListedBike[],
): readonly ListedBike[] {
  const isSame = before.length === next.length && before.every((each, i) => sameEntry(each, next[i]));
  return isSame ? before : next;
}

/** The entry with its sheets counted anew. */
export function withSheets(entry: ListedBike, sheets: readonly StoredSheet[]): ListedBike {
  const latestSheet = sheets.reduce<string | null>(
    (latest, { day }) => (latest === null || day > latest ? day : latest),
    null,
  );
  return { ...entry, sheets: sheets.length, latestSheet };
}

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const cardFields = v.object({
  owner: v.fallback(v.string(), ''),
  notes: v.fallback(v.string(), ''),
  tags: v.fallback(v.array(v.string()), []),
  archived: v.fallback(v.boolean(), false),
});
const entryFields = v.object({
  card: v.fallback(cardFields, EMPTY_CARD),
  sheets: v.fallback(count, 0),
  latestSheet: v.fallback(v.nullable(v.string()), null),
});

/** What can be used of an entry as it was stored; null where it holds nothing. */
export function readEntry(record: unknown): Partial<ListedBike> | null {
  const read = v.safeParse(entryFields, record);
  return read.success ? read.output : null;
}

const summaryFields = v.object({
  id: v.string(),
  name: v.string(),
  revision: count,
  writer: v.string(),
  savedAt: v.pipe(v.number(), v.finite()),
});

/** The entries among the records of the index, by the bike's id. A record that holds no entry is left out. */
export function listedAmong(records: readonly unknown[]): Map<string, ListedBike> {
  const entries = new Map<string, ListedBike>();
  for (const record of records) {
    const read = v.safeParse(v.object({ ...summaryFields.entries, ...entryFields.entries }), record);
    if (read.success) entries.set(read.output.id, read.output);
  }
  return entries;
}

const sheetFields = v.object({
  id: v.string(),
  bikeId: v.string(),
  day: v.string(),
  madeAt: v.fallback(v.pipe(v.number(), v.finite()), 0),
  text: v.string(),
});

/** The sheets among the records of a shelf, in time order. */
export function sheetsAmong(records: readonly unknown[]): StoredSheet[] {
  return records
    .flatMap((record) => {
      const read = v.safeParse(sheetFields, record);
      return read.success ? [read.output] : [];
    })
    .sort(inTimeOrder);
}
