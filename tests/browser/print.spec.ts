/** Printing: each page fits one sheet of A4 and of Letter, white in every theme, with figures, reasons and cautions. */
import { expect, test, type Page } from '@playwright/test';
import { CAUTION_CHECKS } from '../../src/ui/controls/cautions.ts';
import { doneWords } from '../../src/words/kept/paper-words.ts';
import { settingDifferences } from '../../src/words/change/setup-difference.ts';
import { METRIC, savedDocument } from './support/bike-document.ts';
import {
  adjusterGroup,
  field,
  FRONT_HEIGHT,
  plain,
  readingText,
  REAR_HEIGHT,
  startDemo,
  typeInto,
} from './support/panels.ts';
import { pdfPages } from './support/pdf-pages.ts';
import { openPage } from './support/side-view.ts';

const PAGES = ['For the customer', 'For the workshop', 'Setup sheet'] as const;

/** The browser's own print dialog would wait for a person. */
async function withoutDialog(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.print = () => {};
  });
}

async function openPrint(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await expect(page.getByRole('dialog', { name: 'Print' })).toBeVisible();
}

/** Chooses a page and hands it over. */
async function handOver(page: Page, name: string): Promise<void> {
  await page.getByRole('dialog', { name: 'Print' }).getByText(name, { exact: true }).click();
  await page.getByRole('button', { name: 'Print this page' }).click();
}

/** Points of 1/72 in. */
const SIZES = { A4: [596, 843], Letter: [612, 792] } as const;

/** Fewer headings, lines and cells has no page. */
const LEAST_WORDS = 20;

/** Words without any space: lines break elsewhere on paper. */
const close = (text: string): string => text.normalize('NFKC').replace(/\s+/gu, '');

/** What is not on the one sheet of the browser's own PDF of what was handed over. */
async function missingIn(page: Page, format: 'A4' | 'Letter'): Promise<string[]> {
  const pages = pdfPages(await page.pdf({ format }));
  const words = await page
    .locator('.print-root > .paper')
    .evaluate((paper) =>
      [...paper.querySelectorAll('h3, h4, p, li, th, td')].map((part) => part.textContent),
    );
  const [only] = pages;
  const [widthPt, heightPt] = SIZES[format];
  const fits = pages.length === 1 && only.widthPt === widthPt && only.heightPt === heightPt;
  const text = close(only.text);
  return [
    ...(words.length > LEAST_WORDS ? [] : ['almost everything']),
    ...(fits ? [] : [`${pages.length} sheets, the first ${only.widthPt} × ${only.heightPt} points`]),
    ...words.filter((word) => !text.includes(close(word))),
  ];
}

/** What of the paper is not as it should be, as the browser lays it out for print. */
async function faultsOf(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  const paper = page.locator('.print-root > .paper');
  await expect(paper).toBeVisible();
  await expect(page.locator('.page')).toBeHidden();
  const faults = await paper.evaluate((node) => {
    const { bottom, right } = node.getBoundingClientRect();
    const parts = [...node.querySelectorAll('p, li, th, td, svg')];
    const cut = parts.filter((part) => {
      const box = part.getBoundingClientRect();
      return box.bottom > bottom + 1 || box.right > right + 1;
    });
    const small = parts.filter((part) => parseFloat(getComputedStyle(part).fontSize) < 12 - 1e-6);
    const white = getComputedStyle(node).backgroundColor === 'rgb(255, 255, 255)';
    return [
      ...cut.map((part) => `cut off: ${part.textContent}`),
      ...small.map((part) => `below 9 pt: ${part.textContent}`),
      ...(white ? [] : ['not white']),
      ...(node.scrollHeight > node.clientHeight ? ['more than the page holds'] : []),
    ];
  });
  await page.emulateMedia({ media: null });
  return faults;
}

async function changeAll(page: Page): Promise<void> {
  await typeInto(page, REAR_HEIGHT, '4');
  await typeInto(page, FRONT_HEIGHT, '9');
  await adjusterGroup(page, 'Gearing').click();
  await typeInto(page, 'Rear sprocket', '46');
}

