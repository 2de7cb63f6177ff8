/** Thousands of turns and drags on one page: it answers to the end, shows what the core computes, and what it keeps of them is their undo. */
import { chromium, type Browser, type CDPSession, type Page } from '@playwright/test';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { standing, writtenReading } from '../browser/support/bike-document.ts';
import { expectLookedFor } from '../browser/support/bikes.ts';
import { readingText, plain } from '../browser/support/panels.ts';
import { benchTable } from '../bench/bench-table.ts';
import { builtPage, type BuiltPage } from '../support/built-page.ts';

interface Length {
  readonly turns: number;
  readonly drags: number;
  /** Turns and drags that come before anything is measured: by then the page's code is compiled. */
  readonly warmUp: number;
}

const LONG: Length = { turns: 5000, drags: 1500, warmUp: 400 };
const SHORT: Length = { turns: 8, drags: 2, warmUp: 2 };

/** Goals: what one turn or drag may leave in memory, kB, and what drags that were taken back may, MB. */
const GOAL_KB = 4;
const GOAL_TAKEN_BACK_MB = 2;

const GRIP = '[data-handle="grip-shockLength"]';
const REACH_PX = 9;
const MOVES = 4;

/** Turns an adjuster up and down by its buttons; each turn is seen before the next. */
async function turn(page: Page, turns: number): Promise<void> {
  await page.evaluate(async (many) => {
    const buttons = document.querySelectorAll<HTMLElement>(
      '[data-adjuster="forkTubes"] button[aria-label$="the front"]',
    );
    if (buttons.length !== 2) throw new Error(`${buttons.length} buttons turn the fork tubes`);
    for (let i = 0; i < many; i++) {
      buttons[i % 2].click();
      await new Promise((done) => requestAnimationFrame(done));
    }
  }, turns);
}

/** Pulls the tail up and down; with `takesBack` Escape ends each pull. */
async function drag(page: Page, session: CDPSession, drags: number, takesBack: boolean): Promise<void> {
  const mouse = (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', x: number, y: number) =>
    session.send('Input.dispatchMouseEvent', { type, x, y, button: 'left', buttons: 1, clickCount: 1 });
  const escape = (type: 'keyDown' | 'keyUp') =>
    session.send('Input.dispatchKeyEvent', { type, key: 'Escape', code: 'Escape' });
  for (let i = 0; i < drags; i++) {
    const box = await page.locator(GRIP).boundingBox();
    if (box === null) throw new Error('the grip is not on the page');
    const x = box.x + box.width / 2;
    const y = box.y + box.height / 2;
    const way = i % 2 === 0 ? -1 : 1;
    // Sent one behind the other without waiting, as a hand does; the page takes them in turn.
    await Promise.all([
      mouse('mousePressed', x, y),
      ...Array.from({ length: MOVES }, (_, at) =>
        mouse('mouseMoved', x, y + (way * REACH_PX * (at + 1)) / MOVES),
      ),
      ...(takesBack ? [escape('keyDown'), escape('keyUp')] : []),
      mouse('mouseReleased', x, y + way * REACH_PX),
    ]);
  }
}

/** Memory of the page's scripts, MB, once nothing unused is left. */
async function heap(page: Page, session: CDPSession): Promise<number> {
  await page.evaluate(() => new Promise((done) => setTimeout(done, 1000)));
  for (let i = 0; i < 3; i++) await session.send('HeapProfiler.collectGarbage');
  const { metrics } = await session.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? NaN) / 1e6;
}

async function nodes(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'Nodes')?.value ?? NaN;
}

async function measured(browser: Browser, address: string, length: Length): Promise<string[]> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  await page.goto(address);
  await expectLookedFor(page);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const seconds = async (task: () => Promise<void>): Promise<number> => {
    const begun = performance.now();
    await task();
    return (performance.now() - begun) / 1000;
  };
  await turn(page, length.warmUp);
  await drag(page, session, length.warmUp / 2, false);
  const [atFirst, nodesFirst] = [await heap(page, session), await nodes(session)];
  const turning = await seconds(() => turn(page, length.turns));
  const turned = await heap(page, session);
  const dragging = await seconds(() => drag(page, session, length.drags, false));
  const dragged = await heap(page, session);
  await drag(page, session, length.drags, true);
  const [takenBack, nodesLast] = [await heap(page, session), await nodes(session)];

  // Both adjusters to their first place by hand: the readings are then those of the first bike.
  for (const key of ['forkTubes', 'shockLength'] as const) {
    const field = page.locator(`[data-adjuster="${key}"] input[type="text"]`);
    await field.fill(String(DEMO_BIKES[0].setup[key]));
    await field.press('Enter');
  }
  const stance = standing(DEMO_BIKES[0]);
  const trail = await readingText(page, 'Trail');
  const undo = page.getByRole('banner').getByRole('button', { name: /^Undo/ });
  const canUndo = await undo.isEnabled();
  await page.close();
  const steps = length.turns + length.drags;
  return [
    `${length.turns} turns in ${turning.toFixed(0)} s, ${length.drags} drags of ${MOVES} moves in ${dragging.toFixed(0)} s, then ${length.drags} drags taken back by Escape`,
    `memory of the scripts: ${atFirst.toFixed(1)} MB after ${length.warmUp} turns, ${turned.toFixed(1)} after the turns, ${dragged.toFixed(1)} after the drags, ${takenBack.toFixed(1)} after those taken back`,
    'each turn and drag is a step that can be undone, without limit, and holds the bike as it was',
    ...troubles.slice(0, 5),
    ...benchTable([
      { what: 'errors on the page', figure: troubles.length, unit: '', goal: { most: 0 } },
      {
        what: 'afterwards the trail is that of the core, and can be undone',
        figure: trail === plain(writtenReading(stance, 'trail')) && canUndo ? 1 : 0,
        unit: '',
        goal: { least: 1 },
      },
      { what: 'memory after all, more than at first', figure: takenBack - atFirst, unit: 'MB' },
      {
        what: 'memory of a turn or drag that can be undone',
        figure: (1000 * (dragged - atFirst)) / steps,
        unit: 'kB',
        ...(length === LONG ? { goal: { most: GOAL_KB } } : {}),
      },
      {
        what: 'memory left by the drags taken back',
        figure: takenBack - dragged,
        unit: 'MB',
        ...(length === LONG ? { goal: { most: GOAL_TAKEN_BACK_MB } } : {}),
      },
      { what: 'elements of the page, more than at first', figure: nodesLast - nodesFirst, unit: '' },
    ]),
  ];
}

export default async function page(short: boolean, given?: BuiltPage): Promise<string[]> {
  const executablePath = await findBrowser();
  const built = given ?? (await builtPage());
  const server = await serve(built.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    return await measured(browser, `http://127.0.0.1:${server.portTaken}/`, short ? SHORT : LONG);
  } finally {
    await browser.close();
    server.close();
    if (given === undefined) built.remove();
  }
}
