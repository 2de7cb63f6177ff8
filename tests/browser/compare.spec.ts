/** Compare: setups side by side in the figures of the page, one change taken over, swapped, drawn and explained. */
import { readFile } from 'node:fs/promises';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { decode } from 'fast-png';
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
  await expectPicture(page, compare, 'side view');
  await compare.getByText('Curves over one another').click();
  await expect(compare.getByRole('img', { name: /against rear travel/ })).toBeVisible();
  await expectPicture(page, compare, 'curves');
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

/** The picture is lines that the browser's own reader of XML takes, and pixels that a second decoder reads alike. */
async function expectPicture(page: Page, compare: Locator, what: string): Promise<void> {
  await compare.getByLabel('Size of pictures').first().selectOption('1280');
  const saved = async (kind: string): Promise<Buffer> => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      compare.getByRole('button', { name: `Save ${what} as ${kind}` }).click(),
    ]);
    return await readFile(await file.path());
  };
  const svg = await page.evaluate(
    (text) => {
      const picture = new DOMParser().parseFromString(text, 'image/svg+xml');
      const sized = (name: string): number => Number(picture.documentElement.getAttribute(name));
      return {
        faults: picture.querySelectorAll('parsererror').length,
        size: [sized('width'), sized('height')].map(Math.floor),
        note: [...picture.querySelectorAll('.note')].map((line) => line.textContent).join(' '),
      };
    },
    (await saved('SVG')).toString('utf8'),
  );
  expect(svg.faults).toBe(0);
  expect(svg.note).toMatch(
    /^Road sport, as delivered\. .*: B Baseline, C Now and A Variant A\. .*Lengths in mm.* A model, not a test ride\./,
  );
  const { width, height, channels, data } = decode(await saved('PNG'));
  expect(width).toBe(1280);
  expect(Math.abs(height - svg.size[1])).toBeLessThanOrEqual(1);
  const inks = new Set(
    Array.from({ length: width * height }, (_, i) => data.slice(i * channels, i * channels + 3).join()),
  );
  expect(inks.size).toBeGreaterThan(50);
}
