/** Tests of a bike from a link: shown beside the user's own bike, never saved, kept as a copy, and left again. */
import { flushSync } from 'svelte';
import { afterEach, expect, it } from 'vitest';
import { begun, endAll, forkOf, idle, names, track } from '../../../tests/support/kept-tab.ts';
import { setAdjuster } from '../../document/edits.ts';
import { saveDocument } from '../../document/save-document.ts';
import { makeLink } from '../../storage/link/bike-link.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { LinkVisit } from './link-visit.svelte.ts';

afterEach(endAll);

async function fragment(): Promise<string> {
  const made = await makeLink(track, '');
  if (!made.ok) throw new Error(made.reason.kind);
  return made.value;
}

/** A page whose own bike was changed and saved, and then shows the bike of a link. */
async function visiting() {
  const store = memoryStore(null);
  const own = await begun(store);
  own.turn(9);
  await own.leave();
  const { bikeId } = own.keeping;
  const visit = new LinkVisit(own.bench, own.keeping);
  await visit.open(await fragment());
  flushSync();
  await idle();
  return { ...own, store, ownId: bikeId, visit };
}

it('is shown to the last digit, and nothing of it is saved', async () => {
  const { bench, keeping, store, visit, leave, ownId } = await visiting();
  expect(visit.refusal).toBeNull();
  expect(visit.shown).toBe('Track day');
  expect(visit.own).toBe('Road sport, as delivered');
  expect(saveDocument(bench.session.document)).toBe(saveDocument(track));
  expect(await keeping.keepNow()).toBeNull();
  await leave();
  expect(await names(store)).toEqual(['Road sport, as delivered']);
  expect(await forkOf(store, ownId)).toBe(9);
});

it('takes no change, by step or by drag, and says why', async () => {
  const { bench, turn, store, leave } = await visiting();
  turn(8);
  expect(bench.session.document.setup.forkTubes).toBe(track.setup.forkTubes);
  expect(bench.session.refusal).toMatch(/came in a link.*Keep a copy to change it/);
  bench.session.preview((from) => setAdjuster(from, 'forkTubes', 8));
  expect(bench.session.draft).toBeNull();
  bench.session.commitDraft('Fork tubes above clamp');
  expect(bench.session.canUndo).toBe(false);
  await leave();
  expect(await names(store)).toHaveLength(1);
});

it('makes way for the bike from before it, with what can be undone there', async () => {
  const { bench, keeping, visit, ownId, fork } = await visiting();
  await visit.goBack();
  expect(keeping.bikeId).toBe(ownId);
  expect(visit.shown).toBeNull();
  expect(fork()).toBe(9);
  bench.undo();
  expect(fork()).toBe(5);
});

it('makes way for a bike that was never stored too', async () => {
  const own = await begun(memoryStore(null));
  const visit = new LinkVisit(own.bench, own.keeping);
  await visit.open(await fragment());
  await visit.goBack();
  expect(own.bench.session.document.bike.name).toBe('Road sport, as delivered');
  own.turn(8);
  expect(own.fork()).toBe(8);
});

it('is kept as a bike that can be changed, under a name that no other bike has', async () => {
  const { bench, keeping, store, visit, turn, fork, leave, ownId } = await visiting();
  await visit.keep();
  expect(visit.shown).toBeNull();
  expect(keeping.message?.text).toBe('Track day is among your bikes now.');
  turn(8);
  expect(fork()).toBe(8);
  await leave();
  expect(await names(store)).toEqual(['Track day', 'Road sport, as delivered']);
  expect(await forkOf(store, ownId)).toBe(9);
  await visit.open(await fragment());
  await visit.keep();
  expect(bench.session.document.bike.name).toBe('Track day, copy');
  expect(await names(store)).toHaveLength(3);
});

it('leaves the same bike behind when a second link follows', async () => {
  const { keeping, visit, ownId } = await visiting();
  await visit.open(await fragment());
  expect(visit.shown).toBe('Track day');
  await visit.goBack();
  expect(keeping.bikeId).toBe(ownId);
});

it('leaves the page as it is where the link is damaged', async () => {
  const store = memoryStore(null);
  const { bench, keeping, turn, leave } = await begun(store);
  turn(9);
  await leave();
  const before = bench.session.history;
  const visit = new LinkVisit(bench, keeping);
  await visit.open((await fragment()).slice(0, -5));
  expect(visit.refusal).toMatch(/cut off or damaged/);
  expect(bench.session.history).toBe(before);
  visit.dismiss();
  await visit.open('#readings');
  expect(visit.refusal).toBeNull();
});
