/** How the page is seen: lit constructions, dimensions, themes and units. */
import { expect, test, type Page } from '@playwright/test';
import { groundTrail } from '../../src/core/readings/trail.ts';
import type { PointKey } from '../../src/core/sketch/points.ts';
import { dimensionWords } from '../../src/words/change/dimension-words.ts';
import { wheelbaseHeight } from '../../src/scene/construction/construction-drawing.ts';
import type { BikeDocument } from '../../src/document/document.ts';
import { METRIC, placeOf, savedDocument, sentencesOf, standing } from './support/bike-document.ts';
import {
  field,
  FRONT_HEIGHT,
  plain,
  readingLine,
  readings,
  readingText,
  REAR_HEIGHT,
  typeInto,
  undo,
  why,
} from './support/panels.ts';
import { chooseMode, emptySpot, handle, middleOf, openPage } from './support/side-view.ts';
import { layerOf, pictureText, wordsOf } from './support/side-view-picture.ts';
import { seenAt } from './support/side-view-window.ts';

test('a reading that is clicked lights its construction, and clicked again puts it out', async ({ page }) => {
  await openPage(page);
  const plainLines = layerOf(await pictureText(page), 'construction');
  for (const label of ['Trail', 'Swingarm angle', 'Anti-squat', 'Centre of gravity height']) {
    await readingLine(page, label).click();
    await expect(readingLine(page, label)).toHaveAttribute('aria-pressed', 'true');
    const lit = layerOf(await pictureText(page), 'construction');
    expect(lit.length, label).toBeGreaterThan(plainLines.length);
    await readingLine(page, label).click();
    await expect(readingLine(page, label)).toHaveAttribute('aria-pressed', 'false');
    expect(layerOf(await pictureText(page), 'construction')).toBe(plainLines);
  }
});

test('a line that is clicked on the side view chooses its reading, and an empty place none', async ({
  page,
}) => {
  await openPage(page);
  const stance = standing(await savedDocument(page));
  const { wheelbase } = stance.pose;
  const trail = groundTrail(stance.machine.frontRadius, stance.rake, stance.offset);
  const lines = [
    { label: 'Wheelbase', at: { x: wheelbase * 0.3, y: wheelbaseHeight() } },
    { label: 'Trail', at: { x: wheelbase + trail * 0.6, y: 0 } },
  ];
  for (const { label, at } of lines) {
    const seen = await seenAt(page, stance, at);
    await page.mouse.click(seen.x, seen.y);
    await expect(readingLine(page, label)).toHaveAttribute('aria-pressed', 'true');
    await expect(readings(page).locator('li button[aria-pressed="true"]')).toHaveCount(1);
  }
  const empty = await emptySpot(page);
  await page.mouse.click(empty.x, empty.y);
  await expect(readings(page).locator('li button[aria-pressed="true"]')).toHaveCount(0);
});

test('a sentence of Why lights the construction it speaks of', async ({ page }) => {
  await openPage(page);
  const before = await savedDocument(page);
  await typeInto(page, REAR_HEIGHT, '10');
  const told = sentencesOf(before, await savedDocument(page));
  const index = told.findIndex(({ reading }) => reading === 'rake');
  const sentence = why(page).getByRole('listitem').nth(index).getByRole('button');
  await sentence.click();
  await expect(sentence).toHaveAttribute('aria-pressed', 'true');
  await expect(readingLine(page, 'Rake')).toHaveAttribute('aria-pressed', 'true');
});

test('Why tells the last change apart from all changes since the baseline', async ({ page }) => {
  await openPage(page);
  const told = async () => (await why(page).getByRole('listitem').allInnerTexts()).map(plain);
  const first = await savedDocument(page);
  await typeInto(page, REAR_HEIGHT, '10');
  const second = await savedDocument(page);
  await typeInto(page, FRONT_HEIGHT, '0');
  const third = await savedDocument(page);
  expect(await told()).toEqual(sentencesOf(first, third).map(({ text }) => text));
  await why(page).locator('label', { hasText: 'Last change' }).click();
  await expect(why(page)).toContainText(FRONT_HEIGHT);
  expect(await told()).toEqual(sentencesOf(second, third).map(({ text }) => text));
});

function wordsBetween(document: BikeDocument, from: PointKey, to: PointKey): string {
  const [start, end] = [from, to].map((key) => placeOf(document, key, 'riderUp'));
  return plain(dimensionWords(start, end, METRIC));
}

/** "826.5 mm" of "826.5 mm (forward …)". */
const distanceOf = (words: string): string => words.slice(0, words.indexOf(' ('));

/** The distance is on the drawing, the whole in the line below it. */
async function expectMeasured(page: Page, words: string): Promise<void> {
  await expect(page.getByText(words)).toBeVisible();
  expect(wordsOf(await pictureText(page))).toContain(distanceOf(words));
}

test('a dimension between two points is the core’s, follows the bike when an adjuster turns, and goes with Escape', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Measure');
  for (const key of ['rearAxle', 'steeringHead'] as const) {
    const at = await middleOf(page, `point-${key}`);
    await page.mouse.click(at.x, at.y);
  }
  const before = wordsBetween(await savedDocument(page), 'rearAxle', 'steeringHead');
  await expectMeasured(page, before);
  await typeInto(page, REAR_HEIGHT, '12');
  const after = wordsBetween(await savedDocument(page), 'rearAxle', 'steeringHead');
  expect(after).not.toBe(before);
  await expectMeasured(page, after);
  await undo(page);
  await expectMeasured(page, before);
  await handle(page, 'point-steeringHead').press('Escape');
  await expect(page.getByText(before)).toHaveCount(0);
  expect(wordsOf(await pictureText(page))).not.toContain(distanceOf(before));
});

test('a dimension is read by keyboard alone', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Measure');
  await handle(page, 'point-rearAxle').press('Enter');
  await expect(page.getByText('Tap the second point or place.')).toBeVisible();
  await handle(page, 'point-frontAxle').press('Space');
  const document = await savedDocument(page);
  await expectMeasured(page, wordsBetween(document, 'rearAxle', 'frontAxle'));
});

test('each theme is put on, and theme, units and decimal comma stay after a reload', async ({ page }) => {
  await openPage(page);
  const theme = page.getByRole('combobox', { name: 'Theme' });
  const backgrounds = new Set<string>();
  for (const option of await theme.locator('option').all()) {
    const key = (await option.getAttribute('value')) ?? '';
    await theme.selectOption(key);
    await expect(page.locator('html')).toHaveAttribute('data-theme', key);
    backgrounds.add(await page.locator('html').evaluate((html) => getComputedStyle(html).backgroundColor));
    expect(await pictureText(page)).toContain('<rect');
  }
  expect(backgrounds.size).toBe(3);
  await theme.selectOption({ index: 1 });
  const chosen = await theme.inputValue();
  await page.getByRole('combobox', { name: 'Units' }).selectOption({ label: 'inch' });
  await page.getByRole('combobox', { name: 'Decimal sign' }).selectOption({ label: '1,5' });
  const wheelbase = await readingText(page, 'Wheelbase');
  expect(wheelbase).toMatch(/^\d\d,\d+ in$/);
  expect(await readingText(page, 'Rake')).toMatch(/^\d\d,\d\d°$/);
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-theme', chosen);
  await expect.poll(() => readingText(page, 'Wheelbase')).toBe(wheelbase);
  await expect(field(page, FRONT_HEIGHT)).toHaveValue(/,/);
});
