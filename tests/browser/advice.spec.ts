/** Bikes that cannot stand, and the way back through undo and redo. */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { adviceOn, savedDocument, savedText } from './support/bike-document.ts';
import {
  expectNoUndo,
  field,
  FRONT_HEIGHT,
  plain,
  readingText,
  REAR_HEIGHT,
  redoButton,
  typeInto,
  undo,
  undoButton,
  why,
} from './support/panels.ts';
import { chooseMode, handle, openPage, sideView } from './support/side-view.ts';
import { inkOf, pictureText } from './support/side-view-picture.ts';

const IMPOSSIBLE = [
  { group: 'Fork', label: 'Fork length', typed: '10' },
  { group: 'Swingarm', label: 'Swingarm length', typed: '20' },
  { group: 'Frame', label: 'Steering axis angle', typed: '-89' },
] as const;

function advice(page: Page): Locator {
  return sideView(page).getByRole('alert');
}

test('where a figure keeps the bike from standing, the side view says what to change and keeps the last bike dimmed, and undo brings all back', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  for (const { group, label, typed } of IMPOSSIBLE) {
    await page.getByText(group, { exact: true }).click();
    const first = await savedText(page);
    const rake = await readingText(page, 'Rake');
    expect(inkOf(await pictureText(page), 'bike')).toBe(1);
    await typeInto(page, label, typed);
    const said = adviceOn(await savedDocument(page));
    expect(plain(await advice(page).innerText())).toContain(said);
    await expect(why(page).getByRole('listitem')).toHaveCount(0);
    expect(inkOf(await pictureText(page), 'bike')).toBeCloseTo(0.3, 6);
    expect(await readingText(page, 'Rake')).toBe(rake);
    await expect(page.getByRole('button', { name: 'Set as baseline' })).toBeDisabled();
    await undo(page);
    await expect(advice(page)).toBeHidden();
    expect(inkOf(await pictureText(page), 'bike')).toBe(1);
    expect(await savedText(page)).toBe(first);
    await expectNoUndo(page);
  }
});

test('the advice on the side view undoes the change by itself', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await page.getByText('Fork', { exact: true }).click();
  await typeInto(page, 'Fork length', '10');
  await advice(page).getByRole('button', { name: 'Undo' }).click();
  await expect(advice(page)).toBeHidden();
  await expect(field(page, 'Fork length')).toHaveValue('690.0');
});

test('a bike that cannot stand any more takes no drag, and the same adjuster brings it back', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await page.getByText('Fork', { exact: true }).click();
  await typeInto(page, 'Fork length', '10');
  const text = await savedText(page);
  await handle(page, 'point-seat').press('ArrowUp');
  expect(await savedText(page)).toBe(text);
  await typeInto(page, 'Fork length', '690');
  await expect(advice(page)).toBeHidden();
  await handle(page, 'point-seat').press('ArrowUp');
  expect(await savedText(page)).not.toBe(text);
});

test('undo goes back step by step by key and by button, named, and redo comes forward again', async ({
  page,
}) => {
  await openPage(page);
  const texts = [await savedText(page)];
  const STEPS = 6;
  for (let step = 1; step <= STEPS; step++) {
    await typeInto(page, step % 2 === 0 ? REAR_HEIGHT : FRONT_HEIGHT, String(5 + step));
    texts.push(await savedText(page));
  }
  expect(new Set(texts).size).toBe(STEPS + 1);
  await expect(undoButton(page)).toHaveAccessibleName(`Undo: ${REAR_HEIGHT}`);
  await page.getByRole('heading', { name: 'Adjusters' }).click();
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  for (let step = STEPS - 1; step >= 0; step--) {
    if (step % 2 === 0) await undo(page);
    else await page.keyboard.press('Control+z');
    expect(await savedText(page)).toBe(texts[step]);
  }
  await expectNoUndo(page);
  await expect(redoButton(page)).toHaveAccessibleName(`Redo: ${FRONT_HEIGHT}`);
  for (let step = 1; step <= STEPS; step++) {
    if (step % 3 === 0) await redoButton(page).click();
    else await page.keyboard.press(step % 3 === 1 ? 'Control+y' : 'Control+Shift+z');
    expect(await savedText(page)).toBe(texts[step]);
  }
  await expect(redoButton(page)).toBeDisabled();
});

test('a new change after undo leaves nothing to redo', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '5');
  await undo(page);
  await expect(redoButton(page)).toBeEnabled();
  await typeInto(page, FRONT_HEIGHT, '9');
  await expect(redoButton(page)).toBeDisabled();
  await undo(page);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
});
