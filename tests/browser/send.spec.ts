/** A bike sent in a link: made on one machine, opened on another beside that one's own bike, kept there, or left again. */
import { readFile } from 'node:fs/promises';
import { expect, test, type Locator, type Page } from '@playwright/test';
import jsQR from 'jsqr';
import { largeBike } from '../support/large-bike.ts';
import { savedText } from './support/bike-document.ts';
import { FIRST_DEMO } from '../../src/document/demos/first-demo.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { makeLink } from '../../src/storage/link/bike-link.ts';
import { expectNothingSerious } from './support/axe.ts';
import { bikeRows, bikesDialog, expectBike, openBikes } from './support/bikes.ts';
import { expectKeptFork } from './support/kept.ts';
import { field, FRONT_HEIGHT, readings, REAR_HEIGHT, startDemo, typeInto } from './support/panels.ts';
import { pictureText } from './support/side-view-picture.ts';
import { openPage } from './support/side-view.ts';

test('a link opens the same bike to the last digit on another machine, whose own bike stays as it is', async ({
  page,
  browser,
}) => {
  await openPage(page);
  await startDemo(page, 'Twin-shock roadster');
  await typeInto(page, REAR_HEIGHT, '3.75');
  await typeInto(page, FRONT_HEIGHT, '8');
  const sent = { file: await savedText(page), readings: await readings(page).innerText() };

  await page.getByRole('banner').getByRole('button', { name: 'Send' }).click();
  const dialog = page.getByRole('dialog', { name: 'Send' });
  // The test's own server is on this machine, and so is the link until a public address is typed.
  await expect(dialog.getByRole('alert')).toContainText('opens only on this machine');
  const address = dialog.getByLabel('The shop’s public address');
  await address.fill('javascript:alert(1)');
  await address.press('Tab');
  await expect(dialog.getByText('That is no address of a web page.')).toBeVisible();
  // With both notices on it.
  await expectDialogReads(page);
  await address.fill('bikes.example.com/shop/?x=1#y');
  await address.press('Tab');
  await expect(address).toHaveValue('https://bikes.example.com/shop/');
  await expect(dialog.getByRole('alert')).toBeHidden();
  const link = dialog.getByLabel(/^Link, \d+ characters$/);
  await expect(link).toHaveValue(/^https:\/\/bikes\.example\.com\/shop\/#bike=/);
  expect((await link.inputValue()).length).toBeLessThanOrEqual(2000);
  const fragment = (await link.inputValue()).replace(/^[^#]+/, '');
  const whole = await link.inputValue();

  await dialog.getByRole('button', { name: 'Close' }).last().click();
  await expectCodeOnPaper(page, whole);

  const other = await browser.newContext();
  const there = await other.newPage();
  await openPage(there);
  await typeInto(there, FRONT_HEIGHT, '9');
  await expectKeptFork(there, 9);
  // Pasted behind the address of a page that is open already.
  await there.evaluate((bike) => (location.hash = bike), fragment.slice(0, -30));
  const damaged = there.getByRole('alert').filter({ hasText: 'The link is cut off or damaged' });
  await expect(damaged).toBeVisible();
  await expectBike(there, 'Road sport, as delivered');
  await damaged.getByRole('button', { name: 'Dismiss' }).click();
  expect(new URL(there.url()).hash).toBe('');
  await there.evaluate((length) => (location.hash = `bike=1.${'a'.repeat(length)}`), 1_000_000);
  await expect(there.getByRole('alert').filter({ hasText: '1000008 characters' })).toBeVisible();

  await there.goto(`/${fragment}`);
  await there.reload();
  await expectBike(there, 'Twin-shock roadster');
  const notice = there.getByRole('status').filter({ hasText: 'came in a link' });
  await expect(notice).toContainText('Your own bike “Road sport, as delivered” is as you left it.');
  expect(await savedText(there)).toBe(sent.file);
  expect(await readings(there).innerText()).toBe(sent.readings);
  await typeInto(there, FRONT_HEIGHT, '2');
  await expect(there.getByRole('alert').filter({ hasText: 'Keep a copy to change it' })).toBeVisible();
  await expect(field(there, FRONT_HEIGHT)).toHaveValue(/^8/);
  await expectKeptFork(there, 9);

  await notice.getByRole('button', { name: 'Back to my bike' }).click();
  await expectBike(there, 'Road sport, as delivered');
  await expect(field(there, FRONT_HEIGHT)).toHaveValue(/^9/);
  await expect.poll(() => new URL(there.url()).hash).toBe('');

  await there.evaluate((bike) => (location.hash = bike), fragment);
  await notice.getByRole('button', { name: 'Keep a copy' }).click();
  await expect(there.getByRole('status').filter({ hasText: 'is among your bikes now' })).toBeVisible();
  await typeInto(there, FRONT_HEIGHT, '2');
  await expectKeptFork(there, 2);
  await openBikes(there);
  await expect(bikeRows(there)).toHaveText([/Twin-shock roadster/, /Road sport, as delivered/]);
  await bikesDialog(there).getByRole('button', { name: 'Close' }).click();
  await expectFileInstead(there);
  await expectHostileNameIsText(there);
  await other.close();
});

/** A bike with too much on it for a link is sent as a file, and the page says so. */
async function expectFileInstead(page: Page): Promise<void> {
  const large = largeBike();
  const file = { name: 'large.json', mimeType: 'application/json', buffer: Buffer.from(saveDocument(large)) };
  await page.locator('input[data-bike-file]').setInputFiles(file);
  await expectBike(page, large.bike.name);
  await page.getByRole('banner').getByRole('button', { name: 'Send' }).click();
  const dialog = page.getByRole('dialog', { name: 'Send' });
  await expect(dialog.getByRole('alert')).toContainText(
    /The link of this bike would have \d{4,} characters, .* Send a file instead\./,
  );
  await expect(dialog.getByRole('button', { name: 'Copy the link' })).toHaveCount(0);
  const saved = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Save to a file' }).click();
  expect(await readFile(await (await saved).path(), 'utf8')).toBe(saveDocument(large));
  await dialog.getByRole('button', { name: 'Close' }).last().click();
}

/** Nothing serious on the dialog for those who hear it or see little, in any theme. The menu of themes lies behind it. */
async function expectDialogReads(page: Page): Promise<void> {
  const wear = (theme: string) =>
    page.evaluate((name) => (document.documentElement.dataset.theme = name), theme);
  await expectNothingSerious(page, 'dialog[open]');
  for (const theme of ['garage', 'sun', 'paper']) {
    await wear(theme);
    await expectNothingSerious(page, 'dialog[open]', 'color-contrast');
  }
}

const HOSTILE = '"><img src=x onerror="window.taken=1"><script>window.taken=1</script>&amp;\u202e=1+1';

/** A name from a link that a page, a picture or a sheet of paper could take for more than letters. */
async function expectHostileNameIsText(page: Page): Promise<void> {
  const made = await makeLink({ ...FIRST_DEMO, bike: { ...FIRST_DEMO.bike, name: HOSTILE } }, '');
  if (!made.ok) throw new Error(made.reason.kind);
  await page.evaluate((bike) => (location.hash = bike), made.value);
  await expectBike(page, HOSTILE);
  const svg = await pictureText(page);
  const read = await page.evaluate((text) => {
    const picture = new DOMParser().parseFromString(text, 'image/svg+xml');
    const foreign = picture.querySelectorAll('parsererror, script, img, foreignObject').length;
    return { foreign, title: picture.querySelector('title')?.textContent };
  }, svg);
  expect(read).toEqual({ foreign: 0, title: HOSTILE });
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  const paper = page.getByRole('dialog', { name: 'Print' }).getByRole('article', { name: 'Page to print' });
  await expect(paper.getByRole('heading', { level: 3 })).toHaveText(HOSTILE);
  await expect(paper.locator('img, script')).toHaveCount(0);
  expect(await page.evaluate(() => 'taken' in window)).toBe(false);
}

/** Every page carries the code of the link and still takes one sheet; the customer's one of either size. */
async function expectCodeOnPaper(page: Page, link: string): Promise<void> {
  await page.evaluate(() => (window.print = () => {}));
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Print' });
  const code = dialog.locator('figure[data-link]');
  for (const name of ['For the workshop', 'Setup sheet', 'For the customer']) {
    await dialog.getByText(name, { exact: true }).click();
    await expect(code).toHaveAttribute('data-link', link);
    await dialog.getByRole('button', { name: 'Print this page' }).click();
    expect(await sheetsOf(page, 'Letter'), name).toBe(1);
  }
  expect(await sheetsOf(page, 'A4')).toBe(1);
  expect(await readCode(code.locator('svg'))).toBe(link);
  await dialog.getByRole('button', { name: 'Close' }).last().click();
}

async function sheetsOf(page: Page, format: 'A4' | 'Letter'): Promise<number> {
  const pdf = (await page.pdf({ format })).toString('latin1');
  return [...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
}

/** What a decoder that shares nothing with the page reads in the browser's own painting of the code. */
async function readCode(svg: Locator): Promise<string | undefined> {
  const { dark, sidePx } = await svg.evaluate(async (node: SVGSVGElement) => {
    const side = 3 * node.viewBox.baseVal.width;
    const image = new Image(side, side);
    image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(node))}`;
    await image.decode();
    const canvas = new OffscreenCanvas(side, side);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    context.drawImage(image, 0, 0, side, side);
    const { data } = context.getImageData(0, 0, side, side);
    const isDark = Array.from({ length: side * side }, (_, i) => (data[4 * i] < 128 ? '1' : '0'));
    return { dark: isDark.join(''), sidePx: side };
  });
  const light = Uint8ClampedArray.from({ length: 4 * dark.length }, (_, i) =>
    i % 4 < 3 && dark[i >> 2] === '1' ? 0 : 255,
  );
  return jsQR(light, sidePx, sidePx)?.data;
}
