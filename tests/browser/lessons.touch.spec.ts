/** A lesson by touch, on a phone. */
import { expect, test } from '@playwright/test';
import { openPage } from './support/side-view.ts';
import { choosePanel } from './support/touch.ts';

test('a lesson goes by taps: predict, look, next, and leave', async ({ page }) => {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await page.getByRole('group', { name: 'Below the side view' }).getByText('Lessons', { exact: true }).tap();
  await page.getByRole('button', { name: 'Start: Drop the fork' }).tap();
  const room = page.getByRole('dialog');
  await room.getByRole('button', { name: 'Next' }).tap();
  await room.getByText('quicker steering', { exact: true }).tap();
  await room.getByRole('button', { name: 'Do it and look' }).tap();
  await expect(room.locator('.figure')).toContainText('Rake');
  await expect(room).toContainText('Right. You said: quicker steering.');
  await room.getByRole('button', { name: 'Next' }).tap();
  await expect(room).toContainText('Step 2 of 3');
  // Nothing of the step lies outside the phone's width.
  expect(await room.evaluate((dialog) => dialog.scrollWidth <= window.innerWidth)).toBe(true);
  await room.getByRole('button', { name: 'Leave' }).tap();
  await expect(room).toHaveCount(0);
});
