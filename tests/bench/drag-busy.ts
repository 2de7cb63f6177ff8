/** How long a move of the hand keeps the page's own thread busy, and how often a page four times as slow draws meanwhile. */
import type { Browser } from '@playwright/test';
import {
  PULLED_PARTS,
  pulledPage,
  USUAL_LOOP_MS,
  WINDOW_SIZES,
  type PulledPage,
  type PulledPart,
  type WindowSize,
} from '../support/pulled-page.ts';
import type { BenchRow } from './bench-table.ts';

/** Goal for half of the moves, ms of the page's own thread. */
const GOAL_BUSY_MS = 5;
/** Goal for drawings a second on a page that is so many times as slow. */
const GOAL_DRAWINGS = 30;
const SLOWER = 4;
/** Goal for the longest task of such a page during a drag, ms. */
const GOAL_TASK_MS = 100;
/** Moves a second that the hand makes then: as many as a usual screen shows. */
const HAND_RATE = 60;
/** Moves before any is measured: the page's code has been compiled by then. */
const WARM_UP = 40;

/** The fewest drawings that give a rate, and how often they are counted, ms. */
const LEAST_DRAWINGS = 5;
const LOOK_EVERY_MS = 100;

interface Length {
  readonly moves: number;
  readonly slowMs: number;
  readonly sizes: readonly WindowSize[];
  readonly parts: readonly PulledPart[];
}

const LONG: Length = { moves: 240, slowMs: 5000, sizes: WINDOW_SIZES, parts: PULLED_PARTS };
const SHORT: Length = {
  moves: 6,
  slowMs: 500,
  sizes: WINDOW_SIZES.slice(2),
  parts: PULLED_PARTS.slice(0, 1),
};

function at(times: readonly number[], part: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
}

/** The thread's time for each move, minus the time that reading it takes, ms. */
async function busyTimes(page: PulledPage, moves: number): Promise<number[]> {
  const between = async (each: () => Promise<void>, times: number): Promise<number[]> => {
    const found: number[] = [];
    let before = await page.busyMs();
    for (let i = 0; i < times; i++) {
      await each();
      const now = await page.busyMs();
      found.push(now - before);
      before = now;
    }
    return found;
  };
  const asking = at(await between(() => Promise.resolve(), 20), 0.5);
  return (await between(() => page.move(), moves)).map((time) => time - asking);
}

/** When drawings begin while the hand moves on without waiting for the page, and what each takes of its thread, ms. */
async function slowly(
  page: PulledPage,
  lastsMs: number,
): Promise<{ gaps: number[]; busyMs: number; longest: number; loop: number }> {
  const loop = await page.loopMs();
  await page.slowDown(SLOWER);
  await page.drawings();
  await page.longTasks();
  const before = await page.busyMs();
  const sent: Promise<void>[] = [];
  const hand = setInterval(() => sent.push(page.move()), 1000 / HAND_RATE);
  const end = performance.now() + lastsMs;
  const began: number[] = [];
  // A machine that is busy otherwise may need longer for the first few.
  while (performance.now() < end || began.length < LEAST_DRAWINGS) {
    await new Promise((done) => setTimeout(done, LOOK_EVERY_MS));
    began.push(...(await page.drawings()));
  }
  clearInterval(hand);
  const busy = (await page.busyMs()) - before;
  const tasks = await page.longTasks();
  await page.slowDown(1);
  await Promise.all(sent);
  return {
    gaps: began.slice(1).map((time, i) => time - began[i]),
    busyMs: busy / began.length,
    // What takes less than 50 ms is not told.
    longest: Math.max(50, ...tasks),
    loop,
  };
}

/** How slow this machine is just now, so that its figures can be read elsewhere. */
export function slownessWords(loop: number): string {
  const times = (loop / USUAL_LOOP_MS).toFixed(1);
  return `ten million square roots take ${loop.toFixed(0)} ms here now, ${times} times as long as on a usual core (${USUAL_LOOP_MS} ms)`;
}

/** The lines about each window and part, and the figures with their goals. */
export async function dragBusy(
  browser: Browser,
  address: string,
  short: boolean,
): Promise<{ lines: string[]; rows: BenchRow[] }> {
  const length = short ? SHORT : LONG;
  const lines: string[] = [];
  const rows: BenchRow[] = [];
  for (const size of length.sizes)
    for (const part of length.parts) {
      const where = `${size.name}, ${part.name}`;
      const page = await pulledPage(browser, address, size, part);
      for (let i = 0; i < WARM_UP; i++) await page.move();
      await page.drawings();
      const times = await busyTimes(page, length.moves);
      // A page that does not keep up draws the latest of several moves, which is no fault but is told.
      const drawn = (await page.drawings()).length;
      if (drawn === 0) throw new Error(`${where}: nothing was drawn in ${length.moves} moves`);
      const slow = await slowly(page, length.slowMs);
      await page.letGo();
      const rate = (1000 * slow.gaps.length) / slow.gaps.reduce((sum, gap) => sum + gap, 0);
      lines.push(
        `${where}: busy a move p50 ${at(times, 0.5).toFixed(1)} p95 ${at(times, 0.95).toFixed(1)} ms, ` +
          `${drawn} drawings for ${length.moves} moves; ` +
          `${SLOWER} times as slow, from drawing to drawing p50 ${at(slow.gaps, 0.5).toFixed(0)} ` +
          `p95 ${at(slow.gaps, 0.95).toFixed(0)} ms, of which the thread is busy ${slow.busyMs.toFixed(0)} ms; ` +
          slownessWords(slow.loop),
      );
      rows.push(
        { what: `${where}, busy a move`, figure: at(times, 0.5), unit: 'ms', goal: { most: GOAL_BUSY_MS } },
        {
          what: `${where}, ${SLOWER} times as slow, drawings`,
          figure: rate,
          unit: '/s',
          goal: { least: GOAL_DRAWINGS },
        },
        {
          what: `${where}, ${SLOWER} times as slow, longest task`,
          figure: slow.longest,
          unit: 'ms',
          goal: { most: GOAL_TASK_MS },
        },
      );
    }
  return { lines, rows };
}
