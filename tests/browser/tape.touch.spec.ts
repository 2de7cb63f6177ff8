/** A bike measured on a phone: every control large enough for a finger, and nothing beside the screen. */
import { expect, test } from '@playwright/test';
import { expectBike } from './support/bikes.ts';
import { openPage } from './support/side-view.ts';
import { addButton, fillIn, makeButton, openTape, PAPERS, rowLine, tape } from './support/tape.ts';
import { amissIn, choosePanel } from './support/touch.ts';

test('papers and a row are taken with a finger', async ({ page }) => {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openTape(page);
  expect(await amissIn(tape(page))).toEqual([]);
  for (const [label, text] of PAPERS) await fillIn(page, label, text);
  await makeButton(page).tap();
  await expectBike(page, 'Bike from its papers');
  await addButton(page).tap();
  await fillIn(page, 'Figure', '1416');
  await expect(rowLine(page, 8)).toContainText('1416 mm');
  await expect(tape(page).getByRole('img').first()).toBeVisible();
  expect(await amissIn(tape(page))).toEqual([]);
  await tape(page).getByRole('button', { name: 'Remove row 8' }).tap();
  await expect(rowLine(page, 8)).toHaveCount(0);
});
