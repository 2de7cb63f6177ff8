/** The page's store in trouble, again and again in a browser: full, refused, cleared between two visits, filled with what is no bike and used by two tabs. */
import { chromium, type Browser, type Page } from '@playwright/test';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { expectLookedFor } from '../browser/support/bikes.ts';
import { kept } from '../browser/support/kept.ts';
import { field, FRONT_HEIGHT, typeInto } from '../browser/support/panels.ts';
import { benchTable, type BenchRow } from '../bench/bench-table.ts';
import { builtPage, type BuiltPage } from '../support/built-page.ts';
import { PATIENCE_MS, until } from '../support/until.ts';

/** How often each trial runs. */
const ROUNDS = { long: 20, short: 1 };

async function opened(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expectLookedFor(page);
}

const figureOf = (page: Page): Promise<string> => field(page, FRONT_HEIGHT).inputValue();
const warned = (page: Page): Promise<boolean> =>
  page.getByRole('alert').filter({ hasText: 'save the bike to a file' }).first().isVisible();
const keptIs = (page: Page, figure: number): Promise<boolean> =>
  kept(page).then((bikes) => bikes[0]?.forkTubes === figure);

/** One trial: a fresh window and whether what has to hold did. */
type Trial = (browser: Browser, address: string, round: number) => Promise<void>;

function expect(what: string, isSo: boolean): void {
  if (!isSo) throw new Error(what);
}

/** Work in a window of its own, which is closed however it ends. */
function inWindow(work: (page: Page, address: string, round: number) => Promise<void>): Trial {
  return async (browser, address, round) => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
    context.setDefaultTimeout(PATIENCE_MS);
    try {
      const page = await context.newPage();
      const troubles: string[] = [];
      page.on('pageerror', ({ message }) => troubles.push(message));
      await work(page, address, round);
      expect(`the page threw ${troubles[0]}`, troubles.length === 0);
    } finally {
      await context.close();
    }
  };
}

/** A tab that is ended so many ms after a change, and whether the next one has that change. */
function endedAfterChange(afterMs: number, end: (page: Page) => Promise<void>): Trial {
  return async (browser, address, round) => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
    context.setDefaultTimeout(PATIENCE_MS);
    try {
      const first = await context.newPage();
      await opened(first, address);
      await typeInto(first, FRONT_HEIGHT, '6');
      await until('the bike in the store', () => keptIs(first, 6));
      await typeInto(first, FRONT_HEIGHT, String(7 + round / 2));
      await first.evaluate((ms) => new Promise((done) => setTimeout(done, ms)), afterMs);
      await end(first);
      const second = await context.newPage();
      await opened(second, address);
      expect('the change is gone', Number(await figureOf(second)) === 7 + round / 2);
    } finally {
      await context.close();
    }
  };
}

