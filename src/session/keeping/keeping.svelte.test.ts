/** Tests of keeping bikes: what was done before the store answered, what is stored and when, and what the page says. */
import { flushSync } from 'svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { begun, endAll, forkOf, idle, names, road, tab, track } from '../../../tests/support/kept-tab.ts';
import { fail } from '../../core/numeric/result.ts';
import { setAdjuster } from '../../document/edits.ts';
import { saveDocument } from '../../document/save-document.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { storageFault, type StorageFault } from '../../storage/storage-fault.ts';

afterEach(async () => {
  await endAll();
  vi.restoreAllMocks();
});

describe('before the store has answered', () => {
  it('an edit is made, and is stored once it has', async () => {
    const store = memoryStore(null);
    const { keeping, turn, leave, fork } = tab(store);
    const beginning = keeping.begin();
    turn(11);
    await beginning;
    await leave();
    expect(await forkOf(store, keeping.bikeId)).toBe(11);
    expect(fork()).toBe(11);
  });

  it('an edit made before keeping is there is stored, and the last bike does not take the page', async () => {
    const store = memoryStore(null);
    const before = await begun(store);
    before.turn(7);
    await before.leave();
    await idle();
    const { keeping, leave, fork } = tab(
      store,
      () => null,
      ({ session }) => session.commit((from) => setAdjuster(from, 'forkTubes', 12), 'Fork tubes'),
    );
    await keeping.begin();
    await leave();
    expect(fork()).toBe(12);
    expect(await forkOf(store, keeping.bikeId)).toBe(12);
    expect(await forkOf(store, before.keeping.bikeId)).toBe(7);
  });

  it('an edit keeps the page: the last bike stays in the list', async () => {
    const store = memoryStore(null);
    const before = await begun(store);
    before.turn(7);
    await before.leave();
    await idle();
    const { keeping, turn, leave, fork } = tab(store);
    const beginning = keeping.begin();
    turn(11);
    await beginning;
    await leave();
    expect(fork()).toBe(11);
    expect(keeping.bikeId).not.toBe(before.keeping.bikeId);
    expect(await forkOf(store, before.keeping.bikeId)).toBe(7);
    expect(await names(store)).toHaveLength(2);
  });

  it('a drag under way is not taken out of the hand', async () => {
    const store = memoryStore(null);
    const before = await begun(store);
    before.turn(7);
    await before.leave();
    const { bench, keeping, fork } = tab(store);
    const beginning = keeping.begin();
    bench.session.preview((from) => setAdjuster(from, 'forkTubes', 13));
    await beginning;
    expect(fork()).toBe(13);
    bench.session.commitDraft('Fork height');
    await (async () => {
      flushSync();
      await keeping.end();
    })();
    expect(await forkOf(store, keeping.bikeId)).toBe(13);
  });

  it('a file is opened and stored, and a demonstration is opened and not stored', async () => {
    const store = memoryStore(null);
    const first = tab(store);
    const file = new File([saveDocument(track)], 'track.json');
    const opening = first.keeping.openFiles([file]);
    const beginning = first.keeping.begin();
    await Promise.all([opening, beginning]);
    await first.leave();
    expect(await names(store)).toEqual(['Track day']);

    const other = memoryStore(null);
    const second = tab(other);
    await second.keeping.startWith(track);
    await second.keeping.begin();
    await second.leave();
    expect(second.bench.session.document.bike.name).toBe('Track day');
    expect(await names(other)).toEqual([]);
  });

  it('a chosen preference stays, and the others come back', async () => {
    const store = memoryStore(null);
    await store.savePreferences({ theme: 'garage', system: 'inch' });
    const { bench, keeping } = tab(store);
    const beginning = keeping.begin();
    bench.preferences.change({ theme: 'sun' });
    await beginning;
    flushSync();
    await idle();
    expect(bench.preferences.data).toMatchObject({ theme: 'sun', system: 'inch' });
    expect(await store.loadPreferences()).toMatchObject({ value: { theme: 'sun', system: 'inch' } });
  });
});

describe('what is stored', () => {
  it('is nothing until a bike is changed', async () => {
    const store = memoryStore(null);
    const { keeping, leave, turn } = await begun(store);
    await keeping.startWith(track);
    await leave();
    expect(await names(store)).toEqual([]);
    turn(3);
    await leave();
    expect(await names(store)).toEqual(['Track day']);
  });

  it('comes back in the next page, and so do bikes left for others', async () => {
    const store = memoryStore(null);
    const first = await begun(store);
    first.turn(9);
    await first.keeping.startWith(track);
    first.turn(4);
    await first.leave();
    await idle();
    expect(first.keeping.bikes.map(({ name }) => name)).toEqual(['Track day', road.bike.name]);
    const second = await begun(store);
    expect(second.bench.session.document.bike.name).toBe('Track day');
    expect(second.fork()).toBe(4);
    const road2 = second.keeping.bikes.find(({ name }) => name === road.bike.name);
    await second.keeping.openStored(road2?.id ?? '');
    expect(second.fork()).toBe(9);
  });

  it('a demonstration that was only looked at does not displace the bike to come back to', async () => {
    const store = memoryStore(null);
    const first = await begun(store);
    first.turn(9);
    await first.leave();
    await first.keeping.startWith(track);
    await first.leave();
    await idle();
    const second = await begun(store);
    expect(second.fork()).toBe(9);
  });

  it('undo is stored too', async () => {
    const store = memoryStore(null);
    const { bench, keeping, turn, leave } = await begun(store);
    turn(9);
    await leave();
    bench.undo();
    await leave();
    expect(await forkOf(store, keeping.bikeId)).toBe(road.setup.forkTubes);
  });

  it('an opened bike that was repaired has a message, and is stored with its original beside it', async () => {
    const store = memoryStore(null);
    const { keeping, leave } = await begun(store);
    const text = saveDocument(track).replace('"invented": true', '"invented": "yes"');
    await keeping.openFiles([new File([text], 'odd.json')]);
    expect(keeping.message?.text).toBe('Opened odd.json, with one change. The file itself is as it was.');
    expect(keeping.message?.details[0]).toContain('bike.invented');
    await leave();
    expect(keeping.message?.kind).toBe('warning');
    expect(await names(store)).toEqual(['Track day']);
    expect(await store.originals(keeping.bikeId ?? '')).toMatchObject({ value: [{ text }] });
  });
});

