/** How long a slow device takes, on its second visit, until the page can be used: the bike drawn, its points and adjusters there. */
import { chromium, type Browser } from '@playwright/test';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { expectLookedFor } from '../browser/support/bikes.ts';
import { builtPage } from '../support/built-page.ts';
import { loopMs, USUAL_LOOP_MS, WINDOW_SIZES, type WindowSize } from '../support/pulled-page.ts';
import { benchTable, type BenchRow } from './bench-table.ts';
import { slownessWords } from './drag-busy.ts';

/** Goal for half of the starts, ms. */
const GOAL_MS = 1200;
const SLOWER = 4;
const STARTS = 7;

/** Runs in the page, before its own scripts: notes when everything a hand needs has been drawn. */
function noteUsable(): void {
  const usable = (): boolean =>
    document.querySelector('[data-handle="point-pivot"]') !== null &&
    document.querySelector('[data-adjuster] input') !== null &&
    document.querySelector('.canvas > canvas') !== null;
  const look = (): void => {
    if (!usable()) requestAnimationFrame(look);
    else setTimeout(() => Object.assign(window, { usableAt: performance.now() }));
  };
  requestAnimationFrame(look);
}

/** Each start in ms after the address was asked for, and what the machine gave then. */
async function starts(
  browser: Browser,
  address: string,
  size: WindowSize,
  times: number,
): Promise<{ found: number[]; loop: number }> {
  const { width, height, touch } = size;
  const context = await browser.newContext({
    viewport: { width, height },
    hasTouch: touch,
    isMobile: touch,
  });
  const page = await context.newPage();
  await page.addInitScript(noteUsable);
  await page.goto(address);
  await expectLookedFor(page);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  const loop = await loopMs(page);
  const session = await context.newCDPSession(page);
  const found: number[] = [];
  for (let i = 0; i < times; i++) {
    await page.goto('about:blank');
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    await page.goto(address);
    const at = await page.waitForFunction(() => (window as unknown as { usableAt?: number }).usableAt ?? 0);
    found.push(await at.jsonValue());
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    await expectLookedFor(page);
  }
  await context.close();
  return { found, loop };
}

export default async function warmStart(short: boolean): Promise<string[]> {
  const executablePath = await findBrowser();
  const page = await builtPage();
  const server = await serve(page.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  const lines: string[] = [];
  const rows: BenchRow[] = [];
  try {
    for (const size of short ? WINDOW_SIZES.slice(2) : WINDOW_SIZES) {
      const address = `http://127.0.0.1:${server.portTaken}/`;
      const { found, loop } = await starts(browser, address, size, short ? 1 : STARTS);
      const sorted = [...found].sort((a, b) => a - b);
      const where = `${size.name}, ${size.width} × ${size.height}, ${SLOWER} times as slow`;
      const [least, half, most] = [sorted[0], sorted[Math.floor(sorted.length / 2)], sorted.at(-1) ?? NaN];
      lines.push(
        `${where}: ${sorted.length} starts from ${least.toFixed(0)} to ${most.toFixed(0)} ms; ${slownessWords(loop)}`,
      );
      rows.push(
        {
          what: `${where}, usable, half of the starts within`,
          figure: half,
          unit: 'ms',
          goal: { most: GOAL_MS },
        },
        {
          what: `${size.name}, the same on a usual core, as the square roots tell`,
          figure: (half * USUAL_LOOP_MS) / loop,
          unit: 'ms',
        },
      );
    }
    return [...lines, ...benchTable(rows)];
  } finally {
    await browser.close();
    server.close();
    page.remove();
  }
}
