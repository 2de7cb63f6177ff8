/** Cautions where hands go, on a laptop: in Edit, with its weighing, and beside springs, chain and sprockets. */
import { expect, test } from '@playwright/test';
import { CAUTION_WEIGHING } from '../../src/ui/controls/panel-cautions.ts';
import { CAUTION_EDIT, TAB_CAUTIONS } from './support/panel-cautions.ts';
import { chooseMode, openPage } from './support/side-view.ts';

test('the tabs where hands go have their cautions, and Edit and its weighing warn of loaded springs and of a bike that can fall', async ({
  page,
}) => {
  await openPage(page);
  for (const { tab, cautions } of TAB_CAUTIONS) {
    await page.getByRole('group', { name: 'Below the side view' }).getByText(tab, { exact: true }).click();
    const panel = page.getByRole('region', { name: tab, exact: true });
    for (const caution of cautions) await expect(panel.getByText(caution)).toBeVisible();
  }
  await chooseMode(page, 'Edit');
  await expect(page.getByText(CAUTION_EDIT)).toBeVisible();
  const weighing = page.locator('summary', { hasText: /weigh/i }).first();
  await weighing.click();
  await expect(page.getByText(CAUTION_WEIGHING)).toBeVisible();
});