// What a theme can break shows in one unit system as in the other.
for (const [theme, systems] of [
  ['Paper', ['mm', 'inch']],
  ['Garage', ['inch']],
  ['Sun', ['mm']],
] as const)
  test(`each page takes one sheet of A4 and of Letter with every word, white, nothing cut off, ${theme}, ${systems.join(' and ')}`, async ({
    page,
  }) => {
    await withoutDialog(page);
    await openPage(page);
    await page.getByLabel('Theme', { exact: true }).selectOption({ label: theme });
    await changeAll(page);
    for (const units of systems) {
      await page.getByLabel('Units', { exact: true }).selectOption({ label: units });
      await openPrint(page);
      for (const name of PAGES) {
        await handOver(page, name);
        expect(await faultsOf(page), name).toEqual([]);
        for (const format of ['A4', 'Letter'] as const)
          expect(await missingIn(page, format), `${name}, ${format}, ${units}`).toEqual([]);
      }
      await page.keyboard.press('Escape');
      await expect(page.getByRole('dialog')).toBeHidden();
    }
  });

test('the customer’s page says what was done by how much and which way, the readings of the page, why, and every caution', async ({
  page,
}) => {
  await withoutDialog(page);
  await openPage(page);
  await changeAll(page);
  const trail = await readingText(page, 'Trail');
  const headline = plain(await page.locator('.why .headline').innerText());
  const { setup, baseline, bike } = await savedDocument(page);
  await openPrint(page);
  const paper = page.getByRole('dialog').getByRole('article', { name: 'Page to print' });
  const text = plain(await paper.innerText());
  const turned = { before: baseline.setup, after: setup };
  for (const each of settingDifferences(baseline.setup, setup, bike.drive.kind, METRIC))
    expect(text).toContain(plain(doneWords(each, turned, METRIC)));
  await expect(paper.getByRole('row', { name: /^Trail / })).toContainText(trail);
  expect(text).toContain(headline);
  for (const check of CAUTION_CHECKS) expect(text).toContain(check);
  expect(text).toContain('Invented figures');
  await expect(paper.locator('svg title')).toHaveText(bike.name);
});

test('the workshop’s page lists the work rear first and front last, and ends at the readings of the page', async ({
  page,
}) => {
  await withoutDialog(page);
  await openPage(page);
  const trailBefore = await readingText(page, 'Trail');
  await changeAll(page);
  const trail = await readingText(page, 'Trail');
  const warned = page.getByRole('complementary', { name: 'Cautions' }).first().locator('.warned');
  const warnings = await warned.count();
  await page.keyboard.press('Control+p');
  const open = page.getByRole('dialog', { name: 'Print' }).getByRole('region', { name: 'Open points' });
  await expect(open.getByRole('listitem')).toHaveCount(warnings);
  await expect(open).toContainText(warnings === 0 ? 'No warnings here.' : 'open before the bike goes out.');
  await page.getByRole('dialog', { name: 'Print' }).getByText('For the workshop', { exact: true }).click();
  const rows = page.getByRole('dialog').locator('table').first().locator('tbody tr');
  await expect(rows).toHaveCount(5);
  await expect(rows.nth(0)).toContainText('Before the work');
  await expect(rows.nth(0)).toContainText(trailBefore);
  await expect(rows.nth(1)).toContainText('Rear sprocket');
  await expect(rows.nth(2)).toContainText(REAR_HEIGHT);
  // Once nothing at the rear moves any more.
  await expect(rows.nth(3)).toContainText(/slack/i);
  await expect(rows.nth(4)).toContainText(FRONT_HEIGHT);
  await expect(rows.nth(4)).toContainText(trail);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('9.0');
});

/** Six adjusters with sentences of many causes, on the bike that has the most of them and a warning. */
const MUCH = [
  [FRONT_HEIGHT, '8'],
  ['Triple-clamp [yoke] offset', '24'],
  ['Head-angle cups', '-1'],
  ['Shock-mount shim', '3'],
  ['Shock preload', '12'],
  ['Fork preload', '7'],
] as const;

test('a bike with much to turn still fits its page, in inches too', async ({ page }) => {
  await withoutDialog(page);
  await openPage(page);
  await startDemo(page, 'Long-travel off-road');
  for (const [label, figure] of MUCH) await typeInto(page, label, figure);
  await page.getByLabel('Units', { exact: true }).selectOption({ label: 'inch' });
  await openPrint(page);
  for (const name of PAGES) {
    await handOver(page, name);
    expect(await faultsOf(page), name).toEqual([]);
    expect(await missingIn(page, 'Letter'), name).toEqual([]);
  }
});
