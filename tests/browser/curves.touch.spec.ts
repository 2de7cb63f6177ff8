/** The Curves tab under a finger. */
import { expect, test } from '@playwright/test';
import { cursor, curves, openCurves } from './support/curves.ts';
import { openPage } from './support/stand.ts';

test('a finger chooses a curve and moves the bike along it, and nothing lies beside the screen', async ({
  page,
}) => {
  await openPage(page);
  await page.getByRole('group', { name: 'Panel' }).getByText('Why and more', { exact: true }).tap();
  await openCurves(page, 'Anti-squat', 'Rear travel');
  const picture = curves(page).locator('svg[role="img"]');
  await picture.scrollIntoViewIfNeeded();
  const box = await picture.boundingBox();
  if (box === null) throw new Error('no chart');
  await page.touchscreen.tap(box.x + box.width * 0.6, box.y + 60);
  await expect(cursor(page)).not.toHaveValue('0');
  expect(Number(await cursor(page).inputValue())).toBeGreaterThan(40);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  for (const button of await curves(page).getByRole('button').all()) {
    if (!(await button.isVisible())) continue;
    const size = await button.boundingBox();
    expect(size?.height, (await button.textContent()) ?? '').toBeGreaterThanOrEqual(44);
  }
});
