/** The page with 100,000 setup sheets in its store, half of them of one bike: how long it takes to open, list, draw, log and save them, and to bring a file of them back. */
import { chromium, type Browser, type Page } from '@playwright/test';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { saveSheet } from '../../src/document/save-sheet.ts';
import { newSheet } from '../../src/document/sheet.ts';
import { benchTable, type BenchRow } from '../bench/bench-table.ts';
import { bikeRows, bikesDialog, chooseBike, expectLookedFor, openBikes } from '../browser/support/bikes.ts';
import { FRONT_HEIGHT, typeInto } from '../browser/support/panels.ts';
import { openSheets, sheets } from '../browser/support/sheets.ts';
import { builtPage, type BuiltPage } from '../support/built-page.ts';
import { PATIENCE_MS, until } from '../support/until.ts';

/** How many sheets are in the store. */
const SHEETS = { long: 100_000, short: 30 };

/** Sheets written in one transaction. */
const AT_ONCE = 2000;
/** Sheets of the first bike, more than anyone logs in a life, and of each further one, some seasons. */
const OF_FIRST = 50_000;
const OF_OTHERS = 50;

async function opened(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expectLookedFor(page);
}

/** Runs in the page: the text of a stored bike; null without one. */
function textOf(id: string): Promise<string | null> {
  return new Promise((done, failed) => {
    const asked = indexedDB.open('sidestance');
    asked.onerror = () => failed(asked.error ?? new Error('no store'));
    asked.onsuccess = () => {
      const bike = asked.result.transaction('bikes').objectStore('bikes').get(id);
      bike.onsuccess = () => {
        asked.result.close();
        done((bike.result as { text: string } | undefined)?.text ?? null);
      };
    };
  });
}

/** Runs in the page: valid sheets, by the thousand, for bikes that it makes. */
async function fillSheets(given: {
  from: number;
  to: number;
  ofFirst: number;
  ofOthers: number;
  text: string;
  sheet: string;
  total: number;
}): Promise<void> {
  const database = await new Promise<IDBDatabase>((done, failed) => {
    const asked = indexedDB.open('sidestance');
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => failed(asked.error ?? new Error('no store'));
  });
  await new Promise<void>((done, failed) => {
    const within = database.transaction(['bikes', 'index', 'sheets'], 'readwrite');
    for (let i = given.from; i < given.to; i++) {
      const beyond = i - given.ofFirst;
      const bike = beyond < 0 ? 0 : 1 + Math.floor(beyond / given.ofOthers);
      const id = `filled-${bike}`;
      if (i === 0 || (beyond >= 0 && beyond % given.ofOthers === 0)) {
        const summary = {
          id,
          name: `Filled bike ${bike}`,
          revision: 1,
          writer: 'made',
          savedAt: 100_000 - bike,
        };
        const many = Math.min(bike === 0 ? given.ofFirst : given.ofOthers, given.total - i);
        const card = { owner: '', notes: '', tags: [], archived: false };
        within.objectStore('bikes').put({ ...summary, text: given.text });
        within.objectStore('index').put({ ...summary, card, sheets: many, latestSheet: '2026-05-02' });
      }
      const own = { id: `filled-sheet-${i}`, bikeId: id, day: '2026-05-02', madeAt: i, text: given.sheet };
      within.objectStore('sheets').put(own);
    }
    within.oncomplete = () => done();
    within.onerror = () => failed(within.error ?? new Error('no room'));
  });
  database.close();
}

