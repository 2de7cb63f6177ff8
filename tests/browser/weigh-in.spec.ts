/** The weigh-in on the page: scales to centre of gravity and back, by mouse and by keys, and figures that cannot be. */
import { expect, test, type Page } from '@playwright/test';
import { openDocument } from '../../src/document/open-document.ts';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { savedDocument, standing } from './support/bike-document.ts';
import { kept } from './support/kept.ts';
import { expectNoUndo, field, plain, startDemo, typeInto, undo, undoButton } from './support/panels.ts';
import { chooseMode, openPage } from './support/side-view.ts';
import {
  found,
  readingsOf,
  REAR_RAISED,
  typeReadings,
  useButton,
  weighInSummary,
} from './support/weigh-in.ts';

async function openWeighIn(page: Page): Promise<void> {
  await openPage(page);
  await startDemo(page, 'Twin-shock roadster');
  await chooseMode(page, 'Edit');
  await weighInSummary(page).click();
}

/** The loads of the bike alone, kg, as the program reads them. */
function loadsOf(document: Awaited<ReturnType<typeof savedDocument>>): { front: number; rear: number } {
  const on = standing(document, 'noRider');
  const front = (on.mass * on.centre.x) / on.pose.wheelbase;
  return { front, rear: on.mass - front };
}

test('scales give mass and centre back, the wheels then carry what the scales showed, undo and reload keep', async ({
  page,
}) => {
  await openWeighIn(page);
  const real = await savedDocument(page);
  const on = standing(real, 'noRider');
  const readings = readingsOf(on);
  // The owner believes something else.
  await page
    .locator('summary')
    .filter({ hasText: /^Frame$/ })
    .click();
  await typeInto(page, 'Sprung weight', '90');
  await typeInto(page, 'Sprung centre of gravity, above the pivot', '20');
  await expect(useButton(page)).toBeDisabled();
  await expect(found(page)).toContainText('Next: what the front scale shows with the bike level.');
  await typeReadings(page, readings);
  const rows = found(page).locator('dd');
  await expect(rows).toHaveCount(6);
  expect(plain(await rows.nth(0).innerText())).toMatch(
    new RegExp(`^${on.mass.toFixed(1).replace('.', '\\.')} ± \\d+\\.\\d kg$`),
  );
  expect(plain(await rows.nth(1).innerText())).toContain(`${on.centre.x.toFixed(1)} ± `);
  expect(plain(await rows.nth(2).innerText())).toContain(`${on.centre.y.toFixed(1)} ± `);
  await useButton(page).click();
  await expect(useButton(page)).toBeDisabled();
  await expect(found(page)).toContainText('The bike has this weight and this centre of gravity.');
  const weighed = await savedDocument(page);
  const { frame } = weighed.bike;
  expect(frame.sprungMass).toBeCloseTo(real.bike.frame.sprungMass, 5);
  expect(frame.sprungCentre.x).toBeCloseTo(real.bike.frame.sprungCentre.x, 5);
  expect(frame.sprungCentre.y).toBeCloseTo(real.bike.frame.sprungCentre.y, 4);
  const loads = loadsOf(weighed);
  expect(loads.front).toBeCloseTo(readings.front, 6);
  expect(loads.rear).toBeCloseTo(readings.rear, 6);

  // Nothing typed is lost by taking it back.
  await undo(page);
  await expect(useButton(page)).toBeEnabled();
  expect((await savedDocument(page)).bike.frame.sprungMass).toBe(90);
  await useButton(page).click();
  // The baseline in the same file has its own mass, so the text alone does not tell.
  await expect
    .poll(async () => {
      const opened = openDocument((await kept(page))[0]?.text ?? '');
      return opened.ok ? opened.value.document.bike.frame : null;
    })
    .toEqual(frame);
  await page.reload();
  await chooseMode(page, 'Edit');
  // The last bike comes after the first sight.
  await expect.poll(async () => (await savedDocument(page)).bike.frame).toEqual(frame);
  await expectNoUndo(page);
});

