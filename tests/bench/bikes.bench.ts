/** How long a shop's 2,000 bikes with 10 sheets each take to be listed, searched and opened, and how long a save takes beside them. */
import { chromium, type Browser, type Page } from '@playwright/test';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { saveSheet } from '../../src/document/save-sheet.ts';
import { newSheet } from '../../src/document/sheet.ts';
import { bikeButton, bikesDialog, expectLookedFor } from '../browser/support/bikes.ts';
import { field, FRONT_HEIGHT } from '../browser/support/panels.ts';
import { builtPage } from '../support/built-page.ts';
import { loopMs } from '../support/pulled-page.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goals, ms: the list of all bikes, the page's work for a letter of a search (one frame), and 19 of 20 saves. */
const GOALS_MS = { list: 300, letter: 16.7, save: 20 };
const SHEETS = 10;

interface Length {
  readonly bikes: number;
  readonly times: number;
  readonly saves: number;
  /** Searches, one after the other: each is typed, then taken back letter by letter. */
  readonly searches: readonly string[];
}

const LONG: Length = {
  bikes: 2000,
  times: 9,
  saves: 40,
  searches: ['owner 1999 customer', 'bike 77', 'track low 15'],
};
const SHORT: Length = { bikes: 20, times: 1, saves: 2, searches: ['ow'] };

/** What is noted in the page, ms. */
interface Noted {
  /** From a press on the bike's name until the list with its rows has been painted. */
  readonly list: number[];
  /** From a letter in the search until the rows it leaves have been painted, the wait for the screen included. */
  readonly letter: number[];
  /** What the page works of that: until its rows are made, and from the beginning of the frame until it is painted. */
  readonly letterWork: number[];
  /** From the beginning of a save's transaction until the database has taken it. */
  readonly save: number[];
}

/** Runs in the page, before its own scripts. */
function note(): void {
  const noted: Noted = { list: [], letter: [], letterWork: [], save: [] };
  Object.assign(window, { noted });
  const painted = new MessageChannel();
  let heard = (): void => {};
  painted.port1.onmessage = () => heard();
  const oncePainted = (shown: () => boolean, then: (frameBegun: number) => void): void => {
    requestAnimationFrame(() => {
      const frameBegun = performance.now();
      if (!shown()) {
        oncePainted(shown, then);
        return;
      }
      heard = () => then(frameBegun);
      painted.port2.postMessage(null);
    });
  };
  const capture = { capture: true };
  addEventListener(
    'click',
    (event) => {
      if (!(event.target as Element).closest('[data-bike]')) return;
      const rows = (): boolean => document.querySelector('dialog [data-row]') !== null;
      const begun = performance.now();
      oncePainted(rows, () => noted.list.push(performance.now() - begun));
    },
    capture,
  );
  addEventListener(
    'input',
    (event) => {
      if ((event.target as HTMLInputElement).type !== 'search') return;
      const begun = performance.now();
      let made = begun;
      // The last to hear of the letter: by then the page has made the rows that it leaves.
      addEventListener('input', () => (made = performance.now()), { once: true });
      oncePainted(
        () => true,
        (frameBegun) => {
          const end = performance.now();
          noted.letterWork.push(made - begun + (end - frameBegun));
          noted.letter.push(end - begun);
        },
      );
    },
    capture,
  );
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (shelves, mode, options) {
    const begun = performance.now();
    const made = transaction.call(this, shelves, mode, options);
    if (mode === 'readwrite' && [shelves].flat().includes('bikes'))
      made.addEventListener('complete', () => noted.save.push(performance.now() - begun));
    return made;
  };
}

const notedOf = (page: Page): Promise<Noted> =>
  page.evaluate(() => (window as unknown as { noted: Noted }).noted);

/** Waits until so many times were noted; every one of them is. */
async function untilNoted(page: Page, what: keyof Noted, count: number): Promise<readonly number[]> {
  await page.waitForFunction(
    ([key, least]) => (window as unknown as { noted: Noted }).noted[key].length >= least,
    [what, count] as const,
  );
  return (await notedOf(page))[what];
}

