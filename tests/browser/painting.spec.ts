/** Who paints the side view: Konva at first sight, a thread beside the page after it, and both paint the same. */
import { readFile } from 'node:fs/promises';
import { expect, test, type Browser, type Page } from '@playwright/test';
import { chooseMode, middleOf, openPage, pressAndMove, stand } from './support/side-view.ts';

/** The canvas that the thread paints; Konva's lies one element deeper. */
const LENT = '.canvas > canvas';
const PULL = { x: 6, y: -9 };

/** Leaves the browser without a way to lend a canvas to a thread. */
function keepCanvases(): void {
  Reflect.deleteProperty(HTMLCanvasElement.prototype, 'transferControlToOffscreen');
}

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

async function shown(page: Page): Promise<string> {
  return (await stand(page).screenshot()).toString('base64');
}

test('the thread paints what Konva paints, pixel for pixel, before and during a drag', async ({
  browser,
}) => {
  const byKonva = await openIn(browser, async (page) => void (await page.addInitScript(keepCanvases)));
  const byThread = await openIn(browser, () => Promise.resolve());
  await expect(byThread.locator(LENT)).toBeVisible();
  await expect(byThread.locator('.konvajs-content canvas')).toBeHidden();
  await expect(byKonva.locator(LENT)).toHaveCount(0);
  const before = await shown(byKonva);
  await expect.poll(() => shown(byThread)).toBe(before);
  for (const page of [byKonva, byThread]) await pull(page, 'Edit', 'point-steeringHead');
  const during = await shown(byKonva);
  expect(during).not.toBe(before);
  await expect.poll(() => shown(byThread)).toBe(during);
  for (const page of [byKonva, byThread]) await page.context().close();
});

test('Konva goes on painting when the thread cannot be fetched', async ({ browser }) => {
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
  for (const each of [whole, page]) await pull(each, 'Adjusters', 'grip-shockLength');
  const during = await shown(page);
  await expect.poll(() => shown(whole)).toBe(during);
  for (const each of [whole, page]) await each.context().close();
});

test('a saved picture has twice the pixels of the screen, and the same ones whoever paints the screen', async ({
  browser,
}) => {
  const byKonva = await openIn(browser, async (page) => void (await page.addInitScript(keepCanvases)));
  const byThread = await openIn(browser, () => Promise.resolve());
  await expect(byThread.locator(LENT)).toBeVisible();
  const [first, second] = [await savedPicture(byKonva), await savedPicture(byThread)];
  expect(second.equals(first)).toBe(true);
  const box = await stand(byThread).boundingBox();
  // Width and height stand in a PNG's first chunk.
  expect([first.readUInt32BE(16), first.readUInt32BE(20)]).toEqual([
    2 * Math.round(box?.width ?? 0),
    2 * Math.round(box?.height ?? 0),
  ]);
  for (const page of [byKonva, byThread]) await page.context().close();
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
