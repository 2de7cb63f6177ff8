/** The Tape panel in a browser test: a bike from its papers, and rows added to it. */
import { expect, type Locator, type Page } from '@playwright/test';
import { expectLookedFor } from './bikes.ts';

export function tape(page: Page): Locator {
  return page.getByRole('region', { name: 'Tape, photo', exact: true });
}

export async function openTape(page: Page): Promise<void> {
  await expectLookedFor(page);
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Tape, photo', { exact: true })
    .click();
  await expect(tape(page)).toBeVisible();
}

/** Types into a field of the panel and takes it with Enter. */
export async function fillIn(page: Page, label: string, text: string): Promise<void> {
  const field = tape(page).getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press('Enter');
}

/** What the papers of some road bike say. */
export const PAPERS: readonly (readonly [label: string, text: string])[] = [
  ['Rake', '24,5'],
  ['Trail', '3 7/8 in'],
  ['Wheelbase', '1420'],
  ['Front tyre size', '120/70-17'],
  ['Rear tyre size', '180/55-17'],
  ['Teeth, front sprocket', '15'],
  ['Teeth, rear sprocket', '43'],
];

export function makeButton(page: Page): Locator {
  return tape(page).getByRole('button', { name: 'New bike from papers' });
}

export function addButton(page: Page): Locator {
  return tape(page).getByRole('button', { name: 'Add a row' });
}

/** The line of a row, by its number. */
export function rowLine(page: Page, number: number): Locator {
  return tape(page)
    .locator('li > button')
    .nth(number - 1);
}

/** Adds a row of a kind and types its figure. */
export async function addRow(page: Page, kind: string, figure: string): Promise<void> {
  await tape(page)
    .getByRole('group', { name: 'Add a row' })
    .getByRole('combobox', { name: 'What to measure' })
    .selectOption({ label: kind });
  await addButton(page).click();
  await fillIn(page, 'Figure', figure);
}
