/** Files of several bikes with sheets and lessons, and tables of sheets: saved to the downloads, and brought back into the store. */
import {
  LARGEST_BIKES_TEXT,
  openBikes,
  saveBikes,
  type FiledBike,
  type FiledLessonJson,
  type FiledSheet,
  type OpenedBikes,
} from '../../document/bikes-file.ts';
import { succeed, type Result } from '../../core/numeric/result.ts';
import { isJsonObject } from '../../document/json/json.ts';
import { readJson } from '../../document/json/read-json.ts';
import { openDocument } from '../../document/open-document.ts';
import { openSheet } from '../../document/open-sheet.ts';
import { NOTES } from '../../document/sheet-notes.ts';
import { openLessonJson } from '../../lessons/open-lesson.ts';
import { bikeFileName } from '../../storage/file/bike-file-name.ts';
import type { BikeStore, StoredLesson, WholeBike } from '../../storage/bike-store.ts';
import { download } from '../../storage/file/download.ts';
import { findSameBike } from '../../storage/find-same-bike.ts';
import { newId } from '../../storage/new-id.ts';
import { readTextFile } from '../../storage/file/read-text-file.ts';
import { restoreBikes, type Restored } from '../../storage/restore-bikes.ts';
import type { StorageFault } from '../../storage/storage-fault.ts';
import { doneMessage, errorMessage, type Message } from '../../words/kept/keeping-message.ts';
import { restoredWords } from '../../words/kept/restored-words.ts';
import { sheetsCsv, type SheetsTable } from '../../words/kept/sheets-csv.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { today } from '../../words/kept/sheet-words.ts';

const ENDING = '.sidestance-bikes.json';

/** A bike without its sheets as the file has it; null where it cannot be read, which `report` then says. */
function filedBike({ bike, card }: WholeBike, report: string[]): FiledBike | null {
  const opened = openDocument(bike.text);
  if (opened.ok) return { id: bike.id, card, document: opened.value.document, sheets: [] };
  report.push(`${bike.name} is not in the file. ${opened.reason.sentence}`);
  return null;
}

/** A lesson as the file has it, word for word; one that is no JSON is left out and named in `report`. */
function filedLesson({ id, madeAt, text }: StoredLesson, report: string[]): FiledLessonJson | null {
  const json = readJson(text);
  if (json.ok && isJsonObject(json.value)) return { id, madeAt, lesson: json.value };
  report.push(
    `A lesson is not in the file. ${json.ok ? 'It is not a group of values.' : json.reason.sentence}`,
  );
  return null;
}

/**
 * About so many letters of bikes, sheets and pictures go into one file, some 2,000 sheets: a tablet has to hold all of
 * them at once when the file is brought back, and no browser holds ten times as many in one text.
 */
const LARGEST_PART = 50_000_000;

/** What went into a file, and what saves the rest into the next where one file would be too large. */
export interface Saved extends Message {
  readonly rest?: { readonly label: string; readonly save: () => Promise<Saved> };
}

/** What goes into one file. */
interface Part {
  readonly bikes: readonly FiledBike[];
  /** Whether there are more after it. */
  readonly isLast: boolean;
}

/** How long sheets are opened before the page may answer a hand again, ms. */
const LONGEST_TURN_MS = 30;

/**
 * A bike in pieces of at most `most` letters, each with the bike itself and some of its sheets, the first with its
 * pictures. A sheet that cannot be read is left out and named in `report`.
 */
async function* piecesOf(
  bike: FiledBike,
  stored: WholeBike,
  most: number,
  report: string[],
): AsyncGenerator<{ readonly bike: FiledBike; readonly letters: number }, undefined> {
  const { pictures, ...withoutPictures } = bike;
  const ofBike = stored.bike.text.length;
  let piece = bike;
  let sheets: FiledSheet[] = [];
  let letters = (pictures ?? []).reduce((sum, { data }) => sum + data.length, ofBike);
  let since = performance.now();
  for (const { id, day, text } of stored.sheets) {
    if (performance.now() - since > LONGEST_TURN_MS) {
      await new Promise((done) => setTimeout(done));
      since = performance.now();
    }
    if (letters + text.length > most && sheets.length > 0) {
      yield { bike: { ...piece, sheets }, letters };
      [piece, sheets, letters] = [withoutPictures, [], ofBike];
    }
    const sheet = openSheet(text);
    if (sheet.ok) sheets.push({ id, sheet: sheet.value.sheet });
    else
      report.push(`The sheet of ${day} of ${stored.bike.name} is not in the file. ${sheet.reason.sentence}`);
    letters += text.length;
  }
  yield { bike: { ...piece, sheets }, letters };
}

