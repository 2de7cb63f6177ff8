/** How long curves of 201 places take under node and in the page’s browser, and how long the Curves tab takes to follow a hand. */
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type Page } from '@playwright/test';
import { build } from 'vite';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { builtPage } from '../support/built-page.ts';
import { curveTimes, PLACES, type CurveTimes } from '../support/curve-times.ts';

/** Goal for 201 places × 4 setups, and for all readings of one setup, ms. */
const GOAL_MS = 10;
/** The tab with a hand on it: moves along the axis, kept curves and ride states beside the present one. */
const MOVES = 120;
const KEPT = 3;
const STATES = ['Rider on board', 'Accelerating', 'Mid-corner'];
const AXES = ['Rear travel', 'Shock preload', 'Rear sprocket'];

function figures(times: readonly number[]): { least: number; p50: number; p95: number } {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (part: number): number => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
  return { least: sorted[0], p50: at(0.5), p95: at(0.95) };
}

function lines(where: string, [base, ...curves]: readonly CurveTimes[]): string[] {
  // Of the least times: what else the machine does is not in them.
  const stood = figures(base.times).least;
  return [base, ...curves].map(({ name, times }) => {
    const { least, p50, p95 } = figures(times);
    const ratio = `${(least / stood).toFixed(1)} × as long as standing alone`.padStart(32);
    const verdict = (ms: number): string => (ms <= GOAL_MS ? 'met' : 'MISSED');
    return `${where}, ${PLACES} places, ${name.padEnd(48)} least ${least.toFixed(2)} p50 ${p50.toFixed(2)} p95 ${p95.toFixed(2)} ms ${ratio}; goal ${GOAL_MS} ms: least ${verdict(least)}, p50 ${verdict(p50)}`;
  });
}

/** What is timed, made into one script as the page's own are: for the same browsers, and as small. */
async function scriptForPage(): Promise<string> {
  const entry = fileURLToPath(new URL('../support/curve-times.ts', import.meta.url));
  const made = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      target: 'es2023',
      minify: true,
      lib: { entry, formats: ['iife'], name: 'curves' },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  if (!('output' in first)) throw new Error('the script was not made');
  return first.output[0].code;
}

async function inPage(browser: Browser, address: string): Promise<string[]> {
  const page = await browser.newPage();
  await page.goto(address);
  await page.addScriptTag({ content: await scriptForPage() });
  const times = await page.evaluate(() =>
    (window as unknown as { curves: { curveTimes(): CurveTimes[] } }).curves.curveTimes(),
  );
  await page.close();
  return lines('in the browser', times);
}

/** Work of the whole page for each move of the cursor along the curves, ms, from the event until all it set off has run. */
async function followed(page: Page): Promise<number[]> {
  const slider = page.getByRole('slider', { name: /^Along the curve/ });
  return slider.evaluate(async (range, moves) => {
    if (!(range instanceof HTMLInputElement)) throw new Error('no slider');
    const least = Number(range.min);
    const most = Number(range.max);
    const work: number[] = [];
    for (let move = 0; move < moves; move++) {
      range.value = String(least + ((most - least) * (1 + Math.sin(move / 9))) / 2);
      const began = performance.now();
      range.dispatchEvent(new Event('input', { bubbles: true }));
      // What the page puts off until its handler is done has run after the microtasks.
      await new Promise((done) => setTimeout(done, 0));
      work.push(performance.now() - began);
    }
    range.dispatchEvent(new Event('change', { bubbles: true }));
    return work;
  }, MOVES);
}

async function tab(browser: Browser, address: string): Promise<string[]> {
  const told: string[] = [];
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  await page.goto(address);
  await page.getByRole('group', { name: 'Below the side view' }).getByText('Curves', { exact: true }).click();
  const panel = page.getByRole('region', { name: 'Curves', exact: true });
  const against = panel.getByRole('combobox', { name: 'Against' });
  await against.selectOption({ label: 'Rear sprocket' });
  const step = panel.getByRole('slider', { name: /^Along the curve/ });
  for (let i = 0; i < KEPT; i++) {
    await step.press('ArrowRight');
    await panel.getByRole('button', { name: 'Keep this curve' }).click();
  }
  for (const when of ['alone', `with ${STATES.length} ride states`]) {
    if (when !== 'alone')
      for (const state of STATES) await panel.getByRole('checkbox', { name: state }).check();
    for (const axis of AXES) {
      await against.selectOption({ label: axis });
      const { least, p50, p95 } = figures(await followed(page));
      told.push(
        `the whole page on a move along ${axis.toLowerCase().padEnd(13)} with the baseline and ${KEPT} kept curves, ${when.padEnd(18)} least ${least.toFixed(1)} p50 ${p50.toFixed(1)} p95 ${p95.toFixed(1)} ms`,
      );
    }
  }
  await page.close();
  return told;
}

export default async function curves(): Promise<string[]> {
  const under = lines('under node', curveTimes());
  const executablePath = await findBrowser();
  const page = await builtPage();
  const server = await serve(page.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  const address = `http://127.0.0.1:${server.portTaken}/`;
  try {
    return [...under, ...(await inPage(browser, address)), ...(await tab(browser, address))];
  } finally {
    await browser.close();
    server.close();
    page.remove();
  }
}