describe('the last bike chosen', () => {
  it('wins over what takes longer to be found', async () => {
    const store = memoryStore(null);
    const { bench, keeping, turn } = await begun(store);
    turn(9);
    await keeping.startWith(track);
    await idle();
    const stored = keeping.bikes[0]?.id ?? '';
    let answer = (): void => {};
    const slow = new Promise<void>((done) => (answer = done));
    const file = new File([saveDocument(road)], 'slow.json');
    vi.spyOn(file, 'arrayBuffer').mockImplementation(async () => {
      await slow;
      return new ArrayBuffer(0);
    });
    const opening = keeping.openFiles([file]);
    await keeping.openStored(stored);
    answer();
    await opening;
    expect(keeping.bikeId).toBe(stored);
    expect(keeping.message).toBeNull();
    expect(bench.session.document.setup.forkTubes).toBe(9);
  });
});

describe('when the store takes nothing', () => {
  it('the page asks before a bike that would be lost makes room for another', async () => {
    let fault: StorageFault | null = null;
    const inner = memoryStore(null);
    const store: BikeStore = {
      ...inner,
      save: async (write) => (fault ? fail(fault) : inner.save(write)),
    };
    const { bench, keeping, turn, fork } = await begun(store);
    fault = storageFault('full');
    turn(9);
    flushSync();
    await keeping.startWith(track);
    expect(keeping.status.state).toBe('full');
    expect(keeping.waiting?.name).toBe(road.bike.name);
    expect(fork()).toBe(9);
    keeping.stay();
    expect(keeping.waiting).toBeNull();
    await keeping.startWith(track);
    keeping.leaveAnyway();
    await idle();
    expect(bench.session.document.bike.name).toBe('Track day');
    expect(keeping.status.state).toBe('saved');
  });

  it('a message says that preferences could not be stored, until they can', async () => {
    let fault: StorageFault | null = null;
    const inner = memoryStore(null);
    const store: BikeStore = {
      ...inner,
      savePreferences: async (data) => (fault ? fail(fault) : inner.savePreferences(data)),
    };
    const { bench, keeping } = await begun(store);
    fault = storageFault('full');
    bench.preferences.change({ theme: 'sun' });
    flushSync();
    await idle();
    expect(keeping.fault?.kind).toBe('full');
    fault = null;
    bench.preferences.change({ theme: 'garage' });
    flushSync();
    await idle();
    expect(keeping.fault).toBeNull();
  });
});

it('a message of what was done stays until the next change, one of what went wrong until it is dismissed', async () => {
  const { keeping, turn } = await begun(memoryStore(null));
  await keeping.openFiles([new File([saveDocument(track)], 'track.json')]);
  expect(keeping.message?.text).toBe('Opened track.json.');
  expect(keeping.message?.details).toEqual([]);
  flushSync();
  expect(keeping.message?.kind).toBe('done');
  turn(3);
  flushSync();
  expect(keeping.message).toBeNull();
  await keeping.openFiles([new File(['{'], 'cut.json')]);
  turn(4);
  flushSync();
  expect(keeping.message?.kind).toBe('error');
  expect(keeping.message?.text).toMatch(/^cut\.json was not opened\. /);
  keeping.dismiss();
  expect(keeping.message).toBeNull();
});

it('takes several files and those of a folder into the list, with a report of what is no bike', async () => {
  const store = memoryStore(null);
  const { bench, keeping } = await begun(store);
  const text = saveDocument(track);
  // As a browser gives a dropped folder: in parts, and beside it a file of its name that cannot be read.
  const entry = (file: File): unknown => ({
    isFile: true,
    isDirectory: false,
    name: file.name,
    file: (found: (file: File) => void) => found(file),
  });
  const parts = [
    [entry(new File([text.replace('Track day', 'Rain day')], 'c.json'))],
    [entry(new File(['%'], 'photo.jpg'))],
    [],
  ];
  const folder = {
    isFile: false,
    isDirectory: true,
    name: 'shop',
    createReader: () => ({ readEntries: (found: (part: unknown) => void) => found(parts.shift()) }),
  } as unknown as FileSystemEntry;
  await keeping.openFiles(
    [new File([text], 'a.json'), new File(['{'], 'cut.json'), new File([], 'shop')],
    [folder],
  );
  expect(keeping.message).toMatchObject({
    kind: 'warning',
    text: 'Brought back 2 bikes. What was here is as it was.',
    details: [
      'One file does not end in .json and was left out.',
      'cut.json was not opened. The file breaks off before its end; part of it is missing.',
    ],
  });
  expect(bench.session.document.bike.name).toBe(road.bike.name);
  expect((await names(store)).sort()).toEqual(['Rain day', 'Track day']);
});

it('ends with everything saved and nothing listened to', async () => {
  const store = memoryStore(null);
  const { keeping, turn, listens } = await begun(store);
  turn(6);
  flushSync();
  await keeping.end();
  expect(listens()).toBe(false);
  expect(await forkOf(store, keeping.bikeId)).toBe(6);
  turn(8);
  flushSync();
  expect(await forkOf(store, keeping.bikeId)).toBe(6);
});
