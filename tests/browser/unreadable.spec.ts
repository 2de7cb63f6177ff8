/** Records in the browser's store that are no bikes: the page tells of them once, leaves them, and saves all else. */
import { expect, test, type Page } from '@playwright/test';
import { FORMAT, SCHEMA } from '../../src/document/document.ts';
import { field, FRONT_HEIGHT, startDemo, typeInto } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

type Shelf = 'bikes' | 'revisions' | 'preferences';

/** Puts records on a shelf of the store as they are; those of the preferences under their own key. */
async function put(page: Page, shelf: Shelf, records: readonly object[]): Promise<void> {
  await page.evaluate(
    ({ name, given }) =>
      new Promise<void>((done, failed) => {
        const asked = indexedDB.open('sidestance');
        asked.onsuccess = () => {
          const writing = asked.result.transaction(name, 'readwrite');
          for (const record of given) {
            if (name === 'preferences') writing.objectStore(name).put(record, 'preferences');
            else writing.objectStore(name).put(record);
          }
          writing.oncomplete = () => {
            asked.result.close();
            done();
          };
          writing.onabort = () => failed(new Error(String(writing.error)));
        };
      }),
    { name: shelf, given: records },
  );
}

/** Everything on a shelf as it is. */
async function all(page: Page, shelf: Shelf): Promise<readonly Record<string, unknown>[]> {
  return await page.evaluate(
    (name) =>
      new Promise<Record<string, unknown>[]>((done) => {
        const asked = indexedDB.open('sidestance');
        asked.onsuccess = () => {
          const read = asked.result.transaction(name).objectStore(name).getAll();
          read.onsuccess = () => {
            asked.result.close();
            done(read.result);
          };
        };
      }),
    shelf,
  );
}

const notice = (page: Page) => page.getByRole('alert').filter({ hasText: 'cannot be opened' });
const about = { name: 'Odd', revision: 1, writer: 'w', savedAt: 5 };
const HEAD = `"format": "${FORMAT}", "schema": ${SCHEMA}`;

/** No bikes: the store takes them, because each has a key. */
const NO_BIKES: readonly Record<string, unknown>[] = [
  { ...about, id: 'no-text' },
  { ...about, id: 'text-null', text: null },
  { ...about, id: 'text-number', text: 5 },
  { ...about, id: 'text-group', text: { bike: 5 } },
  { ...about, id: 5, text: '{}' },
  { ...about, id: ['a', 'b'], text: '{}' },
  { id: 'nothing-else' },
];

/** Records with an id and a text, of which the text is no bike or the rest is odd. */
const ODD_BIKES: readonly Record<string, unknown>[] = [
  { ...about, id: 'null', name: 'Null', text: 'null' },
  { ...about, id: 'number', name: 'Number', text: `{ ${HEAD}, "bike": 5, "setup": 5 }` },
  { ...about, id: 'cut', name: 'Cut', text: '{ "format": ' },
  { id: 'bare', text: '{}' },
  { id: 'dated', name: 5, revision: 'x', writer: {}, savedAt: 'yesterday', text: '{}' },
];

test('records that are no bikes are named once and stay, and every change is saved', async ({ page }) => {
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  await openPage(page);
  await put(page, 'bikes', [...NO_BIKES, ...ODD_BIKES]);
  await put(page, 'revisions', [{ ...about, id: 'beside', writer: 'other' }]);
  await page.reload();
  await expect(notice(page)).toContainText(`${NO_BIKES.length + 1} saved entries cannot`);
  await expect(notice(page).getByRole('listitem')).toHaveCount(NO_BIKES.length + 1);
  await typeInto(page, FRONT_HEIGHT, '9');
  const saved = () => all(page, 'bikes').then((rows) => rows.filter(({ savedAt }) => Number(savedAt) > 5));
  await expect.poll(async () => (await saved()).length).toBe(1);
  await notice(page).getByRole('button', { name: 'Dismiss' }).click();
  await expect(notice(page)).toHaveCount(0);
  await startDemo(page, 'Twin-shock roadster');
  await typeInto(page, FRONT_HEIGHT, '11');
  await expect.poll(async () => (await saved()).length).toBe(2);
  await expect(notice(page)).toHaveCount(0);
  for (const record of [...NO_BIKES, ...ODD_BIKES]) expect(await all(page, 'bikes')).toContainEqual(record);
  expect(troubles).toEqual([]);
});

for (const record of [NO_BIKES[0], ODD_BIKES[1], ODD_BIKES[4]])
  test(`a last bike stored as ${JSON.stringify(record.id)} does not stop saving`, async ({ page }) => {
    await openPage(page);
    await put(page, 'bikes', [record]);
    await put(page, 'preferences', [{ lastBike: record.id }]);
    await page.reload();
    const told = page.getByRole('alert').filter({ hasText: /cannot be opened|was not opened/ });
    await expect(told).toBeVisible();
    await typeInto(page, FRONT_HEIGHT, '9');
    await expect.poll(async () => (await all(page, 'bikes')).length).toBe(2);
    expect(await all(page, 'bikes')).toContainEqual(record);
    await page.reload();
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('9.0');
  });

test('a record that was damaged while its bike is on the page is kept beside the next save', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  await expect.poll(async () => (await all(page, 'bikes')).length).toBe(1);
  const [{ id }] = await all(page, 'bikes');
  await put(page, 'bikes', [{ ...about, id, text: 7 }]);
  await typeInto(page, FRONT_HEIGHT, '10');
  await expect.poll(async () => typeof (await all(page, 'bikes'))[0].text).toBe('string');
  expect(await all(page, 'revisions')).toMatchObject([{ id, name: 'Odd', text: 7 }]);
  await expect(notice(page)).toContainText('One saved entry');
});
