/** What holds an end, entered on a phone: each kind is chosen and typed with a finger. */
import { expect, test } from '@playwright/test';
import { savedDocument } from './support/bike-document.ts';
import { openSprings, springs, wish } from './support/springs.ts';
import { openPage } from './support/side-view.ts';
import { choosePanel } from './support/touch.ts';

test('a finger enters each kind of spring and the air, and nothing runs out of the page', async ({
  page,
}) => {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openSprings(page);
  const choice = springs(page).getByRole('combobox', { name: 'What holds the front' });
  await choice.selectOption({ label: 'Two springs in series' });
  await wish(page, 'Rate of the second spring, front', '45');
  await choice.selectOption({ label: 'A spring wound with two rates' });
  await wish(page, 'Second rate, front', '13');
  expect((await savedDocument(page)).bike.fork.support?.spring).toMatchObject({
    kind: 'twoRates',
    secondRate: 13,
  });
  await choice.selectOption({ label: 'A force table' });
  const table = springs(page).getByRole('group', { name: 'Force table, front' });
  await table.getByRole('button', { name: 'Add a row, front' }).tap();
  await expect(table.getByRole('listitem')).toHaveCount(4);
  await springs(page).getByRole('checkbox', { name: 'Count the air, front' }).tap();
  await wish(page, 'Air gap, front', '110');
  await springs(page).getByRole('checkbox', { name: 'The other fork leg is different' }).tap();
  await wish(page, 'Preload, other leg', '9');
  const { bike, setup } = await savedDocument(page);
  expect([setup.forkAirGap, bike.fork.otherLeg?.preload]).toEqual([110, 9]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  for (const button of await springs(page).getByRole('button').all())
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(43.99);
});