test('every figure can be reached and given by keys alone', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const readings = readingsOf(standing(await savedDocument(page), 'noRider'), {
    ...REAR_RAISED,
    raised: 'front',
    read: 'rear',
  });
  await weighInSummary(page).focus();
  await page.keyboard.press('Enter');
  const typed = async (label: string, value: number): Promise<void> => {
    for (let steps = 0; steps < 12; steps++) {
      if (await field(page, label).evaluate((element) => element === document.activeElement)) break;
      await page.keyboard.press('Tab');
    }
    await expect(field(page, label)).toBeFocused();
    await page.keyboard.type((value + 0.5).toFixed(6));
  };
  await typed('Front scale', readings.front);
  await typed('Rear scale', readings.rear);
  for (let steps = 0; steps < 2; steps++) await page.keyboard.press('Tab');
  const raised = page.getByRole('group', { name: 'Axle raised', exact: true });
  await expect(raised.getByRole('radio', { name: 'Rear' })).toBeFocused();
  await page.keyboard.press('ArrowLeft');
  await expect(raised.getByRole('radio', { name: 'Front' })).toBeChecked();
  const read = page.getByRole('group', { name: 'Scale read', exact: true });
  await expect(read.getByRole('radio', { name: 'Rear' })).toBeChecked();
  await typed('Axle raised by', readings.lift);
  await typed('Scale then', readings.raisedReading);
  for (let steps = 0; steps < 8; steps++) {
    await page.keyboard.press('Tab');
    if (await useButton(page).evaluate((element) => element === document.activeElement)) break;
  }
  await expect(useButton(page)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(undoButton(page)).toBeEnabled();
  await expect(found(page)).toContainText('The bike has this weight and this centre of gravity.');
});

test('figures that cannot be are refused with what to check, and stay to be corrected', async ({ page }) => {
  await openWeighIn(page);
  const own = readingsOf(standing(await savedDocument(page), 'noRider'));
  const readings = { ...own, front: own.front + 0.4 };
  await typeReadings(page, readings);
  await expect(useButton(page)).toBeEnabled();
  for (const { label, text, right, words } of [
    { label: 'Axle raised by', text: '1900', right: readings.lift, words: 'more than the axles allow' },
    { label: 'Scale then', text: '700', right: readings.raisedReading, words: 'more than the whole bike’s' },
    { label: 'Scale then', text: '30', right: readings.raisedReading, words: 'which scale was read' },
  ]) {
    await typeInto(page, label, text);
    await expect(found(page)).toContainText(words);
    await expect(useButton(page)).toBeDisabled();
    await expect(field(page, label)).toHaveValue(new RegExp(`^${text}`));
    await typeInto(page, label, right.toFixed(9));
    await expect(useButton(page)).toBeEnabled();
  }
  await typeInto(page, 'Fuel in the tank', '900');
  await expect(found(page)).toContainText('Check how much was in the tank.');
  await typeInto(page, 'Fuel in the tank', '2');
  // No number at all: the field says so and keeps the last one.
  await field(page, 'Front scale').fill('abc');
  await field(page, 'Front scale').press('Enter');
  await expect(page.getByRole('alert').filter({ hasText: 'Kept' })).toBeVisible();
  await expect(useButton(page)).toBeEnabled();
  await expectNoUndo(page);
});

test('a measured wheelbase that the bike does not have is named, and its own can be taken again', async ({
  page,
}) => {
  await openWeighIn(page);
  await typeReadings(page, readingsOf(standing(await savedDocument(page), 'noRider')));
  await page.getByText('Lengths and accuracy', { exact: true }).click();
  const own = await field(page, 'Wheelbase').inputValue();
  await typeInto(page, 'Wheelbase', '1300');
  await expect(found(page)).toContainText('Correct the bike first');
  const sure = await found(page).locator('dd').nth(2).innerText();
  await typeInto(page, 'Scales, ±', '3');
  await expect(found(page).locator('dd').nth(2)).not.toHaveText(sure);
  await expect(found(page)).toContainText('The height is not well known.');
  await page.getByRole('button', { name: 'Take the bike’s own lengths' }).click();
  await expect(field(page, 'Wheelbase')).toHaveValue(own);
  await expect(found(page)).not.toContainText('Correct the bike first');
});

test('another bike begins without figures, and pounds and inches are taken', async ({ page }) => {
  await openWeighIn(page);
  await page.getByRole('combobox', { name: 'Units' }).selectOption('inch');
  await typeInto(page, 'Front scale', '220');
  await typeInto(page, 'Rear scale', '242.5');
  await typeInto(page, 'Axle raised by', '10');
  await typeInto(page, 'Scale then', '108.8 kg');
  await expect(found(page).locator('dd').first()).toHaveText(/^462\.5 ± 1\.6\slb$/);
  await startDemo(page, 'Twin-shock roadster');
  await chooseMode(page, 'Edit');
  await weighInSummary(page).click();
  await expect(field(page, 'Front scale')).toHaveValue('0.0');
});

test('S19: nothing serious in the weigh-in, begun, found and refused, in any theme', async ({ page }) => {
  await openWeighIn(page);
  await page.getByText('Lengths and accuracy', { exact: true }).click();
  const look = (rule?: 'color-contrast'): Promise<void> =>
    expectNothingSerious(page, '.bike > details[open]', rule);
  await inEveryTheme(page, look);
  await typeReadings(page, readingsOf(standing(await savedDocument(page), 'noRider')));
  await typeInto(page, 'Wheelbase', '1300');
  await expect(found(page)).toContainText('Correct the bike first');
  await inEveryTheme(page, look);
  await typeInto(page, 'Scale then', '700');
  await inEveryTheme(page, look);
});
