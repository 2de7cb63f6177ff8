/** A shop's week with its bikes: found, opened, noted, put away, deleted and brought back, with 2,000 of them. */
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { expectNothingSerious } from './support/axe.ts';
import { bikeRow, bikeRows, bikesDialog, expectBike, openBikes, openCard } from './support/bikes.ts';
import { expectKeptFork } from './support/kept.ts';
import { field, FRONT_HEIGHT, startDemo, typeInto, undo } from './support/panels.ts';
import { beginSheet, keepSheet, openSheets, sheetRow, sheets } from './support/sheets.ts';
import { openPage } from './support/side-view.ts';

/** Copies the stored bike many times into the browser's database, with owners of their own. */
async function fillShop(page: Page, count: number): Promise<void> {
  await page.evaluate(
    (many) =>
      new Promise<void>((done, failed) => {
        const asked = indexedDB.open('sidestance');
        asked.onsuccess = () => {
          const transaction = asked.result.transaction(['bikes', 'index'], 'readwrite');
          const bikes = transaction.objectStore('bikes');
          const index = transaction.objectStore('index');
          const all = bikes.getAll();
          all.onsuccess = () => {
            for (let at = 0; at < many; at++) {
              const bike = { ...all.result[0], id: `made-${at}`, name: `Customer bike ${at}`, savedAt: at };
              bikes.put(bike);
              const { text, ...summary } = bike;
              const card = { owner: `Owner ${at}`, notes: '', tags: [], archived: false };
              index.put({ ...summary, card, sheets: 10, latestSheet: '2026-11-01', length: text.length });
            }
          };
          transaction.oncomplete = () => {
            asked.result.close();
            done();
          };
          transaction.onerror = () => failed(new Error(String(transaction.error)));
        };
      }),
    count,
  );
}

test('a bike is opened by Enter, and passing over others with the arrow keys opens none', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  await expectKeptFork(page, 9);
  await startDemo(page, 'Twin-shock roadster');
  await openBikes(page);
  await expect(page.getByRole('searchbox', { name: 'Search bikes' })).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(bikeRow(page, 'Road sport, as delivered')).toBeFocused();
  await expectBike(page, 'Twin-shock roadster');
  await page.keyboard.press('Enter');
  await expectBike(page, 'Road sport, as delivered');
  await undo(page);
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('5.0');
});

test('a shop’s week: a customer’s bike with owner, picture and sheet, put away, deleted by mistake, and found again', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  await openSheets(page);
  await beginSheet(page);
  await sheets(page).getByLabel('What was felt').fill('pushes wide at the exit');
  await keepSheet(page);
  const card = await openCard(page, 'Road sport, as delivered');
  await card.getByRole('textbox', { name: 'Owner' }).fill('Ana');
  await card.getByRole('textbox', { name: 'Owner' }).press('Enter');
  await expect(bikesDialog(page).getByText('Changed the owner')).not.toHaveCount(0);
  await card.getByRole('textbox', { name: 'Tags' }).fill('race, wet');
  await card.getByRole('textbox', { name: 'Tags' }).press('Enter');
  await expect(bikesDialog(page).getByText('Changed the tags')).not.toHaveCount(0);
  const picker = card.getByLabel('Picture file');
  await picker.setInputFiles({ name: 'photo.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('words') });
  await expect(bikesDialog(page)).toContainText(
    'photo.jpg was not kept. This browser cannot show it as a picture.',
  );
  await picker.setInputFiles(fileURLToPath(new URL('../../static/icon-192.png', import.meta.url)));
  const picture = card.getByRole('img', { name: 'Picture of Road sport, as delivered' });
  await expect(picture).toHaveJSProperty('naturalWidth', 192);
  await expectNothingSerious(page, 'dialog');
  await card.getByRole('button', { name: 'Delete' }).click();
  await bikesDialog(page).getByRole('button', { name: 'Undo', exact: true }).click();
  // Its card is open again, with the owner and the picture.
  await expect(card.getByRole('textbox', { name: 'Owner' })).toHaveValue('Ana');
  await expect(picture).toHaveJSProperty('naturalWidth', 192);
  await expectBike(page, 'Road sport, as delivered');
  await card.getByRole('button', { name: 'Archive', exact: true }).click();
  await page.keyboard.press('Escape');
  await startDemo(page, 'Twin-shock roadster');
  await typeInto(page, FRONT_HEIGHT, '7');
  await expectKeptFork(page, 7);
  // Months later the customer is back.
  await page.reload();
  const dialog = await openBikes(page);
  const inOrder = bikeRows(page).locator('.name');
  await dialog.getByRole('checkbox', { name: 'Archived too' }).check();
  await expect(inOrder).toHaveText(['Twin-shock roadster', 'Road sport, as delivered']);
  for (const order of ['Name', 'Owner', 'Latest setup sheet']) {
    await dialog.getByRole('combobox', { name: 'Order' }).selectOption(order);
    await expect(inOrder).toHaveText(['Road sport, as delivered', 'Twin-shock roadster']);
  }
  await dialog.getByRole('checkbox', { name: 'Archived too' }).uncheck();
  await dialog.getByRole('searchbox').fill('ana');
  await expect(dialog.getByText('No bike holds these words.')).toBeVisible();
  await dialog.getByRole('checkbox', { name: 'Archived too' }).check();
  await expect(bikeRow(page, 'Road sport, as delivered')).toContainText('1 setup sheet');
  await dialog.getByRole('searchbox').fill('wet');
  await expect(bikeRow(page, 'Road sport, as delivered')).toContainText('Ana · race · wet');
  await dialog.getByRole('searchbox').press('Enter');
  await expectBike(page, 'Road sport, as delivered');
  await openSheets(page);
  await expect(sheetRow(page, 'pushes wide at the exit')).toBeVisible();
});

test('2,000 bikes are on the page as a few rows, and are searched by their owner', async ({ page }) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  await expectKeptFork(page, 9);
  await fillShop(page, 2000);
  const dialog = await openBikes(page);
  await expect(dialog.getByRole('status').filter({ hasText: '2001 in all' })).toBeVisible();
  expect(await bikeRows(page).count()).toBeLessThan(40);
  await dialog.getByRole('searchbox').pressSequentially('owner 1999');
  await expect(bikeRows(page)).toHaveCount(1);
  await page.keyboard.press('Enter');
  // Its copied text still has the name of the first.
  await expect(page.locator('[data-bike]')).toHaveAttribute('data-bike', 'made-1999');
});
