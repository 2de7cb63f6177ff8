/** Two tabs on one bike: each hears of the other, and both versions can be opened. */
import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { askForDemo, openCard } from './support/bikes.ts';
import { expectKeptFork, kept } from './support/kept.ts';
import { field, FRONT_HEIGHT, typeInto } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

/** Two tabs that have the same stored bike open. */
async function twoTabs(context: BrowserContext): Promise<[Page, Page]> {
  const first = await context.newPage();
  await openPage(first);
  await typeInto(first, FRONT_HEIGHT, '6');
  await expectKeptFork(first, 6);
  const second = await context.newPage();
  await openPage(second);
  await expect(field(second, FRONT_HEIGHT)).toHaveValue('6.0');
  return [first, second];
}

const notice = (page: Page, text: string | RegExp) =>
  page.locator('[role="status"], [role="alert"]').filter({ hasText: text });

test('S13: two tabs: both say that the other is there, and both versions can be opened when both have changed', async ({
  context,
}) => {
  const [first, second] = await twoTabs(context);
  for (const tab of [first, second]) await expect(notice(tab, 'open in another tab')).toBeVisible();

  await typeInto(first, FRONT_HEIGHT, '11');
  await expect(notice(second, 'changed in another tab')).toBeVisible();
  await typeInto(second, FRONT_HEIGHT, '16');
  const conflict = notice(second, 'Both versions are kept');
  await expect(conflict).toBeVisible();
  expect((await kept(second)).map(({ forkTubes }) => forkTubes)).toEqual([16]);
  expect((await kept(second, 'revisions')).map(({ forkTubes }) => forkTubes)).toEqual([11]);

  await conflict.getByRole('button', { name: 'Open the other version' }).click();
  await expect(field(second, FRONT_HEIGHT)).toHaveValue('11.0');
  await expect.poll(async () => (await kept(second)).map(({ forkTubes }) => forkTubes)).toEqual([11, 16]);
  await expect(notice(second, 'Both versions are kept')).toHaveCount(0);

  // The first tab goes on from its own version; its next change keeps the second tab's beside it.
  await typeInto(first, FRONT_HEIGHT, '12');
  await expect(notice(first, 'Both versions are kept')).toBeVisible();
  await notice(first, 'Both versions are kept').getByRole('button', { name: 'Keep mine' }).click();
  await expect(notice(first, 'Both versions are kept')).toHaveCount(0);
  const card = await openCard(first, 'Road sport, as delivered');
  await expect(card.getByText('Other version, saved')).not.toHaveCount(0);
  const values = (await kept(first, 'revisions')).map(({ forkTubes }) => forkTubes);
  expect(values).toContain(16);
});

test('a tab that changed nothing shows the newer version when asked, and makes no second version', async ({
  context,
}) => {
  const [first, second] = await twoTabs(context);
  await typeInto(first, FRONT_HEIGHT, '11');
  await notice(second, 'changed in another tab')
    .getByRole('button', { name: 'Show the newer version' })
    .click();
  await expect(field(second, FRONT_HEIGHT)).toHaveValue('11.0');
  await typeInto(second, FRONT_HEIGHT, '13');
  await expectKeptFork(second, 13);
  expect(await kept(second, 'revisions')).toEqual([]);
});

test('the notice goes when the other tab turns to another bike', async ({ context }) => {
  const [first, second] = await twoTabs(context);
  await expect(notice(first, 'open in another tab')).toBeVisible();
  await askForDemo(second, 'Twin-shock roadster');
  await expect(notice(first, 'open in another tab')).toHaveCount(0);
});
