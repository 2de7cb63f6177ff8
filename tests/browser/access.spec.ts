/** What axe, which knows the web's accessibility rules, finds on the page's views. */
import { expect, test } from '@playwright/test';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { chainAdjuster, FRONT_HEIGHT, REAR_HEIGHT, typeInto } from './support/panels.ts';
import { openRide, cornerSlider } from './support/ride.ts';
import { chooseMode, middleOf, openPage, zoomOutAt } from './support/side-view.ts';
import { toggleShown } from './support/side-view-picture.ts';

test('S19: nothing serious on the opened page, nor once it is changed, a figure refused and help open, in any theme', async ({
  page,
}) => {
  await openPage(page);
  await expectNothingSerious(page);
  await typeInto(page, REAR_HEIGHT, '10');
  await typeInto(page, FRONT_HEIGHT, 'abc');
  await page.getByRole('button', { name: 'Rake: what it means' }).click();
  await inEveryTheme(page, (rule) => expectNothingSerious(page, undefined, rule));
});

test('S19: nothing serious while editing, where the page asks which point is meant, and where the bike cannot stand', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await page.getByText('Fork', { exact: true }).click();
  await expectNothingSerious(page, 'main');
  await zoomOutAt(page, 'point-pivot');
  const at = await middleOf(page, 'point-pivot');
  await page.mouse.click(at.x, at.y);
  await expect(page.getByRole('group', { name: 'Which one?' })).toBeVisible();
  await expectNothingSerious(page, 'section.side-view');
  await page.keyboard.press('Escape');
  await typeInto(page, 'Fork length', '10');
  await expect(page.locator('section.side-view').getByRole('alert')).toBeVisible();
  await expectNothingSerious(page, 'section.side-view');
});

test('S19: nothing serious among the adjusters with every group open, a chain put on and one that does not fit', async ({
  page,
}) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Open all adjusters' }).click();
  await chainAdjuster(page).getByText('By the chain').click();
  await typeInto(page, adjusterLabel('rearTeeth', 'chain'), '32');
  await expect(chainAdjuster(page).getByRole('alert')).toBeVisible();
  await inEveryTheme(page, (rule) => expectNothingSerious(page, '.adjusters', rule));
});

test('S19: nothing serious while measuring, nor with what is shown and the choice of readings open', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Measure');
  await toggleShown(page);
  await page.getByRole('button', { name: 'Choose readings' }).click();
  await expectNothingSerious(page, 'main');
});

test('S19: nothing serious in any part of the Ride panel, nor where a state cannot be, in any theme', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  await typeInto(page, 'Acceleration', '1.5');
  await page.getByRole('group', { name: 'Ride state' }).getByText('Accelerating', { exact: true }).click();
  await inEveryTheme(page, (rule) => expectNothingSerious(page, 'section.side', rule));
  for (const part of ['States', 'Sag', 'Gas, brakes', 'Corner'] as const) {
    await openRide(page, part);
    await inEveryTheme(page, (rule) => expectNothingSerious(page, 'section.ride', rule));
  }
  await cornerSlider(page).fill('30');
  await inEveryTheme(page, (rule) => expectNothingSerious(page, 'section.ride', rule));
});
