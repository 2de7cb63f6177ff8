/** A paddock day on a phone: a session logged with a thumb, in few taps, with nothing too small or beside the screen. */
import { expect, test } from '@playwright/test';
import { openPage } from './support/side-view.ts';
import { openSheets, sheetRow, sheets } from './support/sheets.ts';
import { amissIn, choosePanel } from './support/touch.ts';

test('changed, felt and a pressure are logged in six taps, the button that keeps them always in sight', async ({
  page,
}) => {
  await openPage(page);
  let taps = 0;
  await choosePanel(page, 'Why and more');
  await openSheets(page);
  taps += 2;
  const log = sheets(page).getByRole('button', { name: 'Log a session' });
  await expect(log).toBeEnabled();
  await log.tap();
  taps++;
  const keep = sheets(page).getByRole('button', { name: 'Keep this sheet' });
  await expect(keep).toBeInViewport({ ratio: 1 });
  expect(await amissIn(sheets(page))).toEqual([]);
  for (const [label, text] of [
    ['What was felt', 'quicker into the corner'],
    ['Front pressure, hot', '2.5 bar'],
  ] as const) {
    const entry = sheets(page).getByLabel(label);
    await entry.tap();
    taps++;
    await entry.fill(text);
    await expect(keep).toBeInViewport({ ratio: 1 });
  }
  await keep.tap();
  taps++;
  await expect(sheetRow(page, 'quicker into the corner')).toBeVisible();
  expect(taps).toBeLessThanOrEqual(6);
  await sheetRow(page, 'quicker into the corner').tap();
  await expect(page.getByRole('article').getByRole('region', { name: 'Notes' })).toContainText('2.5 bar');
  expect(await amissIn(sheets(page))).toEqual([]);
});
