/** Who paints the side view: a thread beside the page, or Konva where no thread can, and both paint the same. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { expect, test, type Browser, type Page } from '@playwright/test';
import { decode } from 'fast-png';
import { stripPx } from '../../src/render/svg/scene-svg.ts';
import { pictureNote } from '../../src/ui/controls/paper/picture-note.ts';
import { pictureLine } from '../../src/words/kept/picture-words.ts';
import { today } from '../../src/words/kept/sheet-words.ts';
import { chooseMode, drawn, middleOf, openPage, pressAndMove, sideView } from './support/side-view.ts';

// A window without a network would stay so for the next test.
test.use({ reuseContext: false });

/** The canvas that the thread paints; Konva's lies one element deeper. */
const LENT = '.canvas > canvas';
const BY_KONVA = '.konvajs-content canvas';
const PULL = { x: 6, y: -9 };

/** Leaves the browser without a way to lend a canvas to a thread. */
function keepCanvases(): void {
  Reflect.deleteProperty(HTMLCanvasElement.prototype, 'transferControlToOffscreen');
}

/** Leaves the browser without threads. */
function keepToPage(): void {
  Reflect.deleteProperty(globalThis, 'Worker');
}

/** Leaves the thread with a canvas that it cannot paint on. */
const CANVAS_WITHOUT_CONTEXT = 'OffscreenCanvas.prototype.getContext = () => null;';

async function openIn(browser: Browser, prepare: (page: Page) => Promise<void>): Promise<Page> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await prepare(page);
  await openPage(page);
  return page;
}

/** Takes hold of a part, pulls it and keeps hold. */
async function pull(page: Page, mode: 'Adjusters' | 'Edit', handle: string): Promise<void> {
  await chooseMode(page, mode);
  const from = await middleOf(page, handle);
  await pressAndMove(page, from, { x: from.x + PULL.x, y: from.y + PULL.y });
}

/** One page that Konva paints and one that the thread paints. */
async function bothWays(browser: Browser): Promise<{ byKonva: Page; byThread: Page }> {
  const byKonva = await openIn(browser, async (page) => void (await page.addInitScript(keepCanvases)));
  const byThread = await openIn(browser, () => Promise.resolve());
  await expect(byKonva.locator(BY_KONVA)).toBeVisible();
  await expect(byThread.locator(LENT)).toBeVisible();
  return { byKonva, byThread };
}

/** A fingerprint of what is seen. */
async function shown(page: Page): Promise<string> {
  return createHash('sha256')
    .update(await sideView(page).screenshot())
    .digest('hex');
}

test('the thread paints what Konva paints, pixel for pixel, before and during a drag', async ({
  browser,
}) => {
  const { byKonva, byThread } = await bothWays(browser);
  await expect(byThread.locator(BY_KONVA)).toHaveCount(0);
  await expect(byKonva.locator(LENT)).toHaveCount(0);
  const before = await shown(byKonva);
  await expect.poll(() => shown(byThread)).toBe(before);
  for (const page of [byKonva, byThread]) await pull(page, 'Edit', 'point-steeringHead');
  const during = await shown(byKonva);
  expect(during).not.toBe(before);
  await expect.poll(() => shown(byThread)).toBe(during);
  for (const page of [byKonva, byThread]) await page.context().close();
});

test('Konva paints when the thread cannot be fetched', async ({ browser }) => {
  const whole = await openIn(browser, () => Promise.resolve());
  await expect(whole.locator(LENT)).toBeVisible();
  let asked = false;
  const page = await openIn(browser, async (opened) => {
    await opened.route(/painter\.worker/, async (route) => {
      asked = true;
      await route.abort();
    });
  });
  await expect.poll(() => asked).toBe(true);
  await expect(page.locator(LENT)).toHaveCount(0);
  await expect(page.locator(BY_KONVA)).toBeVisible();
  for (const each of [whole, page]) await pull(each, 'Adjusters', 'grip-shockLength');
  const during = await shown(page);
  await expect.poll(() => shown(whole)).toBe(during);
  for (const each of [whole, page]) await each.context().close();
});

test('the page paints where a browser has no threads', async ({ browser }) => {
  const whole = await openIn(browser, () => Promise.resolve());
  await expect(whole.locator(LENT)).toBeVisible();
  const page = await openIn(browser, async (opened) => void (await opened.addInitScript(keepToPage)));
  await expect(page.locator(LENT)).toHaveCount(0);
  await expect(page.locator(BY_KONVA)).toBeVisible();
  for (const each of [whole, page]) await pull(each, 'Adjusters', 'grip-shockLength');
  const during = await shown(page);
  await expect.poll(() => shown(whole)).toBe(during);
  for (const each of [whole, page]) await each.context().close();
});

test('the page paints where the thread has a canvas that it cannot paint on', async ({ browser }) => {
  const page = await openIn(browser, async (opened) => {
    await opened.route(/painter\.worker/, async (route) => {
      const answer = await route.fetch();
      await route.fulfill({
        response: answer,
        body: `${CANVAS_WITHOUT_CONTEXT}\n${await answer.text()}`,
      });
    });
  });
  await expect(page.locator(LENT)).toHaveCount(0);
  await expect(page.locator(BY_KONVA)).toBeVisible();
  const before = await shown(page);
  await pull(page, 'Adjusters', 'grip-shockLength');
  expect(await shown(page)).not.toBe(before);
  await page.context().close();
});

