/** The built page in a browser with a hand on one of its parts that swings to and fro, by mouse or by finger. */
import type { Browser, BrowserContext, CDPSession, Page, Worker } from '@playwright/test';

/** A window, and whether a finger or a mouse works in it. */
export interface WindowSize {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly touch: boolean;
}

export const WINDOW_SIZES: readonly WindowSize[] = [
  { name: 'desktop', width: 1280, height: 720, touch: false },
  { name: 'tablet', width: 820, height: 1180, touch: true },
  { name: 'phone', width: 390, height: 844, touch: true },
];

/** A part of the page that a hand pulls, and how far the hand swings to either side, px. */
export interface PulledPart {
  readonly name: string;
  readonly mode: 'Adjusters' | 'Edit';
  readonly selector: string;
  readonly reach: { readonly x: number; readonly y: number };
}

/** Every swing stays within the range, so that each move changes the bike. */
export const PULLED_PARTS: readonly PulledPart[] = [
  {
    name: 'grip of the shock length',
    mode: 'Adjusters',
    selector: '[data-handle="grip-shockLength"]',
    reach: { x: 0, y: 12 },
  },
  {
    name: 'steering head',
    mode: 'Edit',
    selector: '[data-handle="point-steeringHead"]',
    reach: { x: 8, y: 14 },
  },
  {
    name: 'slider of the shock length',
    mode: 'Adjusters',
    selector: '[data-adjuster="shockLength"] input[type="range"]',
    reach: { x: 45, y: 0 },
  },
];

/** Moves of one swing to one side, to the other and back. */
const SWING = 47;

/** What paints the side view notes when it begins a drawing; runs where it paints. */
function noteDrawings(kind: 'OffscreenCanvasRenderingContext2D' | 'CanvasRenderingContext2D'): void {
  const noted: number[] = [];
  const context = globalThis[kind].prototype as { fillRect(...box: number[]): void };
  const fill = context.fillRect;
  context.fillRect = function (...box) {
    // A drawing begins with its background; nothing else on the side view is a rectangle.
    noted.push(performance.now());
    fill.apply(this, box);
  };
  Object.assign(globalThis, { notedDrawings: noted });
}

function notedDrawings(): number[] {
  return (globalThis as unknown as { notedDrawings: number[] }).notedDrawings.splice(0);
}

/** Notes how long each task of the page's own thread takes that is longer than 50 ms; runs in the page. */
function noteLongTasks(): void {
  const noted: number[] = [];
  new PerformanceObserver((list) => noted.push(...list.getEntries().map(({ duration }) => duration))).observe(
    {
      type: 'longtask',
    },
  );
  Object.assign(globalThis, { notedTasks: noted });
}

export interface PulledPage {
  /** The next move of the swing; done when the page has dealt with it. */
  move(): Promise<void>;
  /** Processor time that the page's own thread has spent, ms. */
  busyMs(): Promise<number>;
  /** When each drawing since the last call began, ms. */
  drawings(): Promise<number[]>;
  /** How long each task since the last call took that was longer than 50 ms, ms. */
  longTasks(): Promise<number[]>;
  /** How long ten million square roots take in the page now, ms: what the machine gives. */
  loopMs(): Promise<number>;
  /** Makes the page's own thread so many times as slow. */
  slowDown(times: number): Promise<void>;
  letGo(): Promise<void>;
}

/** The same work in any run: how long ten million square roots take in the page just now, ms. */
export function loopMs(page: Page): Promise<number> {
  return page.evaluate(() => {
    const times = Array.from({ length: 5 }, () => {
      const begun = performance.now();
      let sum = 0;
      for (let i = 0; i < 1e7; i++) sum += Math.sqrt(i);
      return sum > 0 ? performance.now() - begun : NaN;
    });
    return times.sort((a, b) => a - b)[2];
  });
}

