/** Opens the browser's databases as each former build left them: read out of a browser once, and never written anew. */
import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, expect, it } from 'vitest';
import { openDocument } from '../../src/document/open-document.ts';
import { openSheet } from '../../src/document/open-sheet.ts';
import type { Stored, StoredSheet } from '../../src/storage/bike-store.ts';
import { DATABASE } from '../../src/storage/browser-shelves.ts';
import { browserStore } from '../../src/storage/browser-store.ts';
import { readPreferences } from '../../src/storage/stored-preferences.ts';

interface StoredShelf {
  /** Where a record has its key; null where the key stands beside it. */
  readonly keyPath: string | string[] | null;
  readonly indexes: readonly { readonly name: string; readonly keyPath: string }[];
  readonly records: readonly unknown[];
}

interface StoredDatabase {
  readonly version: number;
  readonly shelves: Readonly<Record<string, StoredShelf>>;
}

const folder = new URL('../../fixtures/stores/', import.meta.url);
const FROZEN = readdirSync(folder);

// What another file of the same worker kept is not there.
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

/** Makes a database as the dump says, in the shape that it had. */
async function madeAgain({ version, shelves }: StoredDatabase): Promise<void> {
  const raw = await openDB(DATABASE, version, {
    upgrade(made) {
      for (const [name, { keyPath, indexes }] of Object.entries(shelves)) {
        const shelf = made.createObjectStore(name, { keyPath });
        for (const index of indexes) shelf.createIndex(index.name, index.keyPath);
      }
    },
  });
  for (const [name, { keyPath, records }] of Object.entries(shelves))
    for (const record of records) {
      if (keyPath !== null) await raw.put(name, record);
      else {
        const { key, value } = record as { key: string; value: unknown };
        await raw.put(name, value, key);
      }
    }
  raw.close();
}

async function value<T>(stored: Stored<T>): Promise<T> {
  const result = await stored;
  if (!result.ok) throw new Error(result.reason.sentence);
  return result.value;
}

it.each(FROZEN)(
  'every bike, sheet, version, original and preference of the stored database %s is there',
  async (name) => {
    const frozen = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as StoredDatabase;
    await madeAgain(frozen);
    const store = browserStore();
    const { bikes, unreadable } = await value(store.list());
    expect(unreadable).toEqual([]);
    expect(bikes).toHaveLength(frozen.shelves.bikes.records.length);
    expect(bikes.length).toBeGreaterThan(1);
    let versions = 0;
    let originals = 0;
    const sheets: StoredSheet[] = [];
    for (const { id, name: called, revision } of bikes) {
      const bike = await value(store.load(id));
      expect(frozen.shelves.bikes.records).toContainEqual(bike);
      const opened = openDocument(bike?.text ?? '');
      if (!opened.ok) throw new Error(opened.reason.sentence);
      expect(opened.value.document.bike.name).toBe(called);
      const beside = await value(store.revisions(id));
      for (const version of beside) expect(openDocument(version.text).ok).toBe(true);
      versions += beside.length;
      sheets.push(...(await value(store.sheets(id))));
      originals += (await value(store.originals(id))).length;
      // It is saved as before, from the revision that it had.
      const text = bike?.text ?? '';
      const saved = { id, name: called, writer: 'now', savedAt: 1, text, known: revision };
      expect(await value(store.save(saved))).toEqual({ revision: revision + 1, kept: null });
    }
    expect(versions).toBe(frozen.shelves.revisions.records.length);
    expect(originals).toBe(frozen.shelves.originals.records.length);
    expect([versions, originals]).toEqual([1, 1]);
    // The first build had none.
    const { sheets: shelf } = frozen.shelves as Partial<typeof frozen.shelves>;
    expect(sheets).toEqual(shelf?.records ?? []);
    for (const { text } of sheets) expect(openSheet(text).ok).toBe(true);
    expect(sheets.length).toBe(frozen.version === 1 ? 0 : 1);
    expect(readPreferences(await value(store.loadPreferences()))).toMatchObject({
      theme: 'garage',
      system: 'metric',
      lastBike: expect.any(String) as string,
    });
    store.close();
  },
);
