/** The list of bikes on a phone: within the window, its rows and buttons no smaller than a finger. */
import { expect, test } from '@playwright/test';
import { bikeRow, bikesDialog, expectBike, openBikes } from './support/bikes.ts';
import { startDemo } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

const FINGER_PX = 44;

test('the list of bikes fits a phone, and a press opens a bike', async ({ page }, info) => {
  await openPage(page);
  await startDemo(page, 'Track day');
  const dialog = await openBikes(page);
  await page.screenshot({ path: info.outputPath('list.png') });
  const box = await dialog.boundingBox();
  const window = page.viewportSize();
  expect((box?.y ?? 0) + (box?.height ?? Infinity)).toBeLessThanOrEqual(window?.height ?? 0);
  expect((box?.x ?? 0) + (box?.width ?? Infinity)).toBeLessThanOrEqual(window?.width ?? 0);
  for (const button of await dialog.getByRole('button').all()) {
    const size = await button.boundingBox();
    expect(size?.height).toBeGreaterThanOrEqual(FINGER_PX);
  }
  await bikeRow(page, 'Track day').click();
  await expect(bikesDialog(page)).toHaveCount(0);
  await expectBike(page, 'Track day');
});
