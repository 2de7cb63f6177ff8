/** Number fields: what may be typed, keys, the wheel, and labels that are dragged. */
import { expect, test, type Page } from '@playwright/test';
import { savedDocument, savedText } from './support/bike-document.ts';
import {
  expectNoUndo,
  field,
  FRONT_HEIGHT,
  readingText,
  REAR_HEIGHT,
  typeInto,
  undo,
  undoButton,
} from './support/panels.ts';
import { chooseMode, drawn, middleOf, openPage, pressAndMove } from './support/side-view.ts';

test('S6: keys in a text field edit neither the drawing nor the view', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const before = await savedDocument(page);
  const seat = await middleOf(page, 'point-seat');
  for (const name of ['Name', 'About', 'Above the ground']) {
    await page.getByRole('textbox', { name, exact: true }).focus();
    for (const key of [
      'f',
      '+',
      '-',
      '=',
      'z',
      'ArrowLeft',
      'ArrowRight',
      'Shift+ArrowLeft',
      'Home',
      'Delete',
    ])
      await page.keyboard.press(key);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+y');
  }
  await page.getByRole('textbox', { name: 'Above the ground', exact: true }).press('Escape');
  await drawn(page);
  expect(await middleOf(page, 'point-seat')).toEqual(seat);
  const after = await savedDocument(page);
  expect({ ...after.bike, name: '', about: '' }).toEqual({ ...before.bike, name: '', about: '' });
  expect(after.setup).toEqual(before.setup);
});

test('S6: the wheel over a field or a slider changes no number, focused or not', async ({ page }) => {
  await openPage(page);
  const text = await savedText(page);
  for (const target of [
    field(page, REAR_HEIGHT),
    page.getByRole('slider', { name: `${REAR_HEIGHT}, along its range` }),
    page.getByRole('combobox', { name: 'Theme' }),
  ]) {
    await target.focus();
    await target.hover();
    await page.mouse.wheel(0, 120);
    await page.mouse.wheel(0, -240);
  }
  await drawn(page);
  expect(await savedText(page)).toBe(text);
  await expectNoUndo(page);
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'paper');
});

const TAKEN = [
  { text: '25,4', mm: 25.4, shows: '25.4' },
  { text: '12.7 mm', mm: 12.7, shows: '12.7' },
  { text: '1 in', mm: 25.4, shows: '25.4' },
  { text: '1 1/2"', mm: 38.1, shows: '38.1' },
  { text: '−3', mm: -3, shows: '−3.0' },
  { text: '1.2 cm', mm: 12, shows: '12.0' },
] as const;

test('S7: a length is taken with comma or point, in mm, cm, inches and fractions, and an angle with its sign', async ({
  page,
}) => {
  await openPage(page);
  for (const { text, mm, shows } of TAKEN) {
    await typeInto(page, FRONT_HEIGHT, text);
    await expect(field(page, FRONT_HEIGHT)).toHaveValue(shows);
    await expect(field(page, FRONT_HEIGHT)).toHaveAttribute('aria-invalid', 'false');
    expect((await savedDocument(page)).setup.forkTubes).toBeCloseTo(mm, 9);
    await undo(page);
    await expectNoUndo(page);
  }
  await chooseMode(page, 'Edit');
  await page.getByText('Frame', { exact: true }).click();
  await typeInto(page, 'Steering axis angle', '23.7°');
  expect((await savedDocument(page)).bike.frame.axisAngleDeg).toBe(23.7);
});

test('S7: everything else is refused in sight, and the old value kept', async ({ page }) => {
  await openPage(page);
  const text = await savedText(page);
  for (const typed of [
    'abc',
    '1 kg',
    '12.7°',
    '',
    '1/0',
    '12..5',
    '99',
    '1e400',
    'Infinity',
    '0x10',
    '5 5',
  ]) {
    await typeInto(page, FRONT_HEIGHT, typed);
    await expect(field(page, FRONT_HEIGHT), typed).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('alert').filter({ hasText: 'Kept 5.0 mm.' })).toBeVisible();
    await expect(field(page, FRONT_HEIGHT)).toHaveAccessibleDescription(/Kept 5\.0\smm\./);
    await field(page, FRONT_HEIGHT).press('Escape');
    await expect(field(page, FRONT_HEIGHT)).toHaveValue('5.0');
    await expect(field(page, FRONT_HEIGHT)).toHaveAttribute('aria-invalid', 'false');
  }
  expect(await savedText(page)).toBe(text);
  await expectNoUndo(page);
});