/** What the same takes on a usual desktop's core, ms: what a figure of another machine is read by. */
export const USUAL_LOOP_MS = 10;

/** Opens the page in a window of that size and takes hold of the part. */
export async function pulledPage(
  browser: Browser,
  address: string,
  size: WindowSize,
  part: PulledPart,
): Promise<PulledPage> {
  const { width, height, touch } = size;
  const context = await browser.newContext({
    viewport: { width, height },
    hasTouch: touch,
    isMobile: touch,
  });
  const page = await context.newPage();
  await page.goto(address);
  const painter = await painterOf(page);
  if (painter === null) await page.evaluate(noteDrawings, 'CanvasRenderingContext2D' as const);
  else await painter.evaluate(noteDrawings, 'OffscreenCanvasRenderingContext2D' as const);
  await page.evaluate(noteLongTasks);
  const modes = page.getByRole('group', { name: 'A hand on the side view' });
  await modes.getByText(part.mode, { exact: true }).click();
  const at = await middleOf(page, part.selector);
  const session = await context.newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const hand = handOf(session, touch);
  await hand('down', at.x, at.y);
  let moves = 0;
  return {
    async move() {
      const turn = (2 * Math.PI * ++moves) / SWING;
      await hand('move', at.x + part.reach.x * Math.sin(turn), at.y + part.reach.y * Math.sin(turn));
    },
    async busyMs() {
      const { metrics } = await session.send('Performance.getMetrics');
      const tasks = metrics.find(({ name }) => name === 'TaskDuration');
      if (tasks === undefined) throw new Error('the browser does not tell how long its tasks take');
      return 1000 * tasks.value;
    },
    drawings: async () =>
      painter === null ? await page.evaluate(notedDrawings) : await painter.evaluate(notedDrawings),
    longTasks: () =>
      page.evaluate(() => (globalThis as unknown as { notedTasks: number[] }).notedTasks.splice(0)),
    loopMs: () => loopMs(page),
    async slowDown(rate) {
      await session.send('Emulation.setCPUThrottlingRate', { rate });
    },
    letGo: async () => await close(context),
  };
}

/** The thread that paints, once it does; null where the page itself paints. */
async function painterOf(page: Page): Promise<Worker | null> {
  const lends = await page.evaluate(() => 'transferControlToOffscreen' in HTMLCanvasElement.prototype);
  if (!lends) return null;
  await page.locator('.canvas > canvas').waitFor({ state: 'visible' });
  return page.workers()[0] ?? null;
}

/** The middle of a handle, or that of a slider's thumb. */
async function middleOf(page: Page, selector: string): Promise<{ x: number; y: number }> {
  const part = page.locator(selector);
  await part.scrollIntoViewIfNeeded();
  return await part.evaluate((element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const middle = { x: left + width / 2, y: top + height / 2 };
    if (!(element instanceof HTMLInputElement)) return middle;
    const [least, most, now] = [Number(element.min), Number(element.max), Number(element.value)];
    // A thumb is as wide as it says to the style sheet, and stays within the slider.
    const thumb =
      parseFloat(getComputedStyle(element).getPropertyValue('--thumb')) *
      parseFloat(getComputedStyle(document.documentElement).fontSize);
    const run = width - thumb;
    return { x: left + thumb / 2 + (run * (now - least)) / (most - least), y: middle.y };
  });
}

function handOf(session: CDPSession, touch: boolean) {
  return async (what: 'down' | 'move', x: number, y: number): Promise<void> => {
    if (touch) {
      const type = what === 'down' ? 'touchStart' : 'touchMove';
      await session.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y }] });
      return;
    }
    if (what === 'down') await session.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x, y });
    const type = what === 'down' ? 'mousePressed' : 'mouseMoved';
    await session.send('Input.dispatchMouseEvent', { type, x, y, button: 'left', buttons: 1, clickCount: 1 });
  };
}

async function close(context: BrowserContext): Promise<void> {
  await context.close();
}
