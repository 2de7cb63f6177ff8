/** The list of bikes in a browser test: opening it, choosing a bike, beginning a new one, and a bike's card. */
import { expect, type Locator, type Page } from '@playwright/test';

/** The button in the top bar that shows the bike's name and opens the list. */
export function bikeButton(page: Page): Locator {
  return page.getByRole('banner').getByRole('button', { name: /^Bike: / });
}

/** Waits until the bike on the page has this name. */
export async function expectBike(page: Page, name: string): Promise<void> {
  await expect(bikeButton(page)).toHaveAccessibleName(`Bike: ${name}`);
}

/** Until what was kept has been looked for, the bike on the page has no id. */
export async function expectLookedFor(page: Page): Promise<void> {
  await expect(bikeButton(page)).toHaveAttribute('data-bike', /./);
}

export function bikesDialog(page: Page): Locator {
  return page.getByRole('dialog', { name: 'Bikes' });
}

export async function openBikes(page: Page): Promise<Locator> {
  await bikeButton(page).click();
  await expect(bikesDialog(page)).toBeVisible();
  return bikesDialog(page);
}

/** The buttons of the list's bikes in sight, each with name and further words. */
export function bikeRows(page: Page): Locator {
  return bikesDialog(page).getByRole('list', { name: 'Bikes' }).locator('[data-row]');
}

/** The row of a bike with exactly this name. */
export function bikeRow(page: Page, name: string): Locator {
  return bikeRows(page).filter({ has: page.getByText(name, { exact: true }) });
}

/** Puts a stored bike on the page, by its name. */
export async function chooseBike(page: Page, name: string): Promise<void> {
  await openBikes(page);
  await bikeRow(page, name).first().click();
  await expect(bikesDialog(page)).toHaveCount(0);
}

/** Asks for a new bike from a demonstration, by its name. */
export async function askForDemo(page: Page, name: string): Promise<void> {
  const dialog = await openBikes(page);
  await dialog.getByRole('button', { name: 'New bike', exact: true }).click();
  await dialog.getByRole('button', { name, exact: true }).click();
  await expect(dialog).toHaveCount(0);
}

/** Opens the card of a bike by its name, of the first in the list where several have it. */
export async function openCard(page: Page, name: string): Promise<Locator> {
  await openBikes(page);
  await bikesDialog(page)
    .getByRole('button', { name: `Card of ${name}`, exact: true })
    .first()
    .click();
  const card = bikesDialog(page).getByRole('region', { name: `Card of ${name}` });
  await expect(card).toBeVisible();
  return card;
}
