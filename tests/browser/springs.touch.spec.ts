/** The Springs tab on a phone: the sag typed, the spring tapped in, and a rate at hand taken. */
import { expect, test } from '@playwright/test';
import { expectNoUndo, undoButton } from './support/panels.ts';
import { openSprings, sags, springs, wish } from './support/springs.ts';
import { openPage } from './support/side-view.ts';
import { choosePanel } from './support/touch.ts';

test('a finger fits the spring that gives the sag typed, and undo takes it out', async ({ page }) => {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openSprings(page);
  await wish(page, 'Free sag wanted, rear', '9');
  await wish(page, 'Rider sag wanted, rear', '33');
  await springs(page).getByRole('button', { name: 'Fit this at the rear' }).tap();
  // One end's spring counts with the other's advised one; with the one on the bike it is off by hundredths.
  const fitted = await sags(page);
  expect(fitted.free.rear).toBeCloseTo(9, 1);
  expect(fitted.rider.rear).toBeCloseTo(33, 1);
  const rates = springs(page).getByRole('textbox', { name: 'Rates in stock, rear' });
  await rates.fill('100 110 120');
  await rates.press('Enter');
  const best = springs(page).getByRole('listitem').filter({ hasText: 'the best of them' });
  await best.getByRole('button').tap();
  expect((await sags(page)).rider.rear).toBeCloseTo(33, 1);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  for (const button of await springs(page).getByRole('button').all())
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(43.99);
  await undoButton(page).tap();
  await undoButton(page).tap();
  await expectNoUndo(page);
});
