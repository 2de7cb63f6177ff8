/** Tests of the list of bikes and what can be done with them, on a store in memory. */
import { flushSync } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import {
  begun,
  channels,
  endAll,
  forkOf,
  idle,
  names,
  road,
  track,
} from '../../../tests/support/kept-tab.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { storageFault } from '../../storage/storage-fault.ts';
import { Bikes } from './bikes.svelte.ts';

afterEach(endAll);

/** A page with its list of bikes; `keep` stores the bike on the page with this fork height and gives its id. */
async function shop(store: BikeStore = memoryStore(null), decodes = true) {
  const page = await begun(store);
  const bikes = new Bikes(page.bench, page.keeping, async () => decodes);
  return {
    ...page,
    store,
    bikes,
    keep: async (forkTubes: number): Promise<string> => {
      page.turn(forkTubes);
      await page.leave();
      await idle();
      return page.keeping.bikeId ?? '';
    },
    shown: (): string[] => bikes.shown.map(({ name }) => name),
    told: (): string | undefined => page.keeping.message?.text,
  };
}

const row = (bikes: Bikes, id: string) => bikes.all.find((each) => each.id === id);

describe('the list', () => {
  it('holds the bike on the page under its present name, stored or not', async () => {
    const { bikes, bench, keep, shown } = await shop();
    expect(bikes.all).toMatchObject([{ name: road.bike.name, onPage: true, stored: false }]);
    await keep(7);
    expect(bikes.all).toMatchObject([{ onPage: true, stored: true }]);
    await bikes.rename(bikes.all[0].id, 'Weekend bike');
    expect(bench.session.document.bike.name).toBe('Weekend bike');
    expect(shown()).toEqual(['Weekend bike']);
  });

  it('is searched, and its archived bikes come when they are asked for', async () => {
    const { bikes, keep, shown } = await shop();
    const first = await keep(7);
    await bikes.startWith(track);
    await keep(8);
    await bikes.note(first, { owner: 'Ana' });
    bikes.search = 'ana';
    expect(shown()).toEqual([road.bike.name]);
    bikes.search = '';
    await bikes.archive(first, true);
    expect(shown()).toEqual([track.bike.name]);
    bikes.withArchived = true;
    expect(shown()).toHaveLength(2);
    await bikes.undo();
    bikes.withArchived = false;
    expect(shown()).toHaveLength(2);
  });

  it('is the very same list after it was read anew, until a bike, a card or a sheet has changed', async () => {
    const { keep, keeping, store } = await shop();
    const id = await keep(7);
    const { bikes: before } = keeping;
    await keeping.refresh();
    expect(keeping.bikes).toBe(before);
    await store.saveCard(id, { ...before[0].card, tags: ['race'] });
    await keeping.refresh();
    expect(keeping.bikes).not.toBe(before);
    expect(keeping.bikes[0].card.tags).toEqual(['race']);
  });

  it('is not read anew when a bike is saved', async () => {
    const store = memoryStore(null);
    let lists = 0;
    const { bikes, keep } = await shop({
      ...store,
      list: () => {
        lists += 1;
        return store.list();
      },
    });
    const before = lists;
    await keep(7);
    await keep(8);
    expect(lists).toBe(before);
    expect(bikes.all).toMatchObject([{ revision: 2, stored: true }]);
  });
});

describe('what can be undone on a bike', () => {
  it('is still there after another bike was on the page', async () => {
    const { bench, bikes, fork, keep } = await shop();
    const first = await keep(7);
    await keep(9);
    await bikes.startWith(track);
    await keep(3);
    expect(await bikes.choose(first)).toBe(true);
    expect(fork()).toBe(9);
    bench.session.undo();
    expect(fork()).toBe(7);
    bench.session.redo();
    expect(fork()).toBe(9);
  });

  it('begins anew when another tab has changed the bike since', async () => {
    const store = memoryStore(null);
    const channel = channels();
    const a = await begun(store, channel);
    a.turn(7);
    await a.leave();
    await idle();
    const id = a.keeping.bikeId ?? '';
    const b = await begun(store, channel);
    await a.keeping.startWith(track);
    b.turn(12);
    await b.leave();
    await a.keeping.openStored(id);
    expect(a.fork()).toBe(12);
    expect(a.bench.session.canUndo).toBe(false);
  });

  it('takes a new name given in the list', async () => {
    const { bench, bikes, fork, keep } = await shop();
    const first = await keep(7);
    await keep(9);
    await bikes.startWith(track);
    await bikes.rename(first, 'Renamed');
    await bikes.choose(first);
    expect(bench.session.document.bike.name).toBe('Renamed');
    bench.session.undo();
    bench.session.undo();
    expect(fork()).toBe(7);
  });
});

