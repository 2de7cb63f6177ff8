/** Tests of the setup sheets of the bike on the page. */
import { expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../../tests/support/linked-bike.ts';
import { newDocument } from '../../../tests/support/new-document.ts';
import { succeed } from '../../core/numeric/result.ts';
import { setAdjuster } from '../../document/edits.ts';
import { SLACK_HAD } from '../../document/sheet.ts';
import { slackHad } from '../slack-had.ts';
import type { BikeStore, StoredSheet } from '../../storage/bike-store.ts';
import { memoryStore } from '../../storage/memory-store.ts';
import { Keeping } from './keeping.svelte.ts';
import { Sheets } from './sheets.svelte.ts';
import { Workbench } from '../workbench.svelte.ts';

const NOTES = { place: 'Invented hill road', changed: 'Shock 3 mm longer' };

async function opened(store: BikeStore = memoryStore(null), now = () => 2000) {
  const bench = new Workbench(newDocument(linkedBike, sprungSetup));
  const keeping = new Keeping(bench, bench.session.history.present, {
    findStore: async () => store,
    channel: () => null,
    onLeaving: () => () => {},
    address: 'http://shop',
    now: () => 1000,
    persist: async () => 'kept',
  });
  await keeping.begin();
  const sheets = new Sheets(bench, now);
  await sheets.show(keeping, keeping.bikeId);
  return { bench, keeping, sheets, store };
}

async function log(sheets: Sheets): Promise<boolean> {
  sheets.begin('2026-05-02', NOTES);
  return await sheets.log();
}

const turn = (bench: Workbench, value: number): void =>
  bench.session.commit((from) => setAdjuster(from, 'shockLength', value), 'Shock length');

it('a sheet keeps the bike as set with what it reads, and stores a bike that nobody changed', async () => {
  const { bench, keeping, sheets, store } = await opened();
  turn(bench, 3);
  expect(await log(sheets)).toBe(true);
  const [{ sheet }] = sheets.kept;
  expect(sheet.setup.shockLength).toBe(3);
  expect(sheet.readings.riderUp.trail).toBeGreaterThan(50);
  expect(sheet.notes).toEqual(NOTES);
  expect(sheet.u).toBeUndefined();
  const listed = await store.list();
  if (!listed.ok) throw new Error(listed.reason.sentence);
  expect(listed.value.bikes).toMatchObject([{ id: keeping.bikeId, sheets: 1, latestSheet: '2026-05-02' }]);
  await keeping.end();
});

it('sheets of one day stay in the order they were logged, though the clock is set back between them', async () => {
  const clock = [9_000_000, 5_400_000];
  const { bench, keeping, sheets, store } = await opened(undefined, () => clock[0]);
  await log(sheets);
  turn(bench, 3);
  clock.shift();
  await log(sheets);
  const lengths = (): readonly number[] => sheets.kept.map(({ sheet }) => sheet.setup.shockLength);
  expect(lengths()).toEqual([0, 3]);
  await sheets.show(keeping, null);
  await sheets.show(keeping, keeping.bikeId);
  expect(lengths()).toEqual([0, 3]);
  expect(await store.sheets(keeping.bikeId ?? '')).toMatchObject({ value: [{}, {}] });
  await keeping.end();
});

it('a sheet keeps the slack that a chain left alone had, where that is not what was set', async () => {
  const { bench, keeping, sheets } = await opened();
  await log(sheets);
  turn(bench, 6);
  await log(sheets);
  const [asSet, longer] = sheets.kept.map(({ sheet }) => sheet.readings.toppedOut?.[SLACK_HAD]);
  expect(asSet).toBeUndefined();
  // The wheel hangs lower, where the chain is slacker.
  expect(longer).toBeGreaterThan(bench.session.document.setup.chainSlack);
  expect(longer).toBe(slackHad(bench.session.document));
  await keeping.end();
});

it('a sheet of a measured bike keeps how sure its readings were, as it is set then', async () => {
  const { bench, keeping, sheets } = await opened();
  turn(bench, 3);
  bench.standing.spreadsByState = async ({ shockLength }) => ({ riderUp: { trail: shockLength } });
  expect(await log(sheets)).toBe(true);
  expect(sheets.kept[0].sheet.u).toEqual({ riderUp: { trail: 3 } });
  await keeping.end();
});

it('a hundred thousand records that are no sheets hide none that is one, and the page goes on answering', async () => {
  const inner = memoryStore(null);
  let beside: readonly StoredSheet[] = [];
  const store: BikeStore = {
    ...inner,
    sheets: async (id) => {
      const found = await inner.sheets(id);
      return found.ok ? succeed([...beside, ...found.value]) : found;
    },
  };
  const { keeping, sheets } = await opened(store);
  await log(sheets);
  const bikeId = keeping.bikeId ?? '';
  beside = Array.from({ length: 100_000 }, (_, i) => ({
    id: `odd-${i}`,
    bikeId,
    day: '2026-05-02',
    madeAt: i,
    text: '{}',
  }));
  let answers = 0;
  const answering = setInterval(() => answers++);
  await sheets.show(keeping, bikeId);
  clearInterval(answering);
  expect(answers).toBeGreaterThan(2);
  expect([sheets.kept.length, sheets.unreadable.length]).toEqual([1, 100_000]);
  await keeping.end();
});

it('opening one sets the bike as it was, as one undo entry, and later work leaves the sheet alone', async () => {
  const { bench, keeping, sheets } = await opened();
  await log(sheets);
  const [{ id, sheet }] = sheets.kept;
  turn(bench, 7);
  sheets.open(id);
  expect(bench.session.document.setup).toEqual(sheet.setup);
  expect(bench.session.lastLabel).toBe('Set as on Invented hill road, 2 May 2026');
  bench.undo();
  expect(bench.session.document.setup.shockLength).toBe(7);
  expect(sheets.kept[0].sheet).toEqual(sheet);
  await keeping.end();
});

it('one taken as baseline gives it its name', async () => {
  const { bench, keeping, sheets } = await opened();
  await log(sheets);
  turn(bench, 7);
  sheets.useAsBaseline(sheets.kept[0].id);
  const { baseline, setup } = bench.session.document;
  expect(baseline.name).toBe('Invented hill road, 2 May 2026');
  expect([baseline.setup.shockLength, setup.shockLength]).toEqual([0, 7]);
  bench.undo();
  expect(bench.session.document.baseline.name).toBeUndefined();
  await keeping.end();
});

it('a correction keeps both values, also after the page is opened again', async () => {
  const { bench, keeping, sheets } = await opened();
  await log(sheets);
  const [{ id }] = sheets.kept;
  expect(await sheets.correct(id, 'changed', 'Shock 4 mm longer')).toBe(true);
  expect(await sheets.correctDay(id, '2026-05-03')).toBe(true);
  expect(await sheets.correctDay(id, '3 May')).toBe(false);
  expect(sheets.refusal).toContain('such as 2026-11-26');
  const again = new Sheets(bench);
  await again.show(keeping, keeping.bikeId);
  expect(again.kept[0].sheet).toMatchObject({
    day: '2026-05-03',
    notes: { changed: 'Shock 4 mm longer' },
    corrections: [
      { at: 2000, what: 'What was changed', from: 'Shock 3 mm longer', to: 'Shock 4 mm longer' },
      { at: 2000, what: 'Day', from: '2026-05-02', to: '2026-05-03' },
    ],
  });
  await keeping.end();
});

it('a line of the workshop’s own is put right as a note is, and one that is not there changes nothing', async () => {
  const { keeping, sheets } = await opened();
  sheets.begin('2026-05-02', NOTES);
  sheets.fill({ further: [{ name: 'Steering damper', text: '8 clicks' }] });
  expect(await sheets.log()).toBe(true);
  const [{ id }] = sheets.kept;
  expect(await sheets.correctFurther(id, 0, '9 clicks')).toBe(true);
  expect(await sheets.correctFurther(id, 1, '3 clicks')).toBe(true);
  expect(sheets.kept[0].sheet).toMatchObject({
    further: [{ name: 'Steering damper', text: '9 clicks' }],
    corrections: [{ at: 2000, what: 'Steering damper', from: '8 clicks', to: '9 clicks' }],
  });
  await keeping.end();
});

it('a deleted sheet can be brought back as it was', async () => {
  const { keeping, sheets } = await opened();
  await log(sheets);
  const [before] = sheets.kept;
  await sheets.remove(before.id);
  expect(sheets.kept).toEqual([]);
  await sheets.bringBack();
  expect(sheets.kept).toEqual([before]);
  expect(sheets.removed).toBeNull();
  await keeping.end();
});

it('a sheet that cannot be read is named with the reason and stays in the store', async () => {
  const { keeping, sheets, store } = await opened();
  await log(sheets);
  const bikeId = keeping.bikeId ?? '';
  await store.saveSheet({ id: 'broken', bikeId, day: '2026-01-01', madeAt: 1, text: '{"format":"other"}' });
  await sheets.show(keeping, bikeId);
  expect(sheets.unreadable).toMatchObject([{ id: 'broken', day: '2026-01-01' }]);
  expect(sheets.unreadable[0].sentence).toContain('not a setup sheet');
  expect(sheets.kept).toHaveLength(1);
  await keeping.end();
});

it('what is being filled in stays with its bike until it is kept or dropped', async () => {
  const { bench, keeping, sheets } = await opened();
  sheets.begin('2026-05-02', NOTES);
  sheets.fill({ notes: { ...NOTES, felt: 'calm' } });
  expect(bench.preferences.data.sheetDrafts).toEqual([
    { bike: keeping.bikeId, day: '2026-05-02', notes: { ...NOTES, felt: 'calm' }, further: [] },
  ]);
  await sheets.show(keeping, 'another');
  expect(sheets.draft).toBeNull();
  // One begun on another bike takes nothing from it, and is its own to drop.
  sheets.begin('2026-05-03', {});
  expect(sheets.draft?.day).toBe('2026-05-03');
  sheets.drop();
  await sheets.show(keeping, keeping.bikeId);
  sheets.fill({ day: 'soon' });
  expect(await sheets.log()).toBe(false);
  expect(sheets.draft?.notes.felt).toBe('calm');
  sheets.fill({ day: '2026-05-04' });
  expect(await sheets.log()).toBe(true);
  expect(sheets.draft).toBeNull();
  expect(sheets.kept.map(({ sheet }) => sheet.day)).toEqual(['2026-05-04']);
  await keeping.end();
});

it('after ten sheets a copy in a file is due, until all bikes are saved', async () => {
  const { keeping, sheets } = await opened();
  for (let i = 0; i < 9; i++) await log(sheets);
  expect(sheets.copyDue).toBeNull();
  await log(sheets);
  expect(sheets.copyDue).toBe(10);
  sheets.copied();
  expect(sheets.copyDue).toBeNull();
  await keeping.end();
});

it('what the rider says goes on the sheet being filled in, below what stands there, with what was turned by then', async () => {
  const { bench, keeping, sheets } = await opened();
  turn(bench, 1);
  expect(await sheets.note(keeping, { openingGas: 'It runs wide.', why: 'It runs wide.', felt: '' })).toBe(
    true,
  );
  expect(sheets.draft).toMatchObject({
    day: '1970-01-01',
    notes: { openingGas: 'It runs wide.', why: 'It runs wide.' },
  });
  expect(sheets.draft?.notes.felt).toBeUndefined();
  const first = sheets.draft?.notes.changed ?? '';
  expect(first).toContain('Shock length');
  turn(bench, 2);
  await sheets.note(keeping, { openingGas: 'It runs wide.', felt: 'Better.' });
  const notes = sheets.draft?.notes ?? {};
  expect(notes).toMatchObject({ openingGas: 'It runs wide.', felt: 'Better.' });
  expect(notes.changed.split('\n')).toHaveLength(2);
  expect(notes.changed.startsWith(first)).toBe(true);
  expect(await sheets.log()).toBe(true);
  expect(sheets.kept.map(({ sheet }) => sheet.notes.felt)).toEqual(['Better.']);
  await keeping.end();
});

it('a shock of two heights becomes two sheets, each with its own setup and readings', async () => {
  const { bench, keeping, sheets } = await opened();
  const { setup } = bench.session.history.present;
  const low = { ...setup, shockLength: setup.shockLength - 4 };
  expect(
    await sheets.logEach(keeping, [
      { setup, notes: { title: 'High' } },
      { setup: low, notes: { title: 'Low' } },
    ]),
  ).toBe(true);
  expect(sheets.kept.map(({ sheet }) => [sheet.notes.title, sheet.setup.shockLength])).toEqual([
    ['High', setup.shockLength],
    ['Low', low.shockLength],
  ]);
  const [high, lower] = sheets.kept.map(({ sheet }) => sheet.readings.riderUp.seatHeight);
  expect(lower).toBeLessThan(high);
  expect(bench.session.document.setup).toBe(setup);
  await keeping.end();
});

it('shows the latest of many sheets before the others are read, and keeps what happens to them meanwhile', async () => {
  const { bench, keeping, sheets, store } = await opened();
  await log(sheets);
  const bikeId = keeping.bikeId ?? '';
  const found = await store.sheets(bikeId);
  if (!found.ok) throw new Error(found.reason.sentence);
  const [{ text }] = found.value;
  for (let i = 0; i < 600; i++)
    await store.saveSheet({
      ...{ id: `s${i}`, bikeId, day: '2026-05-02', madeAt: i },
      text: text.replace(/"madeAt": ?2000/, `"madeAt": ${i}`),
    });
  const again = new Sheets(bench, () => 4000);
  const reading = again.show(keeping, bikeId);
  expect(again.isSearching).toBe(true);
  while (again.kept.length === 0) await new Promise((done) => setTimeout(done));
  expect([again.isSearching, again.kept.length, again.toRead]).toEqual([false, 100, 501]);
  expect(again.kept.at(-1)?.sheet.madeAt).toBe(2000);
  await again.remove('s599');
  await log(again);
  await reading;
  expect(again.toRead).toBe(0);
  const times = again.kept.map(({ sheet }) => sheet.madeAt);
  expect(times).toEqual([...Array.from({ length: 599 }, (_, i) => i), 2000, 4000]);
  await keeping.end();
});
