/** The weigh-in on a phone: within the screen, for a finger, from the scales to one step that undo takes back. */
import { expect, test } from '@playwright/test';
import { savedDocument, standing } from './support/bike-document.ts';
import { expectNoUndo, undoButton } from './support/panels.ts';
import { chooseMode, openPage } from './support/side-view.ts';
import { found, readingsOf, typeReadings, useButton, weighInSummary } from './support/weigh-in.ts';
import { amissIn, choosePanel } from './support/touch.ts';

test('a bike is weighed with a finger, every control large enough and nothing beside the screen', async ({
  page,
}) => {
  await openPage(page);
  const document = await savedDocument(page);
  await chooseMode(page, 'Edit');
  await choosePanel(page, 'Bike');
  await weighInSummary(page).tap();
  await page
    .getByRole('group', { name: 'Axle raised', exact: true })
    .getByText('Front', { exact: true })
    .tap();
  const raising = { first: 'wheelsLevel', raised: 'front', read: 'rear', turnDeg: 9 } as const;
  const readings = readingsOf(standing(document, 'noRider'), raising);
  // Half a kilogram more in front than the bike has now.
  await typeReadings(page, { ...readings, front: readings.front + 0.5 });
  await page.getByText('Lengths and accuracy', { exact: true }).tap();
  await expect(found(page).locator('dd')).toHaveCount(6);
  expect(await amissIn(page.locator('details[open]').first())).toEqual([]);
  await useButton(page).tap();
  await expect(found(page)).toContainText('The bike has this weight and this centre of gravity.');
  await undoButton(page).tap();
  await expectNoUndo(page);
});
