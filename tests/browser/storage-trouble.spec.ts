/** The page without storage, or with a full one: it works, says so for as long as it is so, and saves to files. */
import { expect, test, type Page } from '@playwright/test';
import { askForDemo, chooseBike, expectBike } from './support/bikes.ts';
import { savedDocument } from './support/bike-document.ts';
import { expectKeptFork, kept } from './support/kept.ts';
import { field, FRONT_HEIGHT, startDemo, typeInto, undo } from './support/panels.ts';
import { beginSheet, keepSheet, openSheets, sheetRow, sheets } from './support/sheets.ts';
import { openPage } from './support/side-view.ts';

const warning = (page: Page) => page.getByRole('alert').filter({ hasText: 'save the bike to a file' });

/** Changes, undoes and saves to a file, with the warning there from beginning to end. */
async function expectToWork(page: Page, words: string): Promise<void> {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  await expect(warning(page)).toContainText(words);
  await undo(page);
  await typeInto(page, FRONT_HEIGHT, '12');
  expect((await savedDocument(page)).setup.forkTubes).toBe(12);
  await expect(warning(page)).toBeVisible();
}

const BLOCKED = {
  'is missing': {
    words: 'has no storage for pages',
    script: () => Object.defineProperty(window, 'indexedDB', { value: undefined }),
  },
  'is refused when it is used': {
    words: 'does not let this page store anything',
    script: () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('denied', 'SecurityError');
      };
    },
  },
  'is refused when it is looked at': {
    words: 'does not let this page store anything',
    script: () =>
      Object.defineProperty(window, 'indexedDB', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
  },
} as const;

for (const [name, { words, script }] of Object.entries(BLOCKED))
  test(`S14: with storage that ${name} the page works, says that nothing is kept, and saves to a file`, async ({
    page,
  }) => {
    const troubles: string[] = [];
    page.on('pageerror', (error) => troubles.push(error.message));
    await page.addInitScript(script);
    await expectToWork(page, words);
    // Bikes are kept for as long as the page lasts.
    await startDemo(page, 'Twin-shock roadster');
    await chooseBike(page, 'Road sport, as delivered');
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('12.0');
    await expect(warning(page)).toBeVisible();
    expect(troubles).toEqual([]);
  });

test('S14: forced quota: with full storage the page works, says so until a save comes through, and loses nothing unasked', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...given) {
      if (!('room' in window) && ['bikes', 'sheets'].includes(this.name))
        throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    };
  });
  await expectToWork(page, 'storage is full');

  await askForDemo(page, 'Twin-shock roadster');
  const asked = page.getByRole('alert').filter({ hasText: 'holds changes that the browser did not store' });
  await expect(asked).toBeVisible();
  await expectBike(page, 'Road sport, as delivered');
  await asked.getByRole('button', { name: 'Stay with this bike' }).click();
  await expect(asked).toHaveCount(0);
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('12.0');

  // A sheet that finds no room keeps its words in the form.
  await openSheets(page);
  await beginSheet(page);
  await sheets(page).getByLabel('What was felt').fill('calm on the brakes');
  await sheets(page).getByRole('button', { name: 'Keep this sheet' }).click();
  await expect(sheets(page).getByRole('alert')).toContainText('neither could its sheet');
  await expect(sheets(page).getByLabel('What was felt')).toHaveValue('calm on the brakes');

  await page.evaluate(() => Object.assign(window, { room: true }));
  await keepSheet(page);
  await expect(sheetRow(page, 'calm on the brakes')).toBeVisible();
  await expect(warning(page)).toHaveCount(0);
  await typeInto(page, FRONT_HEIGHT, '13');
  await expectKeptFork(page, 13);
  expect(await kept(page)).toHaveLength(1);
});

test('a bike whose changes cannot be stored may be left all the same', async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  await askForDemo(page, 'Twin-shock roadster');
  await page.getByRole('button', { name: 'Open the other bike all the same' }).click();
  await expectBike(page, 'Twin-shock roadster');
});
