/** Cautions on a phone: in sight at once beside the adjusters, and without a search in every part where hands go. */
import { expect, test } from '@playwright/test';
import { CAUTION_FOLDED, CAUTION_IN_SHORT } from '../../src/ui/controls/cautions.ts';
import { CAUTION_EDIT, TAB_CAUTIONS } from './support/panel-cautions.ts';
import { chooseMode, openPage } from './support/side-view.ts';
import { choosePanel } from './support/touch.ts';

test('the caution is in sight as the page opens, and a tap opens the rest', async ({ page }) => {
  await openPage(page);
  const caution = page.getByRole('complementary', { name: 'Cautions' });
  const summary = caution.locator('summary').filter({ hasText: CAUTION_FOLDED });
  await expect(page.getByRole('paragraph').filter({ hasText: CAUTION_IN_SHORT })).toBeInViewport({
    ratio: 1,
  });
  await summary.tap();
  await expect(caution.getByRole('listitem').first()).toBeVisible();
});

test('springs, chain, sprockets and Edit have their cautions', async ({ page }) => {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  for (const { tab, cautions } of TAB_CAUTIONS) {
    await page.getByRole('group', { name: 'Below the side view' }).getByText(tab, { exact: true }).tap();
    const panel = page.getByRole('region', { name: tab, exact: true });
    for (const caution of cautions) await expect(panel.getByText(caution)).toBeVisible();
  }
  await chooseMode(page, 'Edit');
  await choosePanel(page, 'Bike');
  await expect(page.getByText(CAUTION_EDIT)).toBeVisible();
});