/** Fills the page's database with copies of one bike and its sheets. */
async function fillShop(page: Page, bikes: number): Promise<void> {
  const [document] = DEMO_BIKES;
  const { bike, setup } = document;
  const sheet = newSheet({
    day: '2026-05-02',
    madeAt: 5,
    bike,
    setup,
    notes: { place: 'Invented hill road', felt: 'calm' },
    further: [],
    readings: {},
  });
  const given = { bikes, sheets: SHEETS, text: saveDocument(document), sheet: saveSheet(sheet) };
  await page.evaluate(async ({ bikes: many, sheets, text, sheet: sheetText }) => {
    const database = await new Promise<IDBDatabase>((done, failed) => {
      const asked = indexedDB.open('sidestance');
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => failed(new Error(String(asked.error)));
    });
    for (let from = 0; from < many; from += 100)
      await new Promise<void>((done, failed) => {
        const within = database.transaction(['bikes', 'index', 'sheets'], 'readwrite');
        for (let at = from; at < Math.min(many, from + 100); at++) {
          const id = `made-${at}`;
          const summary = { id, name: `Customer bike ${at}`, revision: 1, writer: 'made', savedAt: at };
          within.objectStore('bikes').put({ ...summary, text });
          const card = { owner: `Owner ${at}`, notes: 'Low seat', tags: ['track'], archived: false };
          within.objectStore('index').put({ ...summary, card, sheets, latestSheet: '2026-05-02' });
          for (let i = 0; i < sheets; i++)
            within.objectStore('sheets').put({
              id: `${id}-${i}`,
              bikeId: id,
              day: '2026-05-02',
              madeAt: i,
              text: sheetText,
            });
        }
        within.oncomplete = () => done();
        within.onerror = () => failed(new Error(String(within.error)));
      });
    database.close();
  }, given);
}

function at(times: readonly number[], part: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
}

async function measured(browser: Browser, address: string, length: Length): Promise<string[]> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  await page.addInitScript(note);
  await page.goto(address);
  await expectLookedFor(page);
  await fillShop(page, length.bikes);
  await page.reload();
  await expectLookedFor(page);
  const dialog = bikesDialog(page);
  for (let time = 1; time <= length.times; time++) {
    await bikeButton(page).click();
    await untilNoted(page, 'list', time);
    await dialog.getByRole('button', { name: 'Close' }).click();
    await dialog.waitFor({ state: 'hidden' });
  }
  await bikeButton(page).click();
  let typed = 0;
  const keys = length.searches.flatMap((words) => [
    ...Array.from(words, (letter) => (letter === ' ' ? 'Space' : letter)),
    ...Array.from(words, () => 'Backspace'),
  ]);
  for (const key of keys) {
    await dialog.getByRole('searchbox').press(key);
    await untilNoted(page, 'letter', ++typed);
  }
  await dialog.getByRole('button', { name: 'Close' }).click();
  await dialog.waitFor({ state: 'hidden' });
  for (let time = 1; time <= length.saves; time++) {
    await field(page, FRONT_HEIGHT).press(time % 2 === 0 ? 'ArrowDown' : 'ArrowUp');
    await field(page, FRONT_HEIGHT).press('Enter');
    await untilNoted(page, 'save', time);
  }
  const noted = await notedOf(page);
  const loop = await loopMs(page);
  await page.close();
  const row = (what: string, figure: number, most: number): BenchRow => ({
    what,
    figure,
    unit: 'ms',
    goal: { most },
    peer: { name: 'ten million square roots', figure: loop },
  });
  const words = (times: readonly number[]): string =>
    `${times.length} times, p50 ${at(times, 0.5).toFixed(1)} p95 ${at(times, 0.95).toFixed(1)} most ${at(times, 1).toFixed(1)} ms`;
  // The first letter falls while the list is read anew, which opening it begins.
  const [first, ...letters] = noted.letterWork;
  return [
    `${length.bikes} bikes with ${SHEETS} sheets each`,
    `  list open    ${words(noted.list)}`,
    `  first letter ${first.toFixed(1)} ms of work, while the list is read anew`,
    `  letter       ${words(letters)} of work`,
    `  with a wait  ${words(noted.letter.slice(1))}, up to a frame of which no page can save`,
    `  save         ${words(noted.save)}`,
    `  ten million square roots take ${loop.toFixed(1)} ms on this machine now`,
    ...benchTable([
      row('the list opens, half of the times within', at(noted.list, 0.5), GOALS_MS.list),
      row('a letter of a search keeps the page busy, 19 of 20 below', at(letters, 0.95), GOALS_MS.letter),
      row('a save is in the database, 19 of 20 within', at(noted.save, 0.95), GOALS_MS.save),
    ]),
  ];
}

export default async function bikes(short: boolean): Promise<string[]> {
  const executablePath = await findBrowser();
  const page = await builtPage();
  const server = await serve(page.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    return await measured(browser, `http://127.0.0.1:${server.portTaken}/`, short ? SHORT : LONG);
  } finally {
    await browser.close();
    server.close();
    page.remove();
  }
}
