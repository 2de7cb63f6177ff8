/** The view for a room: what it shows, how large, its way from before to now, and leaving it. */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { expectNothingSerious } from './support/axe.ts';
import { plain, readingText, REAR_HEIGHT, typeInto } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

/** Sizes at 1920 × 1080, px. */
const LEAST_TEXT = 24;
const LEAST_FIGURE = 40;

function room(page: Page): Locator {
  return page.getByRole('dialog');
}

async function openRoom(page: Page): Promise<void> {
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  await page.keyboard.press('p');
  await expect(room(page)).toBeVisible();
}

async function sizesOf(texts: Locator): Promise<number[]> {
  return await texts.evaluateAll((all) =>
    all.map((each) => Number.parseFloat(getComputedStyle(each).fontSize)),
  );
}

test('words are at least 24 px, readings and headline at least 40 px, on a screen of 1920 × 1080', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  await openRoom(page);
  await expect(room(page).getByRole('heading')).toContainText('steering turns slightly quicker');
  const small = await sizesOf(room(page).locator('dt, .change, button, .rest'));
  expect(small.length).toBeGreaterThan(10);
  expect(Math.min(...small)).toBeGreaterThanOrEqual(LEAST_TEXT);
  const large = await sizesOf(room(page).locator('h2, dd.figures'));
  expect(large.length).toBeGreaterThan(4);
  expect(Math.min(...large)).toBeGreaterThanOrEqual(LEAST_FIGURE);
  await expectNothingSerious(page, 'dialog');
});

test('the slider takes the bike from before to now, and Escape leaves with the bike as it was', async ({
  page,
}) => {
  await openPage(page);
  const before = await readingText(page, 'Trail');
  await typeInto(page, REAR_HEIGHT, '6');
  const now = await readingText(page, 'Trail');
  expect(now).not.toBe(before);
  await openRoom(page);
  const trail = room(page)
    .locator('dl > div')
    .filter({ has: page.getByText('Trail', { exact: true }) });
  const figure = async () => plain(await trail.locator('dd.figures').innerText());
  expect(await figure()).toBe(now);
  await room(page).getByRole('button', { name: 'Before' }).click();
  await expect.poll(figure).toBe(before);
  const headline = room(page).getByRole('heading');
  await expect(headline).toHaveText(/^To come: /);
  const drawing = room(page).locator('.drawing');
  const size = await drawing.boundingBox();
  const way = room(page).getByRole('slider', { name: 'From before to now' });
  await way.press('ArrowRight');
  await expect.poll(figure).not.toBe(before);
  expect(await figure()).not.toBe(now);
  await expect(headline).toHaveText(/^On the way to: /);
  expect(await drawing.boundingBox()).toEqual(size);
  await way.press('End');
  await expect.poll(figure).toBe(now);
  await expect(headline).toHaveText(/^Now: /);
  expect(await drawing.boundingBox()).toEqual(size);
  await page.keyboard.press('Escape');
  await expect(room(page)).toHaveCount(0);
  expect(await readingText(page, 'Trail')).toBe(now);
});

test('the replay runs by itself until it is stopped', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  await openRoom(page);
  await room(page).getByRole('button', { name: 'Replay' }).click();
  const way = room(page).getByRole('slider', { name: 'From before to now' });
  await expect.poll(async () => Number(await way.inputValue())).toBeGreaterThan(0.2);
  await room(page).getByRole('button', { name: 'Stop' }).click();
  await expect(room(page).getByRole('button', { name: 'Replay' })).toBeVisible();
  const stopped = await way.inputValue();
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  expect(await way.inputValue()).toBe(stopped);
});

test('for those who want no motion both ends are a press away, and nothing runs', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  await openRoom(page);
  await expect(room(page).getByRole('button', { name: 'Replay' })).toHaveCount(0);
  await room(page).getByRole('button', { name: 'Before' }).click();
  await expect(room(page).getByRole('button', { name: 'Before' })).toHaveAttribute('aria-pressed', 'true');
  await room(page).getByRole('button', { name: 'Now' }).click();
  await expect(room(page).getByRole('button', { name: 'Now' })).toHaveAttribute('aria-pressed', 'true');
});

test('hidden figures are not there for anybody, and come back', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  const trail = await readingText(page, 'Trail');
  await openRoom(page);
  const told = async () => plain(await room(page).innerText());
  expect(await told()).toContain(trail);
  await room(page).getByRole('button', { name: 'Hide figures' }).click();
  await expect(room(page).locator('dl')).toHaveCount(0);
  expect(await told()).not.toContain(trail);
  await expect(room(page).getByText('steering turns')).toHaveCount(0);
  await room(page).getByRole('button', { name: 'Show figures' }).click();
  await expect.poll(told).toContain(trail);
});
