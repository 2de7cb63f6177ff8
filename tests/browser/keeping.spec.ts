/** Bikes and preferences are there again: after a reload, in the next tab, and after a crash. */
import { expect, test } from '@playwright/test';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { bikeRow, chooseBike, expectBike, expectLookedFor, openBikes } from './support/bikes.ts';
import { expectKeptFork, kept } from './support/kept.ts';
import { field, FRONT_HEIGHT, startDemo, typeInto, undo, undoButton } from './support/panels.ts';
import { chooseMode, openPage } from './support/side-view.ts';

test('nothing is stored until something is changed, and until then the page says where bikes stay', async ({
  page,
}) => {
  await openPage(page);
  const stay = page.getByText(
    `at the address ${new URL(page.url()).origin}. Another address is another store. A private window forgets its bikes when it is closed.`,
  );
  await expect(stay).toBeVisible();
  for (const { bike } of DEMO_BIKES) await startDemo(page, bike.name);
  expect(await kept(page)).toEqual([]);
  await typeInto(page, FRONT_HEIGHT, '9');
  await expectKeptFork(page, 9);
  expect(await kept(page)).toHaveLength(1);
  await undo(page);
  await expect(page.getByText('Nothing differs from the baseline.')).toBeVisible();
  await expect(stay).toHaveCount(0);
});

test(
  'a change is there again after a reload, and nothing of the past can be undone',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    await typeInto(page, FRONT_HEIGHT, '9');
    await expectKeptFork(page, 9);
    await page.reload();
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('9.0');
    await expect(undoButton(page)).toBeDisabled();
    await typeInto(page, FRONT_HEIGHT, '10');
    await expectKeptFork(page, 10);
    expect(await kept(page)).toMatchObject([{ revision: 2 }]);
  },
);

test('what is changed right before the tab is reloaded or closed is there again', async ({ context }) => {
  const first = await context.newPage();
  await openPage(first);
  await first.evaluate(() => {
    addEventListener('keydown', ({ key }) => key === 'Enter' && setTimeout(() => location.reload()), true);
  });
  const loaded = first.waitForEvent('load');
  await typeInto(first, FRONT_HEIGHT, '8');
  await loaded;
  await expect(field(first, FRONT_HEIGHT)).toHaveValue('8.0');
  await expectLookedFor(first);
  await typeInto(first, FRONT_HEIGHT, '9');
  await first.close({ runBeforeUnload: true });
  const second = await context.newPage();
  await openPage(second);
  await expect(field(second, FRONT_HEIGHT)).toHaveValue('9.0');
  await expectLookedFor(second);
  expect(await kept(second)).toHaveLength(1);
  expect(await kept(second, 'revisions')).toEqual([]);
});

/** What a crash may cost, ms. */
const LOST_AT_MOST_MS = 1000;

test('S14: a tab that crashes in the middle of work has lost at most the last second', async ({
  context,
}) => {
  const first = await context.newPage();
  await openPage(first);
  /** When each height, in tenths of a mm, was taken. */
  const madeAt: number[] = [];
  const began = Date.now();
  // Without a pause, so that only the longest wait makes it save.
  while (Date.now() - began < 2.5 * LOST_AT_MOST_MS) {
    await typeInto(first, FRONT_HEIGHT, (madeAt.length / 10).toFixed(1));
    madeAt.push(Date.now());
  }
  const crashed = first.waitForEvent('crash');
  const session = await context.newCDPSession(first);
  const killedAt = Date.now();
  // The page cannot answer this any more.
  void session.send('Page.crash').catch(() => null);
  await crashed;
  const second = await context.newPage();
  await openPage(second);
  const found = Math.round(10 * Number(await field(second, FRONT_HEIGHT).inputValue()));
  expect(madeAt.length).toBeGreaterThan(found);
  // The first height that was lost was made within the last second.
  expect(killedAt - (madeAt[found + 1] ?? killedAt)).toBeLessThanOrEqual(LOST_AT_MOST_MS);
});