/** How long page, list, sheets and season take with so many sheets in the store, ms. */
async function manySheets(browser: Browser, address: string, many: number): Promise<BenchRow[]> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
  context.setDefaultTimeout(5 * PATIENCE_MS);
  const rows: BenchRow[] = [];
  let saved = 0;
  const timed = async (what: string, work: () => Promise<unknown>): Promise<void> => {
    const begun = performance.now();
    await work();
    rows.push({ what: `${many} sheets: ${what}`, figure: performance.now() - begun, unit: 'ms' });
  };
  try {
    const page = await context.newPage();
    await opened(page, address);
    const [document] = DEMO_BIKES;
    const { bike, setup } = document;
    const notes = { place: 'Invented hill road', weather: 'cold', felt: 'calm' };
    const readings = { riderUp: { trail: 96.4 } };
    const made = newSheet({ day: '2026-05-02', madeAt: 5, bike, setup, notes, further: [], readings });
    const texts = { text: saveDocument(document), sheet: saveSheet(made) };
    for (let from = 0; from < many; from += AT_ONCE)
      await page.evaluate(fillSheets, {
        ...{ from, to: Math.min(many, from + AT_ONCE), total: many, ofFirst: OF_FIRST, ofOthers: OF_OTHERS },
        ...texts,
      });
    await timed('the page opens', () => opened(page, address));
    await timed('the list of bikes opens', async () => {
      await openBikes(page);
      await bikeRows(page).first().waitFor();
    });
    await bikesDialog(page).getByRole('button', { name: 'Close' }).click();
    await chooseBike(page, 'Filled bike 0');
    const ofOne = Math.min(many, OF_FIRST);
    await timed(`the latest of a bike’s ${ofOne} are listed`, async () => {
      await openSheets(page);
      await sheets(page).getByRole('listitem').first().waitFor();
    });
    await timed(`the others of ${ofOne} are read`, () =>
      sheets(page).getByText('Season: one figure over all sheets').waitFor(),
    );
    await timed('its season is drawn', async () => {
      await sheets(page).getByText('Season: one figure over all sheets').click();
      await sheets(page)
        .getByRole('img', { name: /over the sheets/ })
        .waitFor();
    });
    await timed('one of them opens', async () => {
      await sheets(page).getByRole('listitem').getByRole('button').first().click();
      await sheets(page).getByRole('button', { name: 'All sheets' }).waitFor();
    });
    await sheets(page).getByRole('button', { name: 'All sheets' }).click();
    await timed('one more is logged', async () => {
      await sheets(page).getByRole('button', { name: 'Log a session' }).click();
      await sheets(page).getByRole('button', { name: 'Keep this sheet' }).click();
      await sheets(page).getByRole('button', { name: 'Log a session' }).waitFor();
    });
    await timed('a change is stored', async () => {
      await typeInto(page, FRONT_HEIGHT, '9');
      // Read alone: to open every bike takes longer than the save.
      await until('the bike in the store', async () => {
        const found = openDocument((await page.evaluate(textOf, 'filled-0')) ?? '');
        return found.ok && found.value.document.setup.forkTubes === 9;
      });
    });
    await sheets(page).getByText('Files: save sheets and bikes, bring them back').click();
    const parts: string[] = [];
    await timed('all are saved to files', async () => {
      let save = sheets(page).getByRole('button', { name: 'Save all bikes, sheets and lessons' });
      for (;;) {
        const begun = page.waitForEvent('download');
        await save.click();
        const file = await begun;
        parts.push(await file.path());
        const told = page.getByText(`saved to ${file.suggestedFilename()} among your downloads`);
        saved += Number(/with (\d+) sheets/.exec(await told.innerText())?.[1]);
        save = page.getByRole('button', { name: `Save part ${parts.length + 1}` });
        if ((await save.count()) === 0) break;
      }
    });
    rows.push({ what: `${many} sheets: files they are saved to`, figure: parts.length, unit: '' });
    // One more was logged.
    rows.push({
      what: `${many} sheets: sheets in these files`,
      figure: saved,
      unit: '',
      goal: { least: many + 1 },
    });
    await page.close();
    const elsewhere = await browser.newContext();
    elsewhere.setDefaultTimeout(5 * PATIENCE_MS);
    try {
      const fresh = await elsewhere.newPage();
      await opened(fresh, address);
      await openSheets(fresh);
      await sheets(fresh).getByText('Files: save sheets and bikes, bring them back').click();
      await timed('the last of these files is brought back elsewhere', async () => {
        await fresh.locator('input[aria-label="Bring back from files"]').setInputFiles(parts.slice(-1));
        await fresh.getByText(/^Done: Brought back /).waitFor();
      });
    } finally {
      await elsewhere.close();
    }
    return rows;
  } finally {
    await context.close();
  }
}

export default async function manySheetsTrial(short: boolean, given?: BuiltPage): Promise<string[]> {
  const executablePath = await findBrowser();
  const built = given ?? (await builtPage());
  const server = await serve(built.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const address = `http://127.0.0.1:${server.portTaken}/`;
    return benchTable(await manySheets(browser, address, short ? SHEETS.short : SHEETS.long));
  } finally {
    await browser.close();
    server.close();
    if (given === undefined) built.remove();
  }
}
