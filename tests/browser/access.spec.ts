/** What axe, which knows the web's accessibility rules, finds on the page's views. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { chainAdjuster, FRONT_HEIGHT, REAR_HEIGHT, typeInto } from './support/panels.ts';
import { openRide, cornerSlider } from './support/ride.ts';
import { chooseMode, drawn, middleOf, openPage, zoomOutAt } from './support/side-view.ts';
import { toggleShown } from './support/side-view-picture.ts';

/** `part` limits the search to what has changed since the whole was searched, a rule to what a theme can break. */
async function expectNothingSerious(page: Page, part?: string, rule?: string): Promise<void> {
  await drawn(page);
  let axe = new AxeBuilder({ page });
  if (part !== undefined) axe = axe.include(part);
  if (rule !== undefined) axe = axe.withRules(rule);
  const { violations, passes } = await axe.analyze();
  expect(passes.length).toBeGreaterThan(0);
  const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  expect(grave.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
}

test('S19: nothing serious on the opened page, nor once it is changed, a figure refused and help open', async ({
  page,
}) => {
  await openPage(page);
  await expectNothingSerious(page);
  await typeInto(page, REAR_HEIGHT, '10');
  await typeInto(page, FRONT_HEIGHT, 'abc');
  await page.getByRole('button', { name: 'Rake: what it means' }).click();
  await expectNothingSerious(page);
});

test('S19: the words have contrast in the other themes too', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '10');
  await typeInto(page, FRONT_HEIGHT, 'abc');
  for (const theme of ['garage', 'sun']) {
    await page.getByRole('combobox', { name: 'Theme' }).selectOption(theme);
    await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
    await expectNothingSerious(page, undefined, 'color-contrast');
  }
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
  await expectNothingSerious(page, '.adjusters');
  for (const theme of ['garage', 'sun']) {
    await page.getByRole('combobox', { name: 'Theme' }).selectOption(theme);
    await expectNothingSerious(page, '.adjusters', 'color-contrast');
  }
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

for (const theme of ['paper', 'garage', 'sun'] as const)
  test(`S19: nothing serious in any part of the Ride panel, nor where a state cannot be, ${theme}`, async ({
    page,
  }) => {
    await openPage(page);
    await page.getByRole('combobox', { name: 'Theme' }).selectOption(theme);
    await typeInto(page, REAR_HEIGHT, '6');
    await typeInto(page, 'Acceleration', '1.5');
    await page.getByRole('group', { name: 'Ride state' }).getByText('Accelerating', { exact: true }).click();
    // All rules once; a theme can break contrast only.
    const rule = theme === 'paper' ? undefined : 'color-contrast';
    await expectNothingSerious(page, 'section.side', rule);
    for (const part of ['States', 'Sag', 'Gas, brakes', 'Corner'] as const) {
      await openRide(page, part);
      await expectNothingSerious(page, 'section.ride', rule);
    }
    await cornerSlider(page).fill('30');
    await expectNothingSerious(page, 'section.ride', rule);
  });
