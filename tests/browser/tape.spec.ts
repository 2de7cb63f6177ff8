/** A bike that the page has never seen, measured from an empty page: papers, rows, a slip, and taking it over; by mouse and by keys. */
import { expect, test, type Page } from '@playwright/test';
import { openDocument } from '../../src/document/open-document.ts';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { expectBike } from './support/bikes.ts';
import { metricReading, savedDocument, standing } from './support/bike-document.ts';
import { kept } from './support/kept.ts';
import { plain, readingText, undo, undoButton } from './support/panels.ts';
import { openPage } from './support/side-view.ts';
import { addButton, addRow, fillIn, makeButton, openTape, PAPERS, rowLine, tape } from './support/tape.ts';

const FLOOR = 'Distance along the floor';

async function fromPapers(page: Page): Promise<void> {
  await fillIn(page, 'Name', 'Customer bike');
  for (const [label, text] of PAPERS) await fillIn(page, label, text);
  await makeButton(page).click();
  await expectBike(page, 'Customer bike');
}

test('papers make a bike with a wide ±, rows make it narrower, a slip is named and left out, and one edit takes it over', async ({
  page,
}) => {
  await openPage(page);
  await openTape(page);
  await expect(tape(page)).toContainText('Begin with a new bike from its papers');
  await expect(makeButton(page)).toBeDisabled();
  await fromPapers(page);
  const status = tape(page).locator('p.main');
  await expect
    .poll(async () => plain(await status.innerText()))
    .toBe('Rake 24.5 ± 0.5° Trail 98 ± 5 mm Wheelbase 1420 ± 5 mm');
  await expect(tape(page).getByText('Applied.', { exact: true })).toBeVisible();
  await expect(rowLine(page, 2)).toContainText('3 7/8 in');
  await expect(tape(page)).toContainText('Assumed, as on the starting bike:');
  await expect(tape(page)).toContainText('No row checks another yet');

  for (const figure of ['1416', '1417', '1415.5', '1446', '1416.5']) await addRow(page, FLOOR, figure);
  const leaveOut = tape(page).getByRole('button', { name: 'Leave out row 11' });
  await expect(leaveOut).toBeVisible();
  await expect(tape(page).getByRole('status').first()).toContainText('Rows contradict one another');
  await expect(tape(page)).toContainText('it says 1446 mm, and the other rows make it 1416.');
  await leaveOut.click();
  await expect(leaveOut).toHaveCount(0);
  await expect(rowLine(page, 11)).toContainText('Left out.');
  await expect.poll(async () => plain(await status.innerText())).toMatch(/Wheelbase 1416\.[23] ± 1\.5 mm/);

  const apply = tape(page).getByRole('button', { name: 'Apply to the bike' });
  await apply.click();
  await expect(apply).toBeDisabled();
  const on = standing(await savedDocument(page), 'noRider');
  expect(metricReading(on, 'wheelbase')).toBeCloseTo(1416.25, 0);
  await undo(page);
  await expect(apply).toBeEnabled();
  await expect(rowLine(page, 12)).toContainText('1416.5 mm');
  await apply.click();
  await expect(apply).toBeDisabled();

  // Opened again, the rows are there and take another one.
  await expect
    .poll(async () => {
      const opened = openDocument((await kept(page))[0]?.text ?? '');
      return opened.ok ? (opened.value.document.measure?.rows.length ?? 0) : 0;
    })
    .toBe(12);
  await page.reload();
  await expectBike(page, 'Customer bike');
  await openTape(page);
  await expect(rowLine(page, 9)).toContainText('1417 mm');
  await addRow(page, FLOOR, '1416');
  await expect(rowLine(page, 13)).toContainText('1416 mm');
});

