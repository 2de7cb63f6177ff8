/** The sprocket table on a phone: it scrolls within itself beside fixed teeth, and a pair is fitted by a tap. */
import { expect, test, type Page } from '@playwright/test';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { expectNoUndo, typeInto, undoButton } from './support/panels.ts';
import {
  cell,
  count,
  openFilters,
  openSprockets,
  pairButton,
  pairRow,
  sprockets,
  tryButton,
} from './support/sprockets.ts';
import { openPage } from './support/side-view.ts';
import { amissIn, choosePanel, tapTheme } from './support/touch.ts';

const [{ setup }] = DEMO_BIKES;
const OTHER = `${setup.frontTeeth + 1}/${setup.rearTeeth}`;

async function openTab(page: Page): Promise<void> {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openSprockets(page);
}

function scroller(page: Page) {
  return page.getByRole('region', { name: 'Table of sprocket pairs' });
}

test('the tab fits the screen and the finger, in every theme', async ({ page }) => {
  await openTab(page);
  await openFilters(page);
  await page.getByRole('checkbox', { name: 'Same ratio' }).check();
  await typeInto(page, 'Ratio within', '30');
  await sprockets(page).getByText('Speed and revs').tap();
  await pairButton(page, OTHER).tap();
  for (const theme of ['paper', 'garage', 'sun'] as const) {
    await tapTheme(page, theme);
    expect({ theme, amiss: await amissIn(sprockets(page)) }).toEqual({ theme, amiss: [] });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    const words = await sprockets(page).locator('tr.more div').first().boundingBox();
    expect(words).not.toBeNull();
    expect((words?.x ?? NaN) + (words?.width ?? NaN)).toBeLessThanOrEqual(390);
  }
});

test('the table scrolls aside within itself, its teeth stay in sight, and keys reach it', async ({
  page,
}) => {
  await openTab(page);
  await scroller(page).focus();
  await expect(scroller(page)).toBeFocused();
  await scroller(page).evaluate((region) => (region.scrollLeft = region.scrollWidth));
  expect(await scroller(page).evaluate((region) => region.scrollLeft)).toBeGreaterThan(200);
  await pairRow(page, OTHER).locator('[data-column="pivotGap"]').scrollIntoViewIfNeeded();
  await expect(pairButton(page, OTHER)).toBeInViewport({ ratio: 1 });
  await expect(pairRow(page, OTHER).locator('[data-column="pivotGap"]')).toBeInViewport();
});

test('a tap on Try fits the pair, and one undo takes it off', async ({ page }) => {
  await openTab(page);
  const told = await cell(page, OTHER, 'antiSquat');
  await tryButton(page, OTHER).tap();
  await expect(pairRow(page, OTHER)).toContainText('On the bike');
  expect(await cell(page, OTHER, 'antiSquat')).toEqual(told);
  await undoButton(page).tap();
  await expectNoUndo(page);
  await expect(pairRow(page, OTHER)).not.toContainText('On the bike');
  await expect(count(page)).toHaveText('All 45 pairs, rider on board');
});
