/** Cautions where hands go, on a laptop: in Edit, with its weighing, and beside springs, chain and sprockets. */
import { expect, test } from '@playwright/test';
import { CAUTION_WEIGHING } from '../../src/ui/controls/panel-cautions.ts';
import { CAUTION_EDIT, TAB_CAUTIONS } from './support/panel-cautions.ts';
import { chooseMode, openPage } from './support/side-view.ts';

for (const { tab, cautions } of TAB_CAUTIONS)
  test(`the tab ${tab} has its cautions`, async ({ page }) => {
    await openPage(page);
    await page.getByRole('group', { name: 'Below the side view' }).getByText(tab, { exact: true }).click();
    const panel = page.getByRole('region', { name: tab, exact: true });
    for (const caution of cautions) await expect(panel.getByText(caution)).toBeVisible();
  });

test('Edit warns of loaded springs and of a bike that can fall, and so does its weighing', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await expect(page.getByText(CAUTION_EDIT)).toBeVisible();
  const weighing = page.locator('summary', { hasText: /weigh/i }).first();
  await weighing.click();
  await expect(page.getByText(CAUTION_WEIGHING)).toBeVisible();
});
