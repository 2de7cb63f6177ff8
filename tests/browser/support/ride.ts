/** The Ride panel in a browser test: its parts, its rows and its roll. */
import { expect, type Locator, type Page } from '@playwright/test';
import { plain } from './panels.ts';

export type RidePart = 'States' | 'Sag' | 'Gas, brakes' | 'Corner';

export function ride(page: Page): Locator {
  return page.getByRole('region', { name: 'Ride', exact: true });
}

/** Opens the Ride panel, and one part of it. On a phone the panel below the side view has to be chosen first. */
export async function openRide(page: Page, part: RidePart = 'States'): Promise<void> {
  const below = page.getByText('Why and more', { exact: true });
  if (await below.isVisible()) await below.click();
  await page.getByRole('group', { name: 'Below the side view' }).getByText('Ride', { exact: true }).click();
  await ride(page).getByText(part, { exact: true }).click();
  await expect(ride(page).getByRole('radio', { name: part, exact: true })).toBeChecked();
}

/** One row of the table of states, by its name. */
export function rideRow(page: Page, name: string): Locator {
  return ride(page)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader').getByText(name, { exact: true }) });
}

/** What stands in a cell of a row, by the words at the head of its column: figure, what is beside it, change. */
export async function rideCell(page: Page, row: string, column: string): Promise<string> {
  const heads = await ride(page).getByRole('columnheader').allInnerTexts();
  const at = heads.findIndex((head) => plain(head).startsWith(column));
  if (at < 0) throw new Error(`no column ${column}`);
  // The row's own head is the first of its cells.
  return plain(
    await rideRow(page, row)
      .getByRole('cell')
      .nth(at - 1)
      .innerText(),
  );
}

/** The choice among the ride states. */
export function rideStates(page: Page): Locator {
  return page.getByRole('group', { name: 'Ride state' });
}

export async function chooseState(page: Page, name: string): Promise<void> {
  await rideStates(page).getByText(name, { exact: true }).click();
  await expect(rideStates(page).getByRole('radio', { name })).toBeChecked();
}

export function cornerSlider(page: Page): Locator {
  return page.getByRole('slider', { name: 'From braking to exit' });
}

/** What is told of the present state. */
export async function rideSentenceOn(page: Page): Promise<string> {
  return plain(await page.locator('[data-ride-sentence]').innerText());
}
