/** A paddock day on a phone: sessions logged with a gloved thumb, with nothing too small or beside the screen. */
import { expect, test, type Locator } from '@playwright/test';
import { field, REAR_HEIGHT } from './support/panels.ts';
import { openPage } from './support/side-view.ts';
import { openSheets, sheetRow, sheets } from './support/sheets.ts';
import { amissIn, choosePanel } from './support/touch.ts';

/** Half a minute at two seconds a press, which is what a thumb in a glove takes, a key of the phone's keyboard or a swipe included. */
const MOST_PRESSES = 15;

/** Whether a thumb on the middle of it would hit it, without a swipe before. */
const isInReach = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const hit = document.elementFromPoint(left + width / 2, top + height / 2);
    return hit !== null && (element.contains(hit) || (hit.tagName === 'LABEL' && hit.contains(element)));
  });

test('a paddock day: each session is logged in fifteen presses, keys and swipes included, and the first one sets the bike again', async ({
  page,
}) => {
  let presses = 0;
  const tap = async (target: Locator): Promise<void> => {
    // What is not in sight costs a swipe first.
    if (!(await isInReach(target))) presses++;
    await target.tap();
    presses++;
  };
  const typed = async (label: string, keys: string): Promise<void> => {
    await tap(sheets(page).getByLabel(label));
    await page.keyboard.type(keys);
    presses += keys.length;
  };
  const log = sheets(page).getByRole('button', { name: 'Log a session' });
  const keep = sheets(page).getByRole('button', { name: 'Keep this sheet' });
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openSheets(page);
  presses += 2;
  await expect(log).toBeEnabled();
  await tap(log);
  await expect(keep).toBeInViewport({ ratio: 1 });
  expect(await amissIn(sheets(page))).toEqual([]);
  await tap(sheets(page).getByRole('button', { name: 'Better' }));
  await expect(sheets(page).getByLabel('What was felt')).toHaveValue('Better');
  await typed('Front pressure, hot', '2.5');
  await typed('Rear pressure, hot', '2.3');
  await expect(keep).toBeInViewport({ ratio: 1 });
  await tap(keep);
  await expect(sheetRow(page, 'Better')).toBeVisible();
  expect(presses).toBeLessThanOrEqual(MOST_PRESSES);

  // The second session: the sheet knows what was turned, and a verdict may be followed by words.
  await choosePanel(page, 'Adjusters');
  const shock = page.locator('[data-adjuster="shockLength"]');
  await shock.getByRole('button', { name: /raise/ }).first().tap();
  await expect(field(page, REAR_HEIGHT)).not.toHaveValue('0.0');
  presses = 0;
  await choosePanel(page, 'Why and more');
  presses++;
  await tap(log);
  await expect(sheets(page).getByLabel('What was changed')).toHaveValue(/^Shock length 0\.0\smm → \d/);
  await tap(sheets(page).getByRole('button', { name: 'Better' }));
  await sheets(page).getByLabel('What was felt').fill('Better. Nervous at the exit');
  await tap(sheets(page).getByRole('button', { name: 'Worse' }));
  await expect(sheets(page).getByLabel('What was felt')).toHaveValue('Worse. Nervous at the exit');
  await tap(keep);
  expect(presses).toBeLessThanOrEqual(MOST_PRESSES);
  await expect(sheetRow(page, 'Nervous at the exit')).toBeVisible();

  // In the evening the first setup is wanted again.
  await page.reload();
  await choosePanel(page, 'Why and more');
  await openSheets(page);
  await sheetRow(page, 'Better').tap();
  const sheet = page.getByRole('article');
  await expect(sheet.getByRole('region', { name: 'Notes' })).toContainText('2.5');
  expect(await amissIn(sheets(page))).toEqual([]);
  await sheet.getByRole('button', { name: 'Set the bike like this' }).tap();
  await choosePanel(page, 'Adjusters');
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');

  // Both sessions side by side, the first of them first, and the other’s shock taken over.
  await choosePanel(page, 'Why and more');
  await sheet.getByRole('button', { name: 'All sheets' }).tap();
  await sheets(page).getByRole('button', { name: 'Compare' }).tap();
  await sheet.getByLabel('Add a setup').selectOption({ index: 1 });
  await expect(sheet.getByRole('listitem').first()).toContainText('Baseline');
  await sheet.getByRole('button', { name: 'Put C first' }).tap();
  await expect(sheet.getByRole('listitem').first()).not.toContainText('Baseline');
  await sheet.getByText('Curves over one another').tap();
  await expect(sheet.getByRole('img')).toBeVisible();
  expect(await amissIn(sheets(page))).toEqual([]);
  await sheet.getByRole('button', { name: /^Set Shock length as in C/ }).tap();
  await choosePanel(page, 'Adjusters');
  await expect(field(page, REAR_HEIGHT)).not.toHaveValue('0.0');
});