test('a new theme and a new size are painted the same both ways', async ({ browser }) => {
  const { byKonva, byThread } = await bothWays(browser);
  let before = await shown(byKonva);
  const changes: ((page: Page) => Promise<unknown>)[] = [
    (page) => page.getByRole('combobox', { name: 'Theme' }).selectOption('garage'),
    (page) => page.setViewportSize({ width: 1000, height: 640 }),
  ];
  for (const change of changes) {
    for (const page of [byKonva, byThread]) await change(page);
    await expect.poll(() => shown(byKonva)).not.toBe(before);
    await drawn(byKonva);
    const after = await shown(byKonva);
    await expect.poll(() => shown(byThread)).toBe(after);
    before = after;
  }
  for (const page of [byKonva, byThread]) await page.context().close();
});

test('a screen with more pixels to each px gets them without a change of the bike', async ({ browser }) => {
  const { byKonva, byThread } = await bothWays(browser);
  for (const page of [byKonva, byThread]) await choosePixels(page, 2);
  await expect.poll(() => pixelsToEachPx(byThread, LENT)).toBe(2);
  await expect.poll(() => pixelsToEachPx(byKonva, BY_KONVA)).toBe(2);
  const corner = await byKonva.locator(BY_KONVA).evaluate((canvas) => {
    const { width, height } = canvas as HTMLCanvasElement;
    const context = (canvas as HTMLCanvasElement).getContext('2d');
    return [...(context?.getImageData(width - 1, height - 1, 1, 1).data ?? [])];
  });
  // Paint without a gap: the background reaches the last pixel.
  expect(corner[3]).toBe(255);
  for (const page of [byKonva, byThread]) await page.context().close();
});

/** Moves the window to a screen with so many pixels to each px, where the page keeps its size in px. */
async function choosePixels(page: Page, deviceScaleFactor: number): Promise<void> {
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  await page.evaluate((px) => (document.documentElement.style.width = `${px}px`), width);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setDeviceMetricsOverride', {
    // The browser takes note of other pixels only with another size of the window.
    width: width + 1,
    height,
    deviceScaleFactor,
    mobile: false,
  });
}

async function pixelsToEachPx(page: Page, selector: string): Promise<number> {
  return await page.locator(selector).evaluate((canvas) => {
    const { clientWidth, width } = canvas as HTMLCanvasElement;
    return width / clientWidth;
  });
}

test('a canvas that the system took away is painted anew when it comes back', async ({ browser }) => {
  const { byKonva, byThread } = await bothWays(browser);
  const before = await shown(byKonva);
  await byKonva.locator(BY_KONVA).evaluate((canvas) => {
    (canvas as HTMLCanvasElement).width += 0;
    canvas.dispatchEvent(new Event('contextrestored'));
  });
  await expect.poll(() => shown(byKonva)).toBe(before);

  const [painter] = byThread.workers();
  // The thread keeps its canvas to itself, so it is caught at the next stroke.
  await painter.evaluate(() => {
    const { fillRect } = OffscreenCanvasRenderingContext2D.prototype;
    OffscreenCanvasRenderingContext2D.prototype.fillRect = function (...box) {
      Object.assign(globalThis, { caught: this.canvas });
      fillRect.apply(this, box);
    };
  });
  for (const page of [byKonva, byThread]) await pull(page, 'Adjusters', 'grip-shockLength');
  const during = await shown(byKonva);
  await expect.poll(() => shown(byThread)).toBe(during);
  const empty = await painter.evaluate(() => {
    const { caught } = globalThis as unknown as { caught: OffscreenCanvas };
    caught.width += 0;
    const { data } = caught.getContext('2d')?.getImageData(0, 0, caught.width, caught.height) ?? {};
    caught.dispatchEvent(new Event('contextrestored'));
    return data?.every((value) => value === 0);
  });
  expect(empty).toBe(true);
  await expect.poll(() => shown(byThread)).toBe(during);
  for (const page of [byKonva, byThread]) await page.context().close();
});

test('a saved picture has twice the pixels of the screen, and the same ones whoever paints the screen', async ({
  browser,
}) => {
  const { byKonva, byThread } = await bothWays(browser);
  const [first, second] = [await savedPicture(byKonva), await savedPicture(byThread)];
  expect(second.equals(first)).toBe(true);
  const box = await sideView(byThread).boundingBox();
  const [width, height] = [Math.round(box?.width ?? 0), Math.round(box?.height ?? 0)];
  const line = pictureLine({
    bikeName: 'Road sport, as delivered',
    what: 'Side view, rider on board',
    day: today(new Date()),
    system: 'metric',
    invented: true,
  });
  // Read by a decoder that is not the browser's; what it is and the caution have a strip below the bike.
  const picture = decode(first);
  expect([picture.width, picture.height]).toEqual([
    2 * width,
    2 * height + Math.round(2 * stripPx(pictureNote(width, line))),
  ]);
  expect(new Set(picture.data).size).toBeGreaterThan(50);
  for (const page of [byKonva, byThread]) await page.context().close();
});

test('a picture can be saved once the network is gone', async ({ page, context }) => {
  const fetched = page.waitForResponse(/save-picture[^/]*\.js$/);
  await openPage(page);
  await (await fetched).finished();
  await page.waitForLoadState('networkidle');
  await context.setOffline(true);
  expect((await savedPicture(page)).readUInt32BE(16)).toBeGreaterThan(0);
});

/** The PNG of the side view after a pull on a grip. */
async function savedPicture(page: Page): Promise<Buffer> {
  await pull(page, 'Adjusters', 'grip-shockLength');
  await page.mouse.up();
  await page.getByRole('button', { name: 'What is shown' }).click();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Picture (PNG)' }).click(),
  ]);
  return await readFile(await file.path());
}