describe('each act has a way back', () => {
  it('a new bike goes, and the one before is on the page again', async () => {
    const { bench, bikes, keep, keeping, fork, store } = await shop();
    const first = await keep(7);
    await bikes.startWith(track);
    await bikes.undo();
    expect([keeping.bikeId, fork()]).toEqual([first, 7]);
    await bikes.startWith(track);
    await keep(3);
    await bikes.undo();
    expect(await names(store)).toEqual([road.bike.name]);
    // What was done on it is not lost: that it was deleted can be taken back too.
    await bikes.undo();
    expect((await names(store)).sort()).toEqual([road.bike.name, track.bike.name].sort());
    expect(bench.session.document.bike.name).toBe(track.bike.name);
  });

  it('a duplicate takes card and picture along and gets a name of its own', async () => {
    const { bikes, keep, store, told } = await shop();
    const first = await keep(7);
    await bikes.note(first, { owner: 'Ana' });
    await bikes.addPicture(first, new File(['x'], 'x.png'));
    await bikes.duplicate(first);
    await bikes.duplicate(first);
    expect(told()).toBe(`Duplicated ${road.bike.name}.`);
    expect(await names(store)).toEqual([
      `${road.bike.name}, copy 2`,
      `${road.bike.name}, copy`,
      road.bike.name,
    ]);
    const copy = bikes.all.find(({ name }) => name.endsWith(', copy'))?.id ?? '';
    expect(row(bikes, copy)?.card.owner).toBe('Ana');
    expect(await store.pictures(copy)).toMatchObject({ value: [{ bikeId: copy }] });
    expect(await forkOf(store, copy)).toBe(7);
    await bikes.undo();
    expect(await names(store)).toHaveLength(2);
  });

  it('a name, on the page and in the store', async () => {
    const { bench, bikes, keep, shown } = await shop();
    const first = await keep(7);
    await bikes.rename(first, 'One');
    await bikes.undo();
    expect(bench.session.document.bike.name).toBe(road.bike.name);
    await bikes.startWith(track);
    await keep(3);
    await bikes.rename(first, 'Two');
    expect(shown()).toContain('Two');
    await bikes.undo();
    expect(shown()).toContain(road.bike.name);
  });

  it('a name of nothing is refused in words', async () => {
    const { bikes, keep, told, keeping } = await shop();
    const first = await keep(7);
    await bikes.rename(first, ' ');
    expect(told()).toBe('A bike needs a name.');
    expect(keeping.message?.kind).toBe('error');
  });

  it('owner, notes and tags; a bike not stored yet is stored for them', async () => {
    const { bikes, keeping, store } = await shop();
    const id = keeping.bikeId ?? '';
    await bikes.note(id, { owner: 'Ana' });
    await bikes.note(id, { tags: ['race', 'wet'] });
    await bikes.note(id, { notes: 'Oil leak' });
    expect(await names(store)).toEqual([road.bike.name]);
    expect(row(bikes, id)?.card).toEqual({
      owner: 'Ana',
      tags: ['race', 'wet'],
      notes: 'Oil leak',
      archived: false,
    });
    await bikes.undo();
    await bikes.undo();
    expect(row(bikes, id)?.card).toMatchObject({ owner: 'Ana', tags: [], notes: '' });
  });

  it('a deleted bike comes back whole, on the page with all that can be undone', async () => {
    const { bench, bikes, fork, keep, keeping, store, told } = await shop();
    const first = await keep(7);
    await keep(9);
    await bikes.note(first, { owner: 'Ana' });
    await bikes.addPicture(first, new File(['x'], 'x.png'));
    await store.saveSheet({ id: 's', bikeId: first, day: '2026-11-01', madeAt: 1, text: '{}' });
    await bikes.remove(first);
    expect(told()).toBe(`Deleted ${road.bike.name}.`);
    expect(keeping.bikeId).not.toBe(first);
    expect(await names(store)).toEqual([]);
    keeping.message?.actions?.[0].onclick();
    await idle();
    await idle();
    expect([keeping.bikeId, fork()]).toEqual([first, 9]);
    expect(row(bikes, first)).toMatchObject({ sheets: 1, card: { owner: 'Ana' } });
    expect(await store.pictures(first)).toMatchObject({ value: [{ bikeId: first }] });
    bench.session.undo();
    expect(fork()).toBe(7);
  });
});

