/** A store that lasts as long as the page, for when the browser gives none. */
import { succeed } from '../core/numeric/result.ts';
import { EMPTY_CARD, inTimeOrder, latestFirst, listed, withSheets } from './bike-index.ts';
import type {
  BikeCard,
  BikeStore,
  KeptPicture,
  Original,
  StoredBike,
  StoredLesson,
  StoredSheet,
  WholeBike,
} from './bike-store.ts';
import { asMade } from './kept-lessons.ts';
import { settleWrite } from './settle-write.ts';
import type { StorageFault } from './storage-fault.ts';

/** `shortLived` says why this one is used, and the user sees it for as long as it is. */
export function memoryStore(shortLived: StorageFault | null): BikeStore {
  const bikes = new Map<string, StoredBike>();
  const cards = new Map<string, BikeCard>();
  const sheets = new Map<string, StoredSheet>();
  const lessons = new Map<string, StoredLesson>();
  const pictures = new Map<string, KeptPicture>();
  let revisions: readonly StoredBike[] = [];
  let originals: readonly Original[] = [];
  let preferences: object | null = null;

  const sheetsOf = (id: string): StoredSheet[] =>
    [...sheets.values()].filter(({ bikeId }) => bikeId === id).sort(inTimeOrder);
  const picturesOf = (id: string): KeptPicture[] =>
    [...pictures.values()].filter(({ bikeId }) => bikeId === id);
  const keepVersion = (kept: StoredBike): void => {
    revisions = [...revisions.filter((r) => r.id !== kept.id || r.writer !== kept.writer), kept];
  };
  const wholeOf = (id: string): WholeBike | null => {
    const bike = bikes.get(id);
    if (bike === undefined) return null;
    return {
      bike,
      card: cards.get(id) ?? EMPTY_CARD,
      sheets: sheetsOf(id),
      revisions: revisions.filter((each) => each.id === id),
      originals: originals.filter((each) => each.id === id),
      pictures: picturesOf(id),
    };
  };

  return {
    shortLived,
    list: async () =>
      succeed({
        bikes: [...bikes.values()]
          .sort(latestFirst)
          .map((bike) =>
            withSheets(listed(bike, { card: cards.get(bike.id) ?? EMPTY_CARD }), sheetsOf(bike.id)),
          ),
        unreadable: [],
      }),
    load: async (id) => succeed(bikes.get(id) ?? null),
    save: async (write) => {
      const isGone = write.known !== null && !bikes.has(write.id);
      const { next, kept } = settleWrite(bikes.get(write.id) ?? null, write);
      bikes.set(write.id, next);
      if (kept !== null) keepVersion(kept);
      return succeed({ revision: next.revision, kept, ...(isGone && { foundGone: true as const }) });
    },
    // Nothing outlives the page, so nobody could settle it.
    leave: () => {},
    forgetLeft: () => {},
    saveCard: async (id, card) => {
      if (bikes.has(id)) cards.set(id, card);
      return succeed(null);
    },
    remove: async (id) => {
      const whole = wholeOf(id);
      bikes.delete(id);
      cards.delete(id);
      revisions = revisions.filter((each) => each.id !== id);
      originals = originals.filter((each) => each.id !== id);
      sheetsOf(id).forEach((sheet) => sheets.delete(sheet.id));
      picturesOf(id).forEach((picture) => pictures.delete(picture.id));
      return succeed(whole);
    },
    putBack: async (whole) => {
      const { id } = whole.bike;
      bikes.set(id, whole.bike);
      cards.set(id, whole.card);
      whole.revisions.forEach(keepVersion);
      originals = [...originals.filter((each) => each.id !== id), ...whole.originals];
      whole.sheets.forEach((sheet) => sheets.set(sheet.id, sheet));
      whole.pictures.forEach((picture) => pictures.set(picture.id, picture));
      return succeed(null);
    },
    whole: async (id) => succeed(wholeOf(id)),
    add: async (addition) => {
      for (const { bike, card } of addition.bikes) {
        bikes.set(bike.id, bike);
        cards.set(bike.id, card);
      }
      addition.versions.forEach(keepVersion);
      addition.sheets.forEach((sheet) => sheets.set(sheet.id, sheet));
      addition.lessons.forEach((lesson) => lessons.set(lesson.id, lesson));
      addition.pictures.forEach((picture) => pictures.set(picture.id, picture));
      return succeed(null);
    },
    sheetIds: async () => succeed([...sheets.keys()]),
    sheets: async (bikeId) => succeed(sheetsOf(bikeId)),
    saveSheet: async (sheet) => {
      sheets.set(sheet.id, sheet);
      return succeed(null);
    },
    removeSheet: async (id) => {
      sheets.delete(id);
      return succeed(null);
    },
    lessons: async () => succeed([...lessons.values()].sort(asMade)),
    saveLesson: async (lesson) => {
      lessons.set(lesson.id, lesson);
      return succeed(null);
    },
    removeLesson: async (id) => {
      lessons.delete(id);
      return succeed(null);
    },
    keepPicture: async (picture) => {
      pictures.set(picture.id, picture);
      return succeed(null);
    },
    pictures: async (bikeId) => succeed(picturesOf(bikeId)),
    removePicture: async (id) => {
      pictures.delete(id);
      return succeed(null);
    },
    revisions: async (id) => succeed(revisions.filter((each) => each.id === id).sort(latestFirst)),
    keepRevision: async (version) => {
      keepVersion(version);
      return succeed(null);
    },
    removeRevision: async (id, writer) => {
      revisions = revisions.filter((each) => each.id !== id || each.writer !== writer);
      return succeed(null);
    },
    keepOriginal: async (original) => {
      if (!originals.some((each) => each.id === original.id && each.text === original.text))
        originals = [...originals, original];
      return succeed(null);
    },
    originals: async (id) => succeed(originals.filter((each) => each.id === id)),
    removeOriginal: async (id, keptAt) => {
      originals = originals.filter((each) => each.id !== id || each.keptAt !== keptAt);
      return succeed(null);
    },
    loadPreferences: async () => succeed(preferences),
    savePreferences: async (next) => {
      preferences = next;
      return succeed(null);
    },
    close: () => {},
  };
}