test('units, decimal sign, theme and what is shown are kept apart from the bike', async ({ page }) => {
  await openPage(page);
  await page.getByRole('combobox', { name: 'Theme' }).selectOption('garage');
  await page.getByRole('combobox', { name: 'Units' }).selectOption('inch');
  await page.getByRole('combobox', { name: 'Decimal sign' }).selectOption(',');
  await page.getByRole('button', { name: 'What is shown' }).click();
  await page.getByRole('checkbox', { name: 'Construction lines' }).uncheck();
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'garage');
  await expect(page.getByRole('combobox', { name: 'Theme' })).toHaveValue('garage');
  await expect(page.getByRole('combobox', { name: 'Units' })).toHaveValue('inch');
  await expect(page.getByRole('combobox', { name: 'Decimal sign' })).toHaveValue(',');
  await page.getByRole('button', { name: 'What is shown' }).click();
  await expect(page.getByRole('checkbox', { name: 'Construction lines' })).not.toBeChecked();
  await expect(page.getByRole('checkbox', { name: 'Words and figures' })).toBeChecked();
  expect(await kept(page)).toEqual([]);
});

test('a bike from each demonstration, gone through one after the other, keeps what was set', async ({
  page,
}) => {
  await openPage(page);
  for (const [index, { bike }] of DEMO_BIKES.entries()) {
    await startDemo(page, bike.name);
    await typeInto(page, FRONT_HEIGHT, String(index + 1));
  }
  for (const [index, { bike }] of DEMO_BIKES.entries()) {
    await chooseBike(page, bike.name);
    await expectBike(page, bike.name);
    await expect(field(page, FRONT_HEIGHT)).toHaveValue(`${index + 1}.0`);
  }
  expect(await kept(page)).toHaveLength(DEMO_BIKES.length);
});

test('a new name stands in the list at once, and bikes of one name are told apart by their time', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const name = page.getByRole('textbox', { name: 'Name' });
  await name.fill('Weekend bike');
  await name.press('Enter');
  await expectBike(page, 'Weekend bike');
  await expect.poll(async () => (await kept(page)).map((bike) => bike.name)).toEqual(['Weekend bike']);
  const [demo] = DEMO_BIKES;
  await startDemo(page, demo.bike.name);
  await openBikes(page);
  await expect(bikeRow(page, 'Weekend bike')).toHaveCount(1);
  await page.keyboard.press('Escape');
  await typeInto(page, FRONT_HEIGHT, '9');
  await expectKeptFork(page, 9);
  await startDemo(page, demo.bike.name);
  await openBikes(page);
  await expect(bikeRow(page, demo.bike.name)).toHaveText([/On the page · Not saved yet/, /\d{4}, \d\d:\d\d/]);
});

test('a change made while a bike is being looked for is stored', async ({ page }) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '7');
  await expectKeptFork(page, 7);
  // The store answers only once it is let go.
  await page.addInitScript(() => {
    const get = IDBObjectStore.prototype.getAll;
    IDBObjectStore.prototype.getAll = function (...given) {
      const asked = get.apply(this, given);
      if (this.name !== 'index' || 'letGo' in window) return asked;
      const listen = asked.addEventListener.bind(asked);
      asked.addEventListener = (type: string, heard: EventListener) =>
        listen(type, (event) => {
          Object.assign(window, { letGo: () => heard.call(asked, event) });
        });
      return asked;
    };
  });
  await page.reload();
  await typeInto(page, FRONT_HEIGHT, '12');
  await expect.poll(() => page.evaluate(() => 'letGo' in window)).toBe(true);
  await page.evaluate(() => (window as unknown as { letGo: () => void }).letGo());
  await expectKeptFork(page, 12);
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('12.0');
  expect((await kept(page)).map(({ forkTubes }) => forkTubes)).toEqual([12, 7]);
});
