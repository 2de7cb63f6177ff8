/** The weigh-in on a phone: within the screen, for a finger, from the scales to one step that undo takes back. */
import { expect, test } from '@playwright/test';
import { savedDocument, standing } from './support/bike-document.ts';
import { expectNoUndo, undoButton } from './support/panels.ts';
import { chooseMode, openPage } from './support/stand.ts';
import { found, readingsOf, typeReadings, useButton, weighInSummary } from './support/weigh-in.ts';

/** The least height and width of what a finger presses, CSS px: WCAG 2.2, target size, level AAA. */
const LEAST_PX = 44;

test('a bike is weighed with a finger, every control large enough and nothing beside the screen', async ({
  page,
}) => {
  await openPage(page);
  const document = await savedDocument(page);
  await chooseMode(page, 'Edit');
  await page.getByRole('group', { name: 'Panel' }).getByText('Bike', { exact: true }).tap();
  await weighInSummary(page).tap();
  await page
    .getByRole('group', { name: 'Axle raised', exact: true })
    .getByText('Front', { exact: true })
    .tap();
  const raising = { first: 'wheelsLevel', raised: 'front', read: 'rear', turnDeg: 9 } as const;
  const readings = readingsOf(standing(document, 'bikeAlone'), raising);
  // Half a kilogram more in front than the bike has now.
  await typeReadings(page, { ...readings, front: readings.front + 0.5 });
  await page.getByText('Lengths and accuracy', { exact: true }).tap();
  await expect(found(page).locator('dd')).toHaveCount(6);
  const amiss = await page
    .locator('details[open]')
    .first()
    .evaluate((region, least) => {
      const wrong: string[] = [];
      for (const element of region.querySelectorAll<HTMLElement>('button, input, select, summary')) {
        const ticked = element instanceof HTMLInputElement && element.type === 'radio';
        const target = ticked ? (element.closest('label') ?? element) : element;
        const { width, height } = target.getBoundingClientRect();
        if (width < least - 0.01 || height < least - 0.01)
          wrong.push(`${target.textContent?.trim()} ${Math.round(width)} × ${Math.round(height)}`);
      }
      for (const element of region.querySelectorAll('*')) {
        if (element.closest('svg') !== null && element.tagName !== 'svg') continue;
        const { left, right, width } = element.getBoundingClientRect();
        if (width > 1 && (left < -0.5 || right > window.innerWidth + 0.5))
          wrong.push(`${element.tagName} ${Math.round(left)}…${Math.round(right)}`);
      }
      return wrong;
    }, LEAST_PX);
  expect(amiss).toEqual([]);
  await useButton(page).tap();
  await expect(found(page)).toContainText('The bike has this mass and this centre of gravity.');
  await undoButton(page).tap();
  await expectNoUndo(page);
});
