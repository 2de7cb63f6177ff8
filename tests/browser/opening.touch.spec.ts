/** Opens the built page on a phone. */
import { expect, test } from '@playwright/test';

test('the page fits a phone’s width, so nothing lies beside the screen', async ({ page }) => {
  await page.goto('/');
  await expect(page).toHaveTitle('Sidestance');
  expect(page.viewportSize()).toEqual({ width: 390, height: 844 });
  expect(await page.evaluate(() => navigator.maxTouchPoints)).toBeGreaterThan(0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});
