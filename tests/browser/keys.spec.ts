/** Keys after a figure was taken: Ctrl+Z takes it back, the focus stays where it is of use, and a message says what was done. */
import { expect, test, type Page } from '@playwright/test';
import {
  escaped,
  expectNoUndo,
  field,
  FRONT_HEIGHT,
  liveRegion,
  openAdjuster,
  REAR_HEIGHT,
  typeInto,
  undoButton,
} from './support/panels.ts';
import { chooseMode, openPage } from './support/side-view.ts';

/** What has the focus; "body" when nothing has. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.tagName.toLowerCase() ?? 'body');

test('S21: Ctrl+Z undoes right after a figure was taken by Enter or by leaving the field either way, and Ctrl+Y and Ctrl+Shift+Z redo', async ({
  page,
}) => {
  await openPage(page);
  await openAdjuster(page, FRONT_HEIGHT);
  const taken = async (key: string): Promise<void> => {
    const first = await field(page, FRONT_HEIGHT).inputValue();
    await field(page, FRONT_HEIGHT).fill('9');
    await page.keyboard.press(key);
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('9.0');
    for (const redo of ['Control+y', 'Control+Shift+z']) {
      await page.keyboard.press('Control+z');
      await expect(field(page, FRONT_HEIGHT)).toHaveValue(first);
      await page.keyboard.press(redo);
      await expect(field(page, FRONT_HEIGHT)).toHaveValue('9.0');
    }
    await page.keyboard.press('Control+z');
    await expectNoUndo(page);
  };
  for (const key of ['Enter', 'Tab', 'Shift+Tab']) await test.step(`taken by ${key}`, () => taken(key));
});

test('S21: Ctrl+Z undoes right after a blur, and in a point’s figures', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const height = field(page, 'Above the ground');
  const first = await height.inputValue();
  await height.fill('420');
  await height.blur();
  await expect(undoButton(page)).toBeEnabled();
  await page.keyboard.press('Control+z');
  await expect(height).toHaveValue(first);
  await height.fill('430');
  await height.press('Enter');
  await expect(undoButton(page)).toBeEnabled();
  await page.keyboard.press('Control+z');
  await expect(height).toHaveValue(first);
});

test('S21: while something is being typed Ctrl+Z belongs to the field', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '4');
  await openAdjuster(page, FRONT_HEIGHT);
  await field(page, FRONT_HEIGHT).focus();
  await page.keyboard.type('7');
  await page.keyboard.press('Control+z');
  await expect(field(page, REAR_HEIGHT)).toHaveValue('4.0');
  await expect(undoButton(page)).toBeEnabled();
});

test('S21: the focus stays on the page where what has it goes or can do no more', async ({ page }) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '9');
  expect(await focused(page)).toBe('input');
  // The last step back: the button can do no more.
  await undoButton(page).press('Enter');
  await expectNoUndo(page);
  await expect(undoButton(page)).toBeFocused();
  await typeInto(page, FRONT_HEIGHT, '9');
  const reset = page.getByRole('button', { name: `${FRONT_HEIGHT}: back to baseline` });
  await reset.press('Enter');
  await expect(reset).toBeDisabled();
  await expect(reset).toBeFocused();
  await typeInto(page, FRONT_HEIGHT, '8');
  await page.getByRole('button', { name: 'Set as baseline', exact: true }).press('Enter');
  await expect(page.getByRole('button', { name: 'Set as baseline', exact: true })).toBeDisabled();
  expect(await focused(page)).toBe('button');

  await page.keyboard.press('Control+s');
  const dismiss = page.getByRole('button', { name: 'Dismiss' });
  await dismiss.press('Enter');
  await expect(dismiss).toHaveCount(0);
  await expect.poll(() => focused(page)).not.toBe('body');

  const curves = page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Curves', { exact: true });
  await curves.click();
  const keep = page.getByRole('button', { name: 'Keep this curve' });
  while (await keep.isEnabled()) await keep.press('Enter');
  await expect.poll(() => focused(page)).not.toBe('body');
});

test('S21: a message names first what was done', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '10');
  await expect(liveRegion(page)).toHaveText(new RegExp(`^${escaped(REAR_HEIGHT)}: .+, `));
  await page.keyboard.press('Control+z');
  await expect(liveRegion(page)).toHaveText(new RegExp(`^Undo ${escaped(REAR_HEIGHT)}: .+, `));
  await page.keyboard.press('Control+y');
  await expect(liveRegion(page)).toHaveText(new RegExp(`^Redo ${escaped(REAR_HEIGHT)}: .+, `));
  await page.getByRole('button', { name: 'Set as baseline', exact: true }).click();
  await expect(liveRegion(page)).toHaveText(/^Set as baseline: Rake [\d.]+°, Trail [\d.]+.mm$/);
});