test('by keys alone a row is added, typed, left out and taken back, and focus never gets lost', async ({
  page,
}) => {
  await openPage(page);
  await openTape(page);
  await addButton(page).focus();
  await page.keyboard.press('Enter');
  const figure = tape(page).getByRole('textbox', { name: 'Figure', exact: true });
  await expect(figure).toBeFocused();
  await page.keyboard.type('1 1/2"');
  await page.keyboard.press('Enter');
  await expect(figure).toHaveValue('1 1/2"');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Tab');
  await expect(tape(page).getByRole('textbox', { name: '±, row 1' })).toBeFocused();
  await page.keyboard.type('3');
  await page.keyboard.press('Enter');
  await expect(rowLine(page, 1)).toContainText('± 3 mm');
  await tape(page).getByRole('checkbox', { name: 'Count this row' }).focus();
  await page.keyboard.press('Space');
  await expect(rowLine(page, 1)).toContainText('Left out.');
  await tape(page).getByRole('button', { name: 'Remove row 1' }).focus();
  await page.keyboard.press('Enter');
  await expect(rowLine(page, 1)).toHaveCount(0);
  expect(await page.evaluate(() => document.activeElement === document.body)).toBe(false);
  await page.keyboard.press('Control+z');
  await expect(rowLine(page, 1)).toContainText('Left out.');
  // The usual rows come at once, and Enter goes from one to the next.
  await tape(page)
    .getByRole('button', { name: /^Add the usual rows/ })
    .focus();
  await page.keyboard.press('Enter');
  await expect(figure).toBeFocused();
  await expect(figure).toBeInViewport({ ratio: 0.9 });
  await expect(rowLine(page, 2)).toBeInViewport({ ratio: 0.9 });
  for (const [row, typed] of ['1416', '300', '312'].entries()) {
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
    await expect(rowLine(page, row + 2)).toContainText(typed);
    await expect(rowLine(page, row + 3)).toHaveAttribute('aria-expanded', 'true');
    await expect(figure).toBeFocused();
  }
});

test('what cannot be is refused with a reason, Escape brings the old figure back, and nothing typed is lost', async ({
  page,
}) => {
  await openPage(page);
  await openTape(page);
  await fillIn(page, 'Wheelbase', 'long');
  const wheelbase = tape(page).getByRole('textbox', { name: 'Wheelbase', exact: true });
  await expect(wheelbase).toHaveAttribute('aria-invalid', 'true');
  await expect(tape(page).getByRole('alert')).toContainText('Kept it empty.');
  await wheelbase.press('Escape');
  await expect(wheelbase).toHaveValue('');
  await fillIn(page, 'Wheelbase', '55,9 in');
  await expect(wheelbase).toHaveValue('55,9 in');
  await fillIn(page, 'Wheelbase', '7 kg');
  await expect(tape(page).getByRole('alert')).toContainText('Kept 55,9 in.');
  await wheelbase.press('Escape');
  await fillIn(page, 'Front tyre size', 'round');
  await expect(tape(page).getByRole('alert')).toContainText('cannot be read');
  await fillIn(page, 'Front tyre size', '120/70-17');
  await makeButton(page).click();
  await expectBike(page, 'Bike from its papers');
  await addRow(page, FLOOR, '1416');
  await tape(page).getByRole('combobox', { name: 'To', exact: true }).selectOption({ label: 'Rear axle' });
  await expect(rowLine(page, 3)).toContainText('Does not count.');
  await expect(rowLine(page, 3)).toContainText('Choose two different ones');
  await expect(tape(page).locator('p.main')).toContainText('Wheelbase');
});

test('figures stay as typed in the other unit system, and every ± follows it', async ({ page }) => {
  await openPage(page);
  await openTape(page);
  await fromPapers(page);
  await page.getByRole('combobox', { name: 'Units' }).selectOption('inch');
  await expect(rowLine(page, 3)).toContainText('1420 mm');
  await expect(tape(page).locator('p.main')).toContainText(/55\.9. ± 0\.20.in/);
  await addRow(page, FLOOR, '55 3/4');
  await expect(rowLine(page, 8)).toContainText('55 3/4 in');
  expect(await readingText(page, 'Wheelbase')).toContain('in');
  await expect(undoButton(page)).toBeEnabled();
});

test('the next measurement is named with what it would do, and one press opens its row', async ({ page }) => {
  await openPage(page);
  await openTape(page);
  await addRow(page, FLOOR, '1416');
  await tape(page)
    .getByRole('combobox', { name: 'Reading to know better' })
    .selectOption({ label: 'Wheelbase' });
  const next = tape(page).getByRole('group', { name: 'Next measurement' });
  await expect(next).toContainText(/wheelbase ± \d.* now ± 3.mm/);
  await next.getByRole('button', { name: 'Measure this next' }).click();
  await expect(rowLine(page, 2)).toContainText('no figure yet');
  await expect(tape(page).getByRole('img').first()).toBeVisible();
});

test('S19: nothing serious on the empty panel and with a row open, in any theme', async ({ page }) => {
  await openPage(page);
  await openTape(page);
  await expectNothingSerious(page, 'section.tape');
  for (const figure of ['1416', '1417', '1416.5', '1446', '1416.5']) await addRow(page, FLOOR, figure);
  await fillIn(page, 'Figure', 'abc');
  await inEveryTheme(page, (rule) => expectNothingSerious(page, 'section.tape', rule));
});