test('S7: Enter and leaving the field commit, Escape cancels; arrow and Page keys step the number, one undo for each press', async ({
  page,
}) => {
  await openPage(page);
  await field(page, REAR_HEIGHT).fill('7');
  await field(page, REAR_HEIGHT).press('Escape');
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
  await expectNoUndo(page);
  await field(page, REAR_HEIGHT).fill('7');
  await field(page, REAR_HEIGHT).press('Enter');
  await expect(undoButton(page)).toBeEnabled();
  await field(page, REAR_HEIGHT).fill('8');
  await field(page, FRONT_HEIGHT).focus();
  await expect(field(page, REAR_HEIGHT)).toHaveValue('8.0');
  await undo(page);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('7.0');
  await undo(page);
  await expectNoUndo(page);
  const steps = [
    ['ArrowUp', '0.5'],
    ['ArrowDown', '0.0'],
    ['PageUp', '5.0'],
    ['Shift+ArrowUp', '10.0'],
    ['PageDown', '5.0'],
  ] as const;
  for (const [key, shows] of steps) {
    await field(page, REAR_HEIGHT).press(key);
    await expect(field(page, REAR_HEIGHT)).toHaveValue(shows);
  }
  for (const shows of ['10.0', '5.0', '0.0', '0.5', '0.0']) {
    await undo(page);
    await expect(field(page, REAR_HEIGHT)).toHaveValue(shows);
  }
  await expectNoUndo(page);
});

async function labelMiddle(page: Page, label: string): Promise<{ x: number; y: number }> {
  const box = await page.locator('label').getByText(label, { exact: true }).boundingBox();
  if (box === null) throw new Error(`no label ${label}`);
  return { x: box.x + box.width / 3, y: box.y + 8 };
}

test('S7: dragging the label scrubs the number past a dead zone of 3 px, as one undo, and Escape takes a scrub back without one', async ({
  page,
}) => {
  await openPage(page);
  const label = await labelMiddle(page, REAR_HEIGHT);
  await pressAndMove(page, label, { x: label.x + 3, y: label.y }, 3);
  await page.mouse.up();
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
  await expectNoUndo(page);
  await pressAndMove(page, label, { x: label.x + 43, y: label.y }, 10);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('5.0');
  expect(await readingText(page, 'Rake')).not.toBe('24.00°');
  await page.mouse.up();
  await expect(undoButton(page)).toHaveAccessibleName(`Undo: ${REAR_HEIGHT}`);
  await undo(page);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
  await expectNoUndo(page);
  await pressAndMove(page, label, { x: label.x + 43, y: label.y }, 10);
  await page.keyboard.press('Escape');
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
  await page.mouse.move(label.x + 80, label.y);
  await page.mouse.up();
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
  await expectNoUndo(page);
});

test('S7: mm to inch and back leaves the document as it was, also where fields were entered and left', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '1/3 in');
  await typeInto(page, FRONT_HEIGHT, '7.3');
  await page.getByRole('button', { name: 'Open all adjusters' }).click();
  const first = await savedText(page);
  const units = page.getByRole('combobox', { name: 'Units' });
  await units.selectOption({ label: 'inch' });
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('0.287');
  for (const input of await page.locator('.adjusters input.figures').all()) {
    await input.focus();
    await input.press('Enter');
  }
  await units.selectOption({ label: 'mm' });
  await expect(field(page, FRONT_HEIGHT)).toHaveValue('7.3');
  expect(await savedText(page)).toBe(first);
});
