/** Compare: setups side by side in the figures of the page, one change taken over, swapped, drawn and explained. */
import { expect, test } from '@playwright/test';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import {
  changeText,
  field,
  FRONT_HEIGHT,
  plain,
  readingText,
  REAR_HEIGHT,
  typeInto,
  undo,
} from './support/panels.ts';
import { openPage } from './support/side-view.ts';
import { openSheets, sheets } from './support/sheets.ts';

test('three setups side by side read as the page does, one change is taken over and back, and the first is swapped', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '4');
  await typeInto(page, FRONT_HEIGHT, '9');
  const headline = await page.locator('.why .headline').innerText();
  await openSheets(page);
  const trail = { value: await readingText(page, 'Trail'), change: await changeText(page, 'Trail') };
  await sheets(page).getByRole('button', { name: 'Pin as variant' }).click();
  await typeInto(page, REAR_HEIGHT, '-3');
  await sheets(page).getByRole('button', { name: 'Compare' }).click();
  const compare = sheets(page).getByRole('article', { name: 'Compare' });
  await compare.getByLabel('Add a setup').selectOption({ label: 'Variant A' });
  const cells = compare.getByRole('row', { name: /^Trail/ }).getByRole('cell');
  const written = plain(await cells.nth(2).innerText());
  expect(written.replace(',', '')).toBe(`${trail.value} ${trail.change}`);
  await expect(compare).toContainText(/\d+ other adjusters are the same\./);
  await expect(compare.getByRole('region', { name: /^Why A against / })).toContainText(headline);
  await compare.getByRole('button', { name: new RegExp(`^Set ${REAR_HEIGHT} as in A: 4\\.0`) }).click();
  await expect(field(page, REAR_HEIGHT)).toHaveValue('4.0');
  await undo(page);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('−3.0');
  await compare.getByText('Curves over one another').click();
  await expect(compare.getByRole('img', { name: /against rear travel/ })).toBeVisible();
  await compare.getByRole('button', { name: 'Put A first' }).focus();
  await page.keyboard.press('Enter');
  await expect(compare.getByRole('listitem').first()).toContainText('Variant A');
  await compare
    .getByText(/^Steps from A to /)
    .first()
    .click();
  await expect(compare.getByRole('region', { name: /^Steps from A to / }).getByRole('row')).toHaveCount(3);
  await inEveryTheme(page, (rule) => expectNothingSerious(page, 'section.sheets', rule));
});
