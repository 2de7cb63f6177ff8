/** The panels in a browser test: readings, dials, Why, undo and the looks of the page. */
import { expect, type Locator, type Page } from '@playwright/test';
import { dialOf } from '../../../src/core/springs/dials.ts';

export function readings(page: Page): Locator {
  return page.getByRole('region', { name: 'Readings' }).first();
}

/** The line of one reading: name, number and change. */
export function readingLine(page: Page, label: string): Locator {
  return readings(page)
    .locator('li button[aria-pressed]')
    .filter({ has: page.locator('.name').getByText(label, { exact: true }) });
}

/** The number of a reading with its unit, its spaces plain. */
export async function readingText(page: Page, label: string): Promise<string> {
  return plain(await readingLine(page, label).locator('.value').innerText());
}

/** The change of a reading with arrow, sign and word. */
export async function changeText(page: Page, label: string): Promise<string> {
  return plain(await readingLine(page, label).locator('.change').innerText());
}

/** Words with every kind of space made a plain one. */
export function plain(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

/** The field of a number, by its label. */
export function field(page: Page, label: string): Locator {
  return page.getByRole('textbox', { name: label, exact: true });
}

export const REAR_HEIGHT = dialOf('shockLength').label;
export const FRONT_HEIGHT = dialOf('forkHeight').label;

/** Types a value into a field and takes it with Enter. */
export async function typeInto(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Enter');
}

export function undoButton(page: Page): Locator {
  return page.getByRole('banner').getByRole('button', { name: /^Undo/ });
}

export function redoButton(page: Page): Locator {
  return page.getByRole('banner').getByRole('button', { name: /^Redo/ });
}

export async function undo(page: Page): Promise<void> {
  await undoButton(page).click();
}

export function why(page: Page): Locator {
  return page.getByRole('region', { name: 'Why' });
}

export function liveRegion(page: Page): Locator {
  return page.locator('[data-live]');
}

/** Takes a new bike from a demonstration, by its name. */
export async function startDemo(page: Page, name: string): Promise<void> {
  const menu = page.getByRole('combobox', { name: 'Bike' });
  await menu.selectOption({ label: `New from demo: ${name}` });
  await expect(menu.locator('option:checked')).toHaveText(name);
}

/** Nothing can be undone: nothing that happened since left an entry. */
export async function expectNoUndo(page: Page): Promise<void> {
  await expect(undoButton(page)).toBeDisabled();
}

/** Words as part of a pattern, where none of their signs means anything else. */
export function escaped(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
