/** A window too low for the side view and a panel: the page scrolls, and keeps its name. */
import { expect, test } from '@playwright/test';
import { openPage } from './support/side-view.ts';

test('below 560 px of height the page scrolls down to its last panel, and not before', async ({ page }) => {
  const scrolledTo = () =>
    page.evaluate(() => {
      window.scrollTo(0, document.documentElement.scrollHeight);
      return window.scrollY;
    });
  await page.setViewportSize({ width: 667, height: 320 });
  await openPage(page);
  expect(await scrolledTo()).toBe(240);
  await page.setViewportSize({ width: 390, height: 664 });
  await expect.poll(scrolledTo).toBe(0);
  await expect(page.getByRole('heading', { level: 1, name: 'Sidestance' })).toHaveCount(1);
});
