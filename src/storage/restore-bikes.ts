/** Brings bikes and sheets of a file into the store beside what is there: nothing on either side is lost. */
import { succeed, type Result } from '../core/numeric/result.ts';
import type { FiledBike } from '../document/bikes-file.ts';
import { saveDocument } from '../document/save-document.ts';
import { saveSheet } from '../document/save-sheet.ts';
import type { Addition, BikeStore, KeptPicture, StoredLesson } from './bike-store.ts';
import { savedAnew } from './find-same-bike.ts';
import type { StorageFault } from './storage-fault.ts';

export interface Restored {
  /** Bikes that were not there before. */
  readonly bikesAdded: number;
  /** Bikes that were there in another state: the file's is kept beside as another version. */
  readonly versionsKept: number;
  readonly sheetsAdded: number;
  /** Sheets that were there with other words: the file's is kept as a sheet of its own. */
  readonly sheetsBeside: number;
  /** Bikes that were there and say the same; the file may still bring sheets of them. */
  readonly bikesSame: number;
  readonly lessonsAdded: number;
  /** Lessons that were there with other words: the file's is kept as a lesson of its own. */
  readonly lessonsBeside: number;
  readonly picturesAdded: number;
}

/** What a file brings: its bikes with their pictures, and a trainer's own lessons as the texts of their files. */
export interface Given {
  readonly bikes: readonly FiledBike[];
  readonly lessons: readonly StoredLesson[];
  /** Of bikes of the file. */
  readonly pictures: readonly Omit<KeptPicture, 'id'>[];
}

export interface RestoreOptions {
  /** Milliseconds since 1970, UTC. */
  readonly now: number;
  readonly newId: () => string;
}

/** What the store holds of one bike, and what has been added to that since. */
interface Beside {
  isThere: boolean;
  /** The states of the bike: the one in the list and the versions beside it. */
  readonly texts: Set<string>;
  readonly sheetTexts: Set<string>;
}

/**
 * Merges the bikes and lessons of a file into the store. A bike that is there and says the same stays as it is; one in another
 * state stays too, and the file's is kept beside it as another version. Sheets and lessons are joined by their id, pictures by when they were kept and their size. All of it comes
 * in, or nothing where the store fails.
 */
export async function restoreBikes(
  store: BikeStore,
  { bikes, lessons, pictures }: Given,
  { now, newId }: RestoreOptions,
): Promise<Result<Restored, StorageFault>> {
  const ids = await store.sheetIds();
  if (!ids.ok) return ids;
  const taken = new Set(ids.value);
  const known = new Map<string, Beside>();
  const addition: { -readonly [Shelf in keyof Addition]: Addition[Shelf][number][] } = {
    bikes: [],
    versions: [],
    sheets: [],
    lessons: [],
    pictures: [],
  };
  let sheetsBeside = 0;
  let bikesSame = 0;
  for (const { id, card, document, sheets } of bikes) {
    const found = known.has(id) ? null : await besideOf(store, id);
    if (found !== null && !found.ok) return found;
    const beside = found?.value ?? (known.get(id) as Beside);
    known.set(id, beside);
    const text = saveDocument(document);
    const state = { id, name: document.bike.name, writer: newId(), savedAt: now, text };
    if (!beside.isThere) addition.bikes.push({ bike: { ...state, revision: 1 }, card });
    else if (isAmong(beside.texts, text)) bikesSame++;
    else addition.versions.push({ ...state, revision: 0 });
    beside.isThere = true;
    beside.texts.add(text);
    for (const { id: sheetId, sheet } of sheets) {
      const filed = { bikeId: id, day: sheet.day, madeAt: sheet.madeAt, text: saveSheet(sheet) };
      if (beside.sheetTexts.has(filed.text)) continue;
      const isTaken = taken.has(sheetId);
      const own = isTaken ? newId() : sheetId;
      addition.sheets.push({ id: own, ...filed });
      taken.add(own);
      beside.sheetTexts.add(filed.text);
      if (isTaken) sheetsBeside++;
    }
  }
  const there = await store.lessons();
  if (!there.ok) return there;
  const lessonIds = new Set(there.value.map(({ id }) => id));
  const lessonTexts = new Set(there.value.map(({ text }) => text));
  let lessonsBeside = 0;
  for (const lesson of lessons) {
    if (lessonTexts.has(lesson.text)) continue;
    const isTaken = lessonIds.has(lesson.id);
    const own = isTaken ? newId() : lesson.id;
    addition.lessons.push({ ...lesson, id: own });
    lessonIds.add(own);
    lessonTexts.add(lesson.text);
    if (isTaken) lessonsBeside++;
  }
  for (const bikeId of new Set(pictures.map((each) => each.bikeId))) {
    const kept = await store.pictures(bikeId);
    if (!kept.ok) return kept;
    const known = new Set(kept.value.map(signsOf));
    for (const picture of pictures.filter((each) => each.bikeId === bikeId)) {
      if (known.has(signsOf(picture))) continue;
      known.add(signsOf(picture));
      addition.pictures.push({ ...picture, id: newId() });
    }
  }
  const added = await store.add(addition);
  if (!added.ok) return added;
  return succeed({
    bikesAdded: addition.bikes.length,
    versionsKept: addition.versions.length,
    sheetsAdded: addition.sheets.length - sheetsBeside,
    sheetsBeside,
    bikesSame,
    lessonsAdded: addition.lessons.length - lessonsBeside,
    lessonsBeside,
    picturesAdded: addition.pictures.length,
  });
}

/** What tells a picture of one bike from its others: nobody keeps two of one size in one millisecond. */
function signsOf({ keptAt, blob }: Omit<KeptPicture, 'id'>): string {
  return `${keptAt} ${blob.size} ${blob.type}`;
}

/** Whether one of the states says the same, also where a former build wrote it. */
function isAmong(texts: ReadonlySet<string>, text: string): boolean {
  return texts.has(text) || [...texts].some((each) => savedAnew(each) === text);
}

async function besideOf(store: BikeStore, id: string): Promise<Result<Beside, StorageFault>> {
  const there = await store.load(id);
  if (!there.ok) return there;
  if (there.value === null) return succeed({ isThere: false, texts: new Set(), sheetTexts: new Set() });
  const [versions, sheets] = await Promise.all([store.revisions(id), store.sheets(id)]);
  if (!versions.ok) return versions;
  if (!sheets.ok) return sheets;
  return succeed({
    isThere: true,
    texts: new Set([there.value.text, ...versions.value.map(({ text }) => text)]),
    sheetTexts: new Set(sheets.value.map(({ text }) => text)),
  });
}