const TRIALS: Readonly<Record<string, Trial>> = {
  'full: the page says so, keeps the change, and stores it once there is room': inWindow(
    async (page, address, round) => {
      await page.addInitScript(() => {
        const put = IDBObjectStore.prototype.put;
        IDBObjectStore.prototype.put = function (...given) {
          if (!('room' in window) && this.name === 'bikes')
            throw new DOMException('full', 'QuotaExceededError');
          return put.apply(this, given);
        };
      });
      await opened(page, address);
      await typeInto(page, FRONT_HEIGHT, String(6 + round / 2));
      await until('the warning', () => warned(page));
      await page.evaluate(() => Object.assign(window, { room: true }));
      await typeInto(page, FRONT_HEIGHT, String(7 + round / 2));
      await until('the bike in the store', () => keptIs(page, 7 + round / 2));
    },
  ),
  'refused, as in some private windows: the page says so and works': inWindow(
    async (page, address, round) => {
      await page.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('denied', 'SecurityError');
        };
      });
      await opened(page, address);
      await typeInto(page, FRONT_HEIGHT, String(6 + round / 2));
      await until('the warning', () => warned(page));
      expect('the change is gone', Number(await figureOf(page)) === 6 + round / 2);
    },
  ),
  'cleared by the browser between two visits: the page opens, and keeps what comes next': inWindow(
    async (page, address, round) => {
      await opened(page, address);
      await typeInto(page, FRONT_HEIGHT, String(6 + round / 2));
      await until('the bike in the store', () => keptIs(page, 6 + round / 2));
      await page.goto('about:blank');
      const session = await page.context().newCDPSession(page);
      await session.send('Storage.clearDataForOrigin', {
        origin: new URL(address).origin,
        storageTypes: 'indexeddb,local_storage',
      });
      await opened(page, address);
      await typeInto(page, FRONT_HEIGHT, String(8 + round / 2));
      await until('the bike in the store', () => keptIs(page, 8 + round / 2));
    },
  ),
  'records that are no bikes: named, left where they are, and the good one opens': inWindow(
    async (page, address, round) => {
      await opened(page, address);
      await typeInto(page, FRONT_HEIGHT, String(6 + round / 2));
      await until('the bike in the store', () => keptIs(page, 6 + round / 2));
      const before = await page.evaluate(putOdd, round);
      await opened(page, address);
      await until('the good bike', async () => Number(await figureOf(page)) === 6 + round / 2);
      expect('a record was lost', (await page.evaluate(countBikes)) === before);
    },
  ),
  'two tabs that change one bike: both versions are kept': async (browser, address, round) => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
    context.setDefaultTimeout(PATIENCE_MS);
    try {
      const [first, second] = [await context.newPage(), await context.newPage()];
      await opened(first, address);
      await typeInto(first, FRONT_HEIGHT, '6');
      await until('the bike in the store', () => keptIs(first, 6));
      await opened(second, address);
      await typeInto(first, FRONT_HEIGHT, String(7 + round / 2));
      await until('the first tab’s', () => keptIs(first, 7 + round / 2));
      await typeInto(second, FRONT_HEIGHT, String(8 + round / 2));
      await until('the second tab’s', () => keptIs(second, 8 + round / 2));
      const beside = (await kept(second, 'revisions')).map(({ forkTubes }) => forkTubes);
      expect('the first tab’s version is gone', beside.includes(7 + round / 2));
    } finally {
      await context.close();
    }
  },
  'a change right before the tab is closed: kept': endedAfterChange(0, async (page) => {
    const closed = page.waitForEvent('close');
    await page.close({ runBeforeUnload: true });
    await closed;
  }),
  'a change 200 ms before the tab is closed: kept': endedAfterChange(200, async (page) => {
    await page.close({ runBeforeUnload: true });
  }),
  'a change 40 ms before the tab is killed: kept': endedAfterChange(40, async (page) => {
    const session = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent('crash');
    // The page cannot answer this any more.
    void session.send('Page.crash').catch(() => null);
    await crashed;
  }),
};

/** Runs in the page: puts records that are no bikes beside the good ones; gives back how many there are then. */
function putOdd(round: number): Promise<number> {
  const odd: Record<string, unknown>[] = [
    { id: 'odd-1', text: 7 },
    { id: 'odd-2', name: 'Odd', revision: 'x', writer: 'a', savedAt: 1, text: '{}' },
    { id: 'odd-3', name: 'Cut', revision: 1, writer: 'a', savedAt: round, text: '{"bike":' },
    { id: 'odd-4', name: null, revision: 1, writer: 'a', savedAt: NaN, text: '{}' },
  ];
  return new Promise((done, failed) => {
    const asked = indexedDB.open('sidestance');
    asked.onerror = () => failed(asked.error ?? new Error('no store'));
    asked.onsuccess = () => {
      const within = asked.result.transaction('bikes', 'readwrite');
      for (const record of odd) within.objectStore('bikes').put(record);
      const count = within.objectStore('bikes').count();
      within.oncomplete = () => {
        asked.result.close();
        done(count.result);
      };
    };
  });
}

function countBikes(): Promise<number> {
  return new Promise((done, failed) => {
    const asked = indexedDB.open('sidestance');
    asked.onerror = () => failed(asked.error ?? new Error('no store'));
    asked.onsuccess = () => {
      const count = asked.result.transaction('bikes').objectStore('bikes').count();
      count.onsuccess = () => {
        asked.result.close();
        done(count.result);
      };
    };
  });
}

async function measured(browser: Browser, address: string, rounds: number): Promise<string[]> {
  const lines: string[] = [];
  const rows: BenchRow[] = [];
  for (const [name, trial] of Object.entries(TRIALS)) {
    let held = 0;
    for (let round = 0; round < rounds; round++)
      try {
        await trial(browser, address, round);
        held += 1;
      } catch (error) {
        lines.push(`FAILED  ${name}, round ${round + 1}: ${String(error).split('\n')[0]}`);
      }
    rows.push({ what: name, figure: held, unit: '', goal: { least: rounds } });
  }
  return [...lines, ...benchTable(rows)];
}

export default async function store(short: boolean, given?: BuiltPage): Promise<string[]> {
  const executablePath = await findBrowser();
  const built = given ?? (await builtPage());
  const server = await serve(built.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    return await measured(
      browser,
      `http://127.0.0.1:${server.portTaken}/`,
      short ? ROUNDS.short : ROUNDS.long,
    );
  } finally {
    await browser.close();
    server.close();
    if (given === undefined) built.remove();
  }
}
