/** The Sheets panel in a browser test. */
import { expect, type Locator, type Page } from '@playwright/test';

export function sheets(page: Page): Locator {
  return page.getByRole('region', { name: 'Sheets', exact: true });
}

export async function openSheets(page: Page): Promise<void> {
  await page.getByRole('group', { name: 'Below the side view' }).getByText('Sheets', { exact: true }).click();
  await expect(sheets(page)).toBeVisible();
}

/** Begins a sheet once the bike has its place in the store. */
export async function beginSheet(page: Page): Promise<void> {
  const log = sheets(page).getByRole('button', { name: 'Log a session' });
  await expect(log).toBeEnabled();
  await log.click();
  await expect(sheets(page).getByRole('form', { name: 'New setup sheet' })).toBeVisible();
}

export async function keepSheet(page: Page): Promise<void> {
  await sheets(page).getByRole('button', { name: 'Keep this sheet' }).click();
  await expect(sheets(page).getByRole('button', { name: 'Log a session' })).toBeVisible();
}

/** The entry of a sheet in the list. */
export function sheetRow(page: Page, name: string): Locator {
  return sheets(page).getByRole('listitem').filter({ hasText: name }).getByRole('button');
}
