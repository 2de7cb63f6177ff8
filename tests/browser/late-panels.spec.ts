/** What is fetched after the first sight: all there once the network is gone, and a word when a part could not be fetched. */
import { expect, test, type Page } from '@playwright/test';
import { expectKeptFork } from './support/kept.ts';
import { FRONT_HEIGHT, typeInto } from './support/panels.ts';
import { askForDemo, expectLookedFor } from './support/bikes.ts';
import { chooseMode, openPage } from './support/side-view.ts';

// A window without a network would stay so for the next test.
test.use({ reuseContext: false });

const TABS = [
  'Ride',
  'Springs',
  'Chain',
  'Sprockets',
  'Sheets',
  'Find a setup',
  'Curves',
  'Tape, photo',
  'Lessons',
  'Why',
] as const;

async function choose(page: Page, tab: string): Promise<void> {
  await page.getByRole('group', { name: 'Below the side view' }).getByText(tab, { exact: true }).click();
}

test('with the page once open, every panel works without a network', async ({ page, context }) => {
  // The list of bikes comes last of all.
  const last = page.waitForResponse(/bikes-dialog[^/]*\.js$/);
  await openPage(page);
  await (await last).finished();
  await context.setOffline(true);
  await askForDemo(page, 'Twin-shock roadster');
  for (const tab of TABS) {
    await choose(page, tab);
    const panel = page.getByRole('region', { name: tab, exact: true });
    await expect(panel).toBeVisible();
    if (tab !== 'Find a setup') continue;
    await panel.getByText('Rider says').click();
    await expect(panel.getByRole('combobox', { name: 'Where' })).toBeVisible();
  }
  await chooseMode(page, 'Edit');
  await expect(page.getByRole('heading', { name: 'Bike', exact: true })).toBeVisible();
});

test('a panel that cannot be fetched says so, keeps the tabs, and comes when it is asked for again', async ({
  page,
}) => {
  let asked = 0;
  await page.route(/springs-panel[^/]*\.js$/, async (route) => {
    asked++;
    await route.abort();
  });
  const last = page.waitForResponse(/curves-panel[^/]*\.js$/);
  await openPage(page);
  await (await last).finished();
  await choose(page, 'Springs');
  const notice = page.getByRole('alert').filter({ hasText: 'could not be fetched' });
  await expect(notice).toBeVisible();
  // Asked for by the page and by the tab, and then not over and over.
  const askedByNow = asked;
  expect(askedByNow).toBeGreaterThan(0);
  await choose(page, 'Ride');
  await expect(page.getByRole('region', { name: 'Ride', exact: true })).toBeVisible();
  expect(asked).toBe(askedByNow);
  await choose(page, 'Springs');
  await expect.poll(() => asked).toBeGreaterThan(askedByNow);
  await expect(notice).toBeVisible();
  await page.unroute(/springs-panel[^/]*\.js$/);
  await notice.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('region', { name: 'Springs', exact: true })).toBeVisible();
});

test('the page says when what saves could not be fetched, and what was changed meanwhile is saved once it is there', async ({
  page,
}) => {
  await page.route(/keeping[^/]*\.js$/, (route) => route.abort());
  await page.goto('/');
  const notice = page.getByRole('alert').filter({ hasText: 'Nothing is saved' });
  await expect(notice).toBeVisible();
  await typeInto(page, FRONT_HEIGHT, '9');
  await page.unroute(/keeping[^/]*\.js$/);
  await notice.getByRole('button', { name: 'Try again' }).click();
  await expect(notice).toBeHidden();
  // Looked into before the page has made it, the store would be made empty and held open.
  await expectLookedFor(page);
  await expectKeptFork(page, 9);
});
