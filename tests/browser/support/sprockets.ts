/** The Sprockets tab in a browser test: its rows, cells and filters. */
import { expect, type Locator, type Page } from '@playwright/test';
import { plain } from './panels.ts';

export function sprockets(page: Page): Locator {
  return page.getByRole('region', { name: 'Sprockets', exact: true });
}

export async function openSprockets(page: Page): Promise<void> {
  const tabs = page.getByRole('group', { name: 'Below the side view' });
  await tabs.getByText('Sprockets', { exact: true }).click();
  await expect(sprockets(page)).toBeVisible();
}

/** The row of a pair such as "14/42". */
export function pairRow(page: Page, key: string): Locator {
  return sprockets(page)
    .getByRole('row')
    .filter({ has: page.getByRole('button', { name: `${key} teeth`, exact: true }) });
}

export function pairButton(page: Page, key: string): Locator {
  return sprockets(page).getByRole('button', { name: `${key} teeth`, exact: true });
}

export function tryButton(page: Page, key: string): Locator {
  return sprockets(page).getByRole('button', { name: `Try ${key}`, exact: true });
}

/** A cell's figure and its difference, their spaces plain. */
export async function cell(
  page: Page,
  key: string,
  column: string,
): Promise<{ figure: string; change: string }> {
  const at = pairRow(page, key).locator(`[data-column="${column}"]`);
  const [figure, change] = await Promise.all([
    at.locator('.figures').innerText(),
    at.locator('.change').innerText(),
  ]);
  return { figure: plain(figure), change: plain(change) };
}

/** The pairs in the order of the table. */
export async function pairsShown(page: Page): Promise<string[]> {
  const texts = await sprockets(page).locator('tbody th button[aria-expanded]').allInnerTexts();
  return texts.map((text) => text.replace(/[^\d/]/g, ''));
}

export async function openFilters(page: Page): Promise<void> {
  await sprockets(page).getByRole('button', { name: 'Ranges and filters' }).click();
}

export function count(page: Page): Locator {
  return sprockets(page).getByRole('status');
}
