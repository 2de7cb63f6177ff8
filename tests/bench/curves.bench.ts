/** How long curves of 201 places take under node and in the page’s browser, and how long the Curves tab takes to follow a hand. */
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type Page } from '@playwright/test';
import { build } from 'vite';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { rideStateOf, type RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { CURVE_AXES, nameAxis } from '../../src/curves/curve-axes.ts';
import {
  curves as curvesPanel,
  cursor,
  openCurves,
  openStates,
  stateBox,
} from '../browser/support/curves.ts';
import { builtPage } from '../support/built-page.ts';
import { curveTimes, PLACES, type CurveTimes } from '../support/curve-times.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goal for 201 places × 4 setups, and for all readings of one setup, ms. */
const GOAL_MS = 10;
/** The tab with a hand on it: moves along the axis, kept curves and ride states beside the present one. */
const MOVES = 120;
const SHORT_MOVES = 3;
const KEPT = 3;
const STATES: readonly RideStateKey[] = ['riderUp', 'accelerating', 'midCorner'];
const AXES = ['rearTravel', 'shockPreload', 'rearTeeth'];

function axisLabel(key: string): string {
  const axis = CURVE_AXES.find((each) => each.key === key);
  if (axis === undefined) throw new Error(`no axis ${key}`);
  return nameAxis(axis, 'chain').label;
}

function figures(times: readonly number[]): { least: number; p50: number; p95: number } {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (part: number): number => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
  return { least: sorted[0], p50: at(0.5), p95: at(0.95) };
}

function rowsOf(where: string, [base, ...curves]: readonly CurveTimes[]): BenchRow[] {
  // The least times are compared: what else the machine does is not in them.
  const stood = figures(base.times).least;
  return curves.map(({ name, times }) => ({
    what: `${where}, ${PLACES} places, ${name}, least`,
    figure: figures(times).least,
    unit: 'ms',
    goal: { most: GOAL_MS },
    peer: { name: base.name, figure: stood },
  }));
}

function linesOf(where: string, times: readonly CurveTimes[]): string[] {
  return times.map((each) => {
    const { p50, p95 } = figures(each.times);
    return `${where}, ${each.name}: p50 ${p50.toFixed(2)} p95 ${p95.toFixed(2)} ms`;
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

async function inPage(browser: Browser, address: string, short: boolean): Promise<CurveTimes[]> {
  // The page itself takes no script but its own.
  const page = await browser.newPage({ bypassCSP: true });
  await page.goto(address);
  await page.addScriptTag({ content: await scriptForPage() });
  const times = await page.evaluate(
    (isShort) =>
      (window as unknown as { curves: { curveTimes(short: boolean): CurveTimes[] } }).curves.curveTimes(
        isShort,
      ),
    short,
  );
  await page.close();
  return times;
}

/** Work of the whole page for each move of the cursor along the curves, ms, from the event until all it set off has run. */
async function followed(page: Page, howMany: number): Promise<number[]> {
  return cursor(page).evaluate(async (range, moves) => {
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
  }, howMany);
}

async function tab(browser: Browser, address: string, moves: number): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  await page.goto(address);
  const panel = curvesPanel(page);
  await openCurves(page, antiSquat.label, axisLabel('rearTeeth'));
  for (let i = 0; i < KEPT; i++) {
    await cursor(page).press('ArrowRight');
    await panel.getByRole('button', { name: 'Keep this curve' }).click();
  }
  await openStates(page);
  for (const when of ['alone', `with ${STATES.length} ride states`]) {
    if (when !== 'alone') for (const state of STATES) await stateBox(page, rideStateOf(state).label).check();
    for (const axis of AXES.map(axisLabel)) {
      await panel.getByRole('combobox', { name: 'Against' }).selectOption({ label: axis });
      const { p50 } = figures(await followed(page, moves));
      rows.push({
        what: `the whole page, a move along ${axis.toLowerCase()}, baseline and ${KEPT} kept curves, ${when}, p50`,
        figure: p50,
        unit: 'ms',
      });
    }
  }
  await page.close();
  return rows;
}

export default async function curves(short: boolean): Promise<string[]> {
  const underNode = curveTimes(short);
  const executablePath = await findBrowser();
  const page = await builtPage();
  const server = await serve(page.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  const address = `http://127.0.0.1:${server.portTaken}/`;
  try {
    const inBrowser = await inPage(browser, address, short);
    const onPage = await tab(browser, address, short ? SHORT_MOVES : MOVES);
    return [
      ...linesOf('under node', underNode),
      ...linesOf('in the browser', inBrowser),
      ...benchTable([...onPage, ...rowsOf('under node', underNode), ...rowsOf('in the browser', inBrowser)]),
    ];
  } finally {
    await browser.close();
    server.close();
    page.remove();
  }
}
