/** A bike that is to take the page: looked for in the store, read from a file, or from a version kept beside another bike. */
import { visible } from '../../document/json/json.ts';
import { beginHistory, type History } from '../../document/history.ts';
import { openDocument } from '../../document/open-document.ts';
import { saveDocument } from '../../document/save-document.ts';
import { readBikeFile } from '../../storage/file/bike-file.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { findSameBike } from '../../storage/find-same-bike.ts';
import { newId } from '../../storage/new-id.ts';
import { openStored } from '../../storage/open-stored.ts';
import { doneMessage, errorMessage, openedMessage, type Message } from '../../words/kept/keeping-message.ts';

export interface FoundBike {
  /** The document, with what can be undone on it. */
  readonly history: History;
  readonly id: string;
  /** The revision it was opened from; null for one that is not stored yet. */
  readonly revision: number | null;
  /** Whether it need not be stored until it is changed. */
  readonly kept: boolean;
  readonly message: Message | null;
}

/** What a bike's history was when it left the page; null for one that was not on it. */
type Remembered = (id: string) => History | null;

/** The history of a stored text: the remembered one where it still ends in what is stored, otherwise a new one. */
function historyOf(text: string, before: History | null): History | null {
  return before !== null && saveDocument(before.present) === text ? before : null;
}

/** A bike of the store. `now` is in ms since 1970, UTC. */
export async function findStored(
  store: BikeStore,
  id: string,
  now: number,
  remembered: Remembered,
): Promise<FoundBike | Message> {
  const loaded = await store.load(id);
  if (!loaded.ok) return errorMessage(loaded.reason.sentence);
  if (loaded.value === null) return errorMessage('That bike is no longer saved in this browser.');
  const { text, revision, name } = loaded.value;
  const before = historyOf(text, remembered(id));
  if (before !== null) return { history: before, id, revision, kept: true, message: null };
  const opened = await openStored(store, id, text, now);
  if (!opened.ok) return errorMessage(`${name} was not opened. ${opened.reason.sentence}`);
  const { document, repairs, originalLost } = opened.value;
  const history = beginHistory(document);
  if (repairs.length === 0) return { history, id, revision, kept: true, message: null };
  const original =
    originalLost === null
      ? 'It is also kept as it was.'
      : 'It stays as it was saved in this browser until you change it.';
  const message = openedMessage(visible(name), repairs, original);
  return { history, id, revision, kept: originalLost !== null, message };
}

/** What a file is opened against: the store, and how its bikes are found there and its text is kept. */
export interface FileKeeping {
  /** Null where none has been found yet. */
  readonly store: BikeStore | null;
  /** Takes the text of a file as it was where it had to be repaired. */
  readonly keep: (id: string, text: string) => Promise<void>;
  /** A bike of the store; null for the one on the page. */
  readonly find: (store: BikeStore, id: string) => Promise<FoundBike | Message | null>;
  /** How many files were given with it and are not opened. */
  readonly besides: number;
}

/** A file as a new bike, or as the one in the store that says the very same. */
export async function findInFile(
  file: File,
  { store, keep, find, besides }: FileKeeping,
): Promise<FoundBike | Message> {
  const read = await readBikeFile(file);
  if (!read.ok)
    return errorMessage(`${file.name} was not opened. ${read.reason.sentence}`, [
      'The bike on the page is as it was.',
    ]);
  const { document, repairs, text } = read.value;
  const same = store === null || repairs.length > 0 ? null : await findSameBike(store, document);
  if (store !== null && same?.ok === true && same.value !== null) {
    const found = await find(store, same.value);
    const message = doneMessage(
      `Opened ${visible(file.name)}. This bike was here already, so none was added.`,
    );
    if (found === null) return message;
    if ('history' in found) return { ...found, message };
  }
  const id = newId();
  if (repairs.length > 0) await keep(id, text);
  const opened = openedMessage(visible(file.name), repairs, 'The file itself is as it was.');
  const message =
    besides === 0 ? opened : { ...opened, details: [...opened.details, 'One bike is opened at a time.'] };
  return { history: beginHistory(document), id, revision: null, kept: false, message };
}

/** A version that is kept beside a bike, as a new bike; `what` names it in a sentence, such as `the other version`. */
export function findInVersion(text: string, what: string): FoundBike | Message {
  const opened = openDocument(text);
  if (!opened.ok)
    return errorMessage(`${what[0].toUpperCase()}${what.slice(1)} was not opened. ${opened.reason.sentence}`);
  const { document, repairs } = opened.value;
  const message = openedMessage(what, repairs, 'It is also kept as it was.');
  return { history: beginHistory(document), id: newId(), revision: null, kept: false, message };
}
