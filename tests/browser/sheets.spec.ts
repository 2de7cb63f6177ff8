/** Setup sheets: a session logged, opened again after a reload, compared with, put right openly, deleted and brought back. */
import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { openBikes, openCard } from './support/bikes.ts';
import { field, FRONT_HEIGHT, REAR_HEIGHT, typeInto, undo } from './support/panels.ts';
import { openPage } from './support/side-view.ts';
import { beginSheet, keepSheet, openSheets, sheetRow, sheets } from './support/sheets.ts';

test('a session is logged with what was turned, and last season’s sheet sets the bike again', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '3');
  await openSheets(page);
  await beginSheet(page);
  await expect(sheets(page).getByLabel('What was changed')).toHaveValue(/^Shock length 0\.0\smm → 3\.0\smm$/);
  await sheets(page).getByLabel('Day').fill('2025-05-02');
  await sheets(page).getByLabel('Place').fill('Invented hill road');
  await sheets(page).getByLabel('Front pressure, cold').fill('2.3 bar');
  await keepSheet(page);
  await expect(sheetRow(page, 'Invented hill road')).toContainText('2 May 2025');
  await page.reload();
  await openSheets(page);
  await typeInto(page, REAR_HEIGHT, '-4');
  await sheetRow(page, 'Invented hill road').click();
  const sheet = page.getByRole('article', { name: /^Setup sheet Invented hill road/ });
  await expect(sheet.getByRole('region', { name: 'Adjusters' })).toContainText(/3\.0\smm → −4\.0\smm now/);
  await expect(sheet.getByRole('region', { name: 'Notes' })).toContainText('2.3 bar');
  await expect(sheet.getByRole('region', { name: 'Readings of that day' })).toContainText(
    /Trail\s*[\d.]+\smm/,
  );
  await sheet.getByRole('button', { name: 'Set the bike like this' }).click();
  await expect(field(page, REAR_HEIGHT)).toHaveValue('3.0');
  await expect(sheet.getByRole('region', { name: 'Adjusters' })).toContainText(
    'The bike is set as on this sheet.',
  );
  await undo(page);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('−4.0');
});

test('a half filled sheet is there after a reload', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '2');
  await openSheets(page);
  await beginSheet(page);
  await sheets(page).getByLabel('What was felt').fill('calm on the brakes');
  // Saved as all that is typed: by itself, and at the latest as the page is left.
  await page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const look = (): void => {
          const asked = indexedDB.open('sidestance');
          asked.onerror = () => failed(new Error(String(asked.error)));
          asked.onsuccess = () => {
            const read = asked.result
              .transaction('preferences')
              .objectStore('preferences')
              .get('preferences');
            read.onsuccess = () => {
              asked.result.close();
              if (JSON.stringify(read.result ?? null).includes('calm on the brakes')) done();
              else requestAnimationFrame(look);
            };
          };
        };
        look();
      }),
  );
  await page.reload();
  await openSheets(page);
  await expect(sheets(page).getByLabel('What was felt')).toHaveValue('calm on the brakes');
  await sheets(page).getByRole('button', { name: 'Discard' }).click();
  await expect(sheets(page).getByRole('button', { name: 'Log a session' })).toBeVisible();
});

test('a sheet gives the baseline its name, keeps both values of a correction, and comes back when deleted', async ({
  page,
}) => {
  await openPage(page);
  await openSheets(page);
  await beginSheet(page);
  await sheets(page).getByLabel('Place').fill('Invented hill road');
  await keepSheet(page);
  await sheetRow(page, 'Invented hill road').click();
  const sheet = page.getByRole('article');
  await sheet.getByRole('button', { name: 'Compare with this' }).click();
  await expect(sheets(page)).toContainText(/Baseline: Invented hill road, \d/);
  await sheet.getByRole('button', { name: 'Put a note right' }).click();
  await sheet.getByLabel('Place').fill('Invented valley road');
  await sheet.getByLabel('Weather').focus();
  const right = sheet.getByRole('region', { name: 'Put right' });
  await expect(right).toContainText('Place, “Invented hill road” → “Invented valley road”');
  await sheet.getByRole('button', { name: 'Put a note right' }).click();
  await sheet.getByRole('button', { name: 'Delete' }).click();
  await expect(sheets(page)).toContainText('Deleted Invented valley road');
  await sheets(page).getByRole('button', { name: 'Bring it back' }).click();
  await expect(sheetRow(page, 'Invented valley road')).toBeVisible();
});

