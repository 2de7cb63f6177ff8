/** A program killed in the middle of a write: the store then holds what was there before or what was to be, never half of it. */
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { EMPTY_CARD } from '../../src/storage/bike-index.ts';
import type {
  BikeStore,
  StoredBike,
  StoredLesson,
  StoredSheet,
  WholeBike,
} from '../../src/storage/bike-store.ts';
import { browserStore } from '../../src/storage/browser-store.ts';
import { cases } from '../support/cases.ts';
import { dumped, EMPTY, filledWith, type Dump } from '../support/stored-dump.ts';

const RUNS = cases(20, 1000);
const PATIENCE_MS = cases(60_000, 3_000_000);

const bike = (id: string, more: Partial<StoredBike> = {}): StoredBike => ({
  id,
  name: `Bike ${id}`,
  revision: 2,
  writer: 'here',
  savedAt: 10,
  text: `{"bike":"${id}"}`,
  ...more,
});

const sheet = (id: string, bikeId: string, day = '2026-05-02'): StoredSheet => ({
  id,
  bikeId,
  day,
  madeAt: 5,
  text: `{"sheet":"${id}"}`,
});

const lesson = (id: string): StoredLesson => ({ id, madeAt: 5, text: `{"lesson":"${id}"}` });

const picture = (id: string, bikeId: string) => ({ id, bikeId, keptAt: 1, blob: new Blob([id]) });

const whole = (id: string): WholeBike => ({
  bike: bike(id),
  card: { ...EMPTY_CARD, owner: 'Ada' },
  sheets: [sheet(`${id}-1`, id), sheet(`${id}-2`, id, '2026-06-01')],
  revisions: [bike(id, { writer: 'there', text: '{}' })],
  originals: [{ id, keptAt: 3, text: '{' }],
  pictures: [picture(`${id}-p`, id)],
});

/** What the program does to the store, each act over several records. */
const ACTS: Readonly<Record<string, (store: BikeStore) => Promise<unknown>>> = {
  'saves a new bike': (store) => store.save({ ...bike('new'), known: null }),
  'saves a bike': (store) => store.save({ ...bike('one', { text: '{"a":1}' }), known: 2 }),
  'saves a bike that another tab has changed': (store) =>
    store.save({ ...bike('one', { writer: 'third', text: '{"a":2}' }), known: 1 }),
  'notes a card': (store) => store.saveCard('one', { ...EMPTY_CARD, owner: 'Eve' }),
  'keeps a sheet': (store) => store.saveSheet(sheet('s', 'one', '2026-07-01')),
  'puts a sheet right': (store) => store.saveSheet(sheet('one-2', 'one', '2026-04-01')),
  'deletes a sheet': (store) => store.removeSheet('one-2'),
  'deletes a bike': (store) => store.remove('one'),
  'puts a bike back': (store) => store.putBack(whole('three')),
  'keeps a lesson': (store) => store.saveLesson(lesson('l')),
  'deletes a lesson': (store) => store.removeLesson('first'),
  'brings a file in': (store) =>
    store.add({
      bikes: [
        { bike: bike('four'), card: EMPTY_CARD },
        { bike: bike('five'), card: EMPTY_CARD },
      ],
      versions: [bike('one', { writer: 'file' })],
      sheets: [sheet('f1', 'four'), sheet('f2', 'one', '2026-08-01')],
      lessons: [lesson('f3'), lesson('f4')],
      pictures: [picture('f5', 'four'), picture('f6', 'one')],
    }),
};

/** Lets so many writes be asked for and ends everything at the next one, as if the process were gone. True when it came to that. */
function killAfter(writes: number): () => boolean {
  const { put, delete: remove } = IDBObjectStore.prototype;
  let left = writes;
  let killed = false;
  const dies = (shelf: IDBObjectStore): void => {
    if (!killed && left-- > 0) return;
    if (!killed) shelf.transaction.abort();
    killed = true;
    throw new DOMException('killed', 'AbortError');
  };
  IDBObjectStore.prototype.put = function (...given) {
    dies(this);
    return put.apply(this, given);
  };
  IDBObjectStore.prototype.delete = function (...given) {
    dies(this);
    return remove.apply(this, given);
  };
  return () => {
    Object.assign(IDBObjectStore.prototype, { put, delete: remove });
    return killed;
  };
}

async function after(before: Dump, act: (store: BikeStore) => Promise<unknown>): Promise<Dump> {
  await filledWith(before);
  const store = browserStore();
  await act(store);
  store.close();
  return await dumped();
}

it(
  'a kill at any write of any act leaves the store as it was or as it was to be',
  async () => {
    await filledWith(EMPTY);
    const store = browserStore();
    await store.putBack(whole('one'));
    await store.putBack(whole('two'));
    await store.saveLesson(lesson('first'));
    store.close();
    const before = await dumped();
    const counts = { killed: 0, old: 0, new: 0 };
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...Object.keys(ACTS)), fc.nat(8), async (name, writes) => {
        const act = ACTS[name];
        const to = await after(before, act);
        expect(to).not.toEqual(before);
        const left = await after(before, async (killedStore) => {
          const end = killAfter(writes);
          await act(killedStore);
          if (end()) counts.killed++;
        });
        const isOld = JSON.stringify(left) === JSON.stringify(before);
        if (!isOld) expect(left).toEqual(to);
        counts[isOld ? 'old' : 'new']++;
      }),
      { numRuns: RUNS },
    );
    expect(counts.killed).toBeGreaterThan(RUNS / 4);
    expect(counts.old).toBeGreaterThanOrEqual(counts.killed);
    expect(counts.new).toBeGreaterThan(0);
  },
  PATIENCE_MS,
);
