/** How long the page takes from a move of the hand to the drawn bike, how busy it is, and how often a slow one draws. */
import { availableParallelism, loadavg } from 'node:os';
import { chromium, type Browser, type Page } from '@playwright/test';
import { findBrowser } from '../../src/commands/find-browser.js';
import { serve } from '../../src/commands/serve.js';
import { builtPage } from '../support/built-page.ts';
import { benchTable, type BenchRow } from './bench-table.ts';
import { dragBusy } from './drag-busy.ts';

/** Goal for 19 of 20 moves, ms: one frame of a screen that shows 60 a second. */
const GOAL_MS = 16.7;
const MOVES = 360;
/** Moves of the one drag that only tries out whether everything works. */
const SHORT_MOVES = 6;
/** Moves of one swing up and back, and how far it goes, px. */
const SWING = 60;
const REACH_PX = 40;
const SIZES = [
  { width: 1280, height: 720 },
  { width: 1920, height: 1080 },
];
const DRAGS = [
  { name: 'grip of the shock length', mode: 'Adjusters', handle: 'grip-shockLength' },
  { name: 'steering head', mode: 'Edit', handle: 'point-steeringHead' },
  { name: 'seat mark', mode: 'Edit', handle: 'point-seat' },
];

/** What is noted of each move in the page, ms. */
interface Noted {
  /** From the event's arrival until everything it set off has run: new pose, readings, panels, canvas. */
  readonly work: number[];
  /** From its arrival until the frame that shows it has been laid out and painted. */
  readonly painted: number[];
  /** From one frame to the next. */
  readonly frames: number[];
}

/** Runs in the page, before its own scripts, and adds nothing to them. */
function note(): void {
  const noted = { work: [] as number[], painted: [] as number[], frames: [] as number[] };
  Object.assign(window, { noted });
  let began = 0;
  let lastFrame = 0;
  const afterFrame = new MessageChannel();
  afterFrame.port1.onmessage = (event: MessageEvent<number>) => {
    noted.painted.push(performance.now() - event.data);
  };
  addEventListener(
    'pointermove',
    (event) => {
      if (event.buttons === 0) return;
      began = performance.now();
      const since = began;
      requestAnimationFrame((frame) => {
        if (lastFrame !== 0 && frame !== lastFrame) noted.frames.push(frame - lastFrame);
        lastFrame = frame;
        // Heard only once the frame is through.
        afterFrame.port2.postMessage(since);
      });
    },
    { capture: true },
  );
  // What the page has put off until its handlers are done has run by the time the last listener is called.
  addEventListener('pointermove', (event) => {
    if (event.buttons !== 0) noted.work.push(performance.now() - began);
  });
}

async function drag(page: Page, handle: string, moves: number): Promise<Noted> {
  const box = await page.locator(`[data-handle="${handle}"]`).boundingBox();
  if (box === null) throw new Error(`${handle} is not on the page`);
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let move = 1; move <= moves; move++) {
    const turn = (2 * Math.PI * move) / SWING;
    await page.mouse.move(x + REACH_PX * (1 - Math.cos(turn)) * 0.3, y + REACH_PX * Math.sin(turn));
  }
  const noted = await page.evaluate(() => (window as unknown as { noted: Noted }).noted);
  await page.mouse.up();
  return noted;
}

function figures(times: readonly number[]): { p50: number; p95: number; most: number } {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (part: number): number => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
  return { p50: at(0.5), p95: at(0.95), most: at(1) };
}

function words(times: readonly number[]): string {
  const { p50, p95, most } = figures(times);
  return `p50 ${p50.toFixed(1)} p95 ${p95.toFixed(1)} most ${most.toFixed(1)}`;
}

async function measured(browser: Browser, address: string, short: boolean): Promise<string[]> {
  const busy = loadavg()[0] / availableParallelism();
  const lines = [`before the start, ${busy.toFixed(1)} programs wanted each processor; times hold below 0.3`];
  const rows: BenchRow[] = [];
  const moves = short ? SHORT_MOVES : MOVES;
  for (const viewport of short ? SIZES.slice(0, 1) : SIZES)
    for (const { name, mode, handle } of short ? DRAGS.slice(0, 1) : DRAGS) {
      const context = await browser.newContext({ viewport });
      const page = await context.newPage();
      await page.addInitScript(note);
      await page.goto(address);
      const modes = page.getByRole('group', { name: 'A hand on the side view' });
      await modes.getByText(mode, { exact: true }).click();
      const { work, painted, frames } = await drag(page, handle, moves);
      await context.close();
      const where = `${viewport.width} × ${viewport.height}, ${name}`;
      // A busy page hears of several moves at once; a figure then stands for fewer of them.
      if (work.length === 0) throw new Error(`${where}: none of ${moves} moves arrived`);
      lines.push(
        `${where}, ${work.length} of ${moves} moves heard one by one, ms:`,
        `  to computed and drawn   ${words(work)}`,
        `  to painted              ${words(painted)}`,
        `  from frame to frame     ${words(frames)}`,
      );
      rows.push({
        what: `${where}, 19 of 20 moves painted within`,
        figure: figures(painted).p95,
        unit: 'ms',
        goal: { most: GOAL_MS },
      });
    }
  const busyThread = await dragBusy(browser, address, short);
  return [...lines, ...busyThread.lines, ...benchTable([...rows, ...busyThread.rows])];
}

export default async function dragRedraw(short: boolean): Promise<string[]> {
  const executablePath = await findBrowser();
  const page = await builtPage();
  const server = await serve(page.folder, 0);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    return await measured(browser, `http://127.0.0.1:${server.portTaken}/`, short);
  } finally {
    await browser.close();
    server.close();
    page.remove();
  }
}