test('a bike with its sheets goes to a file and comes back in another browser, beside what is there', async ({
  page,
  browser,
}) => {
  await openPage(page);
  await openSheets(page);
  await beginSheet(page);
  await sheets(page).getByLabel('Place').fill('Invented hill road');
  await keepSheet(page);
  const card = await openCard(page, 'Road sport, as delivered');
  await card.getByLabel('Picture file').setInputFiles('static/icon-192.png');
  await expect(card.getByRole('img')).toBeVisible();
  await page.keyboard.press('Escape');
  await sheets(page).getByText('Files: save sheets and bikes, bring them back').click();
  const download = page.waitForEvent('download');
  await sheets(page).getByRole('button', { name: 'Save this bike with its sheets' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('road-sport-as-delivered.sidestance-bikes.json');
  const path = await file.path();
  const table = page.waitForEvent('download');
  await sheets(page).getByRole('button', { name: 'Save the sheets as a table (CSV)' }).click();
  expect((await table).suggestedFilename()).toBe('road-sport-as-delivered-sheets.csv');
  // Bringing back what is here adds nothing.
  await sheets(page).locator('input[aria-label="Bring back from files"]').setInputFiles(path);
  await expect(page.getByRole('status').filter({ hasText: 'Everything was here already.' })).toBeVisible();

  const other = await browser.newContext();
  const fresh = await other.newPage();
  await openPage(fresh, undefined, page.url());
  await openSheets(fresh);
  await sheets(fresh).getByText('Files: save sheets and bikes, bring them back').click();
  const json = 'application/json';
  // Letters of base 64 that hold no picture.
  const damaged = (await readFile(path, 'utf8')).replace(/("data": ")[^"]*/, '$1AAAABBBB');
  await sheets(fresh)
    .locator('input[aria-label="Bring back from files"]')
    .setInputFiles([
      { name: 'whole.json', mimeType: json, buffer: await readFile(path) },
      { name: 'damaged.json', mimeType: json, buffer: Buffer.from(damaged) },
      { name: 'cut.json', mimeType: json, buffer: Buffer.from('{"format":"sidestance-bikes",') },
    ]);
  const told = fresh
    .getByRole('alert')
    .filter({ hasText: 'Brought back one bike, one sheet and one picture.' });
  await expect(told).toContainText('cut.json was not opened.');
  await expect(told).toContainText('damaged.json: Picture 1 of Road sport, as delivered was left out');
  await told.getByRole('button', { name: 'Dismiss' }).click();
  // The bike of the first visit, which is not saved, has the same name and comes first.
  const dialog = await openBikes(fresh);
  await dialog.getByRole('button', { name: 'Card of Road sport, as delivered', exact: true }).last().click();
  await expect(dialog.getByRole('region').getByRole('img')).toHaveJSProperty('naturalWidth', 192);
  await other.close();
});

test('rear, front and both pinned as variants stand beside the baseline, are set again and made a sheet', async ({
  page,
}) => {
  await openPage(page);
  await openSheets(page);
  const pin = sheets(page).getByRole('button', { name: 'Pin as variant' });
  await expect(pin).toBeEnabled();
  await typeInto(page, REAR_HEIGHT, '5');
  await pin.click();
  await typeInto(page, FRONT_HEIGHT, '10');
  await pin.click();
  await typeInto(page, REAR_HEIGHT, '0');
  await pin.click();
  const table = sheets(page).getByRole('region', { name: 'Variants' });
  const cells = table.getByRole('row').filter({ hasText: 'Trail' }).first().getByRole('cell');
  await expect(cells).toHaveCount(4);
  for (const at of [1, 2, 3]) await expect(cells.nth(at)).toContainText(/▼ −[\d.]+\smm/);
  await table.getByRole('button', { name: 'Set A' }).click();
  await expect(field(page, REAR_HEIGHT)).toHaveValue('5.0');
  await undo(page);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
  await table.getByRole('button', { name: 'Unpin A' }).click();
  await table.getByRole('button', { name: 'Sheet of B' }).click();
  await expect(sheets(page).getByLabel('What was changed')).toHaveValue(/Shock length .*Fork tubes/);
  await keepSheet(page);
  await expect(sheets(page).getByRole('listitem')).toHaveCount(1);
  await expect(table).toBeVisible();
});

test('a season is one figure over the sheets, with day, weather and words at each', async ({ page }) => {
  await openPage(page);
  await openSheets(page);
  for (const [length, day, weather] of [
    ['0', '2026-04-03', 'cold and dry'],
    ['4', '2026-05-02', 'warm'],
  ] as const) {
    await typeInto(page, REAR_HEIGHT, length);
    await beginSheet(page);
    await sheets(page).getByLabel('Day').fill(day);
    await sheets(page).getByLabel('Weather').fill(weather);
    await sheets(page).getByText('Rider’s words, tyres, clicks and lines of your own').click();
    await sheets(page).getByLabel('Turn-in').fill('slow, then quick');
    await keepSheet(page);
  }
  await sheets(page).getByText('Season: one figure over all sheets').click();
  await sheets(page).getByLabel('Figure').selectOption('Shock length');
  const picture = sheets(page).getByRole('img', { name: 'Shock length over the sheets' });
  await expect(picture).toBeVisible();
  await expect(picture.locator('desc')).toHaveText(
    /^From 0\.0\smm on the first sheet to 4\.0\smm on the latest\.$/,
  );
  await expect(sheets(page).getByRole('listitem').filter({ hasText: 'cold and dry' })).toContainText(
    /0\.0\smm, 3 Apr 2026, cold and dry: .*Turn-in: slow, then quick/,
  );
});