describe('what lies beside a bike', () => {
  it('a picture is kept as it is, shown with its card, and removed', async () => {
    const { bikes, keep } = await shop();
    const first = await keep(7);
    await bikes.show(first);
    const file = new File(['x'], 'x.png');
    await bikes.addPicture(first, file);
    expect(bikes.beside?.pictures.map(({ blob }) => blob)).toEqual([file]);
    const [picture] = bikes.beside?.pictures ?? [];
    await bikes.removePicture(picture);
    expect(bikes.beside?.pictures).toEqual([]);
    await bikes.undo();
    expect(bikes.beside?.pictures).toHaveLength(1);
  });

  it('a file that the browser cannot show is refused in words', async () => {
    const { bikes, keep, told, store } = await shop(memoryStore(null), false);
    const first = await keep(7);
    await bikes.addPicture(first, new File(['x'], 'x.heic'));
    expect(told()).toBe('x.heic was not kept. This browser cannot show it as a picture.');
    expect(await store.pictures(first)).toMatchObject({ value: [] });
  });

  it('other versions and originals open as bikes, are compared, and are removed', async () => {
    const { bench, bikes, fork, keep, keeping, store } = await shop();
    const first = await keep(7);
    const loaded = await store.load(first);
    if (!loaded.ok || loaded.value === null) throw new Error('the bike is not stored');
    await keep(9);
    await store.keepRevision({ ...loaded.value, writer: 'other tab' });
    await store.keepOriginal({ id: first, keptAt: 5, text: loaded.value.text });
    await bikes.show(first);
    expect(bikes.beside).toMatchObject({ versions: [{ writer: 'other tab' }], originals: [{ keptAt: 5 }] });
    expect(bikes.compare(loaded.value.text, 'Other version')).toBe(true);
    expect(bench.session.document.baseline).toMatchObject({ name: 'Other version', setup: { forkTubes: 7 } });
    expect(fork()).toBe(9);
    await bikes.removeVersion({ ...loaded.value, writer: 'other tab' });
    expect(bikes.beside?.versions).toEqual([]);
    await bikes.undo();
    expect(bikes.beside?.versions).toHaveLength(1);
    await bikes.removeOriginal({ id: first, keptAt: 5, text: loaded.value.text });
    expect(bikes.beside?.originals).toEqual([]);
    await bikes.undo();
    expect(bikes.beside?.originals).toHaveLength(1);
    expect(await bikes.openVersion(loaded.value.text, 'the other version')).toBe(true);
    flushSync();
    expect(fork()).toBe(7);
    expect(keeping.bikeId).not.toBe(first);
    expect(bikes.compare('{', 'Other version')).toBe(false);
  });
});

it('a bike that the store has lost is saved again as it is on the page, which says so', async () => {
  const { bikes, keep, keeping, store, told, fork } = await shop();
  const first = await keep(7);
  const cleared = await store.remove(first);
  expect(cleared.ok && cleared.value?.bike.id).toBe(first);
  await keep(9);
  expect(told()).toMatch(/^This bike was gone from the browser’s storage and is saved again/);
  expect(keeping.message?.kind).toBe('warning');
  expect([await forkOf(store, first), fork()]).toEqual([9, 9]);
  expect(bikes.all).toMatchObject([{ id: first, stored: true, sheets: 0 }]);
  keeping.dismiss();
  await keep(8);
  expect(keeping.message).toBeNull();
});

it('where bikes stay is said until the first one does, and never of a store that does not last', async () => {
  const { keep, keeping } = await shop();
  expect(keeping.placeWords).toBe(
    'Bikes stay in this browser on this device, at the address http://shop. Another address is another store. A private window forgets its bikes when it is closed.',
  );
  await keep(7);
  expect(keeping.placeWords).toBe('');
  const { keeping: shortLived } = await shop(memoryStore(storageFault('blocked')));
  expect(shortLived.placeWords).toBe('');
});

it('after the first save the browser is asked once to keep its store', async () => {
  const { keep, keeping } = await shop();
  expect(keeping.persistence).toBeNull();
  await keep(7);
  expect(keeping.persistence).toBe('kept');
});