/** The bikes of these ids in parts of about `most` letters, each read from the store when it is asked for. */
async function* partsOf(
  store: BikeStore,
  ids: readonly string[],
  most: number,
  report: string[],
): AsyncGenerator<Result<Part, StorageFault>, undefined> {
  const { filedPictures, LARGEST_PICTURES_TEXT } = await import('./bike-pictures.ts');
  let bikes: FiledBike[] = [];
  let room = most;
  for (const id of ids) {
    const whole = await store.whole(id);
    if (!whole.ok) {
      yield whole;
      return;
    }
    const filed = whole.value === null ? null : filedBike(whole.value, report);
    if (whole.value === null || filed === null) continue;
    const pictures = await filedPictures(whole.value, LARGEST_PICTURES_TEXT, report);
    const withPictures = pictures.length === 0 ? filed : { ...filed, pictures };
    for await (const { bike, letters } of piecesOf(withPictures, whole.value, most, report)) {
      if (letters > room && bikes.length > 0) {
        yield succeed({ bikes, isLast: false });
        [bikes, room] = [[], most];
      }
      bikes.push(bike);
      room -= letters;
    }
  }
  yield succeed({ bikes, isLast: true });
}

/** Saves the bikes of these ids with their sheets, and these lessons, to one file, or to several of about `most` letters, and says so. */
export async function saveBikesFile(
  store: BikeStore,
  ids: readonly string[],
  name: string,
  lessons: readonly StoredLesson[] = [],
  most = LARGEST_PART,
): Promise<Saved> {
  const report: string[] = [];
  const parts = partsOf(store, ids, most, report);
  const savePart = async (count: number, filedLessons: readonly FiledLessonJson[]): Promise<Saved> => {
    const { value: part } = await parts.next();
    if (part === undefined || !part.ok)
      return errorMessage(part?.reason.sentence ?? 'All of it is saved already.', report);
    const { bikes, isLast } = part.value;
    if (bikes.length === 0 && filedLessons.length === 0)
      return errorMessage(
        'Neither a bike nor a lesson is kept in this browser yet, so there is nothing to save.',
        report,
      );
    const ending = count === 1 && isLast ? ENDING : `-part-${count}${ENDING}`;
    const file = bikeFileName(name, ending);
    download(file, new Blob([saveBikes(bikes, Date.now(), filedLessons)], { type: 'application/json' }));
    const text = savedWords(bikes, filedLessons.length, file);
    const details = report.splice(0);
    if (isLast) return { ...doneMessage(text), details };
    const next = count + 1;
    const rest = { label: `Save part ${next}`, save: () => savePart(next, []) };
    return {
      kind: 'warning',
      text: `${text} One file does not hold all of it: this is part ${count}, and the rest is still to be saved.`,
      details,
      rest,
    };
  };
  return await savePart(
    1,
    lessons.flatMap((each) => filedLesson(each, report) ?? []),
  );
}

function savedWords(bikes: readonly FiledBike[], lessons: number, file: string): string {
  const sheets = bikes.reduce((all, bike) => all + bike.sheets.length, 0);
  const ofBikes = `${bikes.length === 1 ? 'One bike' : `${bikes.length} bikes`} with ${sheets === 1 ? 'one sheet' : `${sheets} sheets`}`;
  const ofLessons = lessons === 0 ? '' : `, and ${lessons === 1 ? 'one lesson' : `${lessons} lessons`},`;
  return `${ofBikes}${ofLessons} saved to ${file} among your downloads.`;
}

/** Saves every bike in the store with its sheets, and every lesson. */
export async function saveEverything(store: BikeStore, most = LARGEST_PART): Promise<Saved> {
  const listed = await store.list();
  if (!listed.ok) return errorMessage(listed.reason.sentence);
  const lessons = await store.lessons();
  if (!lessons.ok) return errorMessage(lessons.reason.sentence);
  const ids = listed.value.bikes.map(({ id }) => id);
  return await saveBikesFile(store, ids, `all bikes ${today(new Date())}`, lessons.value, most);
}

/** Saves the sheets as a table for a spreadsheet. */
export function saveSheetsTable(
  table: Omit<SheetsTable, 'notes'>,
  bikeName: string,
  style: NumberStyle,
): Message {
  const file = bikeFileName(`${bikeName} sheets`, '.csv');
  download(file, new Blob([sheetsCsv({ ...table, notes: NOTES }, style)], { type: 'text/csv' }));
  return doneMessage(`The sheets are saved to ${file} among your downloads.`);
}

const NOTHING: Restored = {
  ...{ bikesAdded: 0, versionsKept: 0, sheetsAdded: 0, sheetsBeside: 0, bikesSame: 0 },
  ...{ lessonsAdded: 0, lessonsBeside: 0, picturesAdded: 0 },
};

/** A bike's file ends like this; a folder may hold anything else. */
const JSON_ENDING = /\.json$/i;

/** Brings files of several bikes, or single bikes, into the store beside what is there, with a report. */
export async function restoreFiles(store: BikeStore, given: readonly File[]): Promise<Message> {
  const files = given.length === 1 ? given : given.filter(({ name }) => JSON_ENDING.test(name));
  const others = given.length - files.length;
  const report: string[] = [];
  if (others > 0)
    report.push(
      others === 1
        ? 'One file does not end in .json and was left out.'
        : `${others} files do not end in .json and were left out.`,
    );
  let total = NOTHING;
  let opened = 0;
  for (const file of files) {
    const text = await readTextFile(file, LARGEST_BIKES_TEXT);
    const found = text.ok ? await bikesIn(store, text.value) : text;
    if (!found.ok) {
      report.push(`${file.name} was not opened. ${found.reason.sentence}`);
      continue;
    }
    report.push(...found.value.report.map((sentence) => `${file.name}: ${sentence}`));
    const lessons = storedLessons(found.value.lessons, `${file.name}: `, report);
    const { bikes } = found.value;
    const { keptPictures } = await import('./bike-pictures.ts');
    const pictures = await keptPictures(bikes, `${file.name}: `, report);
    const restored = await restoreBikes(store, { bikes, lessons, pictures }, { now: Date.now(), newId });
    if (!restored.ok) {
      const before = opened === 0 ? [] : [`From the files before it: ${restoredWords(total)}`];
      return errorMessage(
        `Nothing of ${file.name} was brought back. ${restored.reason.sentence}`,
        shortened([...before, ...report]),
      );
    }
    opened++;
    total = sumOf(total, restored.value);
  }
  if (opened === 0) return errorMessage('Nothing was brought back.', shortened(report));
  return {
    kind: report.length === 0 ? 'done' : 'warning',
    text: restoredWords(total),
    details: shortened(report),
  };
}

/** The lessons that can be opened, word for word as the file has them; the others are left out and named in `report`. */
function storedLessons(
  given: readonly FiledLessonJson[],
  start: string,
  report: string[],
): readonly StoredLesson[] {
  return given.flatMap(({ id, madeAt, lesson }, i): StoredLesson[] => {
    const opened = openLessonJson(lesson);
    if (opened.ok) return [{ id, madeAt, text: `${JSON.stringify(lesson, null, 2)}\n` }];
    report.push(`${start}Lesson ${i + 1} of the file was left out. ${opened.reason.sentence}`);
    return [];
  });
}

/** Lines of a report that are shown one by one; nobody reads thousands. */
const MOST_LINES = 20;

function shortened(report: readonly string[]): readonly string[] {
  const rest = report.length - MOST_LINES;
  return rest <= 1 ? report : [...report.slice(0, MOST_LINES), `And ${rest} more lines like these.`];
}

function sumOf(a: Restored, b: Restored): Restored {
  return {
    bikesAdded: a.bikesAdded + b.bikesAdded,
    versionsKept: a.versionsKept + b.versionsKept,
    sheetsAdded: a.sheetsAdded + b.sheetsAdded,
    sheetsBeside: a.sheetsBeside + b.sheetsBeside,
    bikesSame: a.bikesSame + b.bikesSame,
    lessonsAdded: a.lessonsAdded + b.lessonsAdded,
    lessonsBeside: a.lessonsBeside + b.lessonsBeside,
    picturesAdded: a.picturesAdded + b.picturesAdded,
  };
}

/** The bikes of a file: of several, or one bike by itself, which becomes a new one unless the store holds it just so. */
async function bikesIn(store: BikeStore, text: string): Promise<ReturnType<typeof openBikes>> {
  const several = openBikes(text);
  if (several.ok || several.reason.kind !== 'notOurs') return several;
  const one = openDocument(text);
  if (!one.ok) return one;
  const { document, repairs } = one.value;
  const card = { owner: '', notes: '', tags: [], archived: false };
  const same = await findSameBike(store, document);
  const id = (same.ok ? same.value : null) ?? newId();
  const value: OpenedBikes = {
    bikes: [{ id, card, document, sheets: [] }],
    lessons: [],
    report: repairs.map(({ sentence }) => sentence),
  };
  return { ok: true, value };
}
