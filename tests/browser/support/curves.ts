/** The Curves panel in a browser test. */
import { expect, type Locator, type Page } from '@playwright/test';

export function curves(page: Page): Locator {
  return page.getByRole('region', { name: 'Curves', exact: true });
}

/** Brings the panel up where what lies below the side view is in sight. */
export async function openCurves(page: Page, reading: string, axis: string): Promise<void> {
  await page.getByRole('group', { name: 'Below the side view' }).getByText('Curves', { exact: true }).click();
  await curves(page).getByRole('combobox', { name: 'Reading' }).selectOption({ label: reading });
  await curves(page).getByRole('combobox', { name: 'Against' }).selectOption({ label: axis });
  await expect(curves(page).locator('svg[role="img"]')).toBeVisible();
}

export function cursor(page: Page): Locator {
  return curves(page).getByRole('slider', { name: /^Along the curve/ });
}

/** Opens the boxes of the ride states, from the head of the panel. */
export async function openStates(page: Page): Promise<void> {
  const opener = curves(page).getByRole('button', { name: 'Ride states' });
  if ((await opener.getAttribute('aria-expanded')) === 'false') await opener.click();
}

/** The box that draws a ride state beside the present one. */
export function stateBox(page: Page, state: string): Locator {
  return curves(page)
    .getByRole('group', { name: 'Also in these ride states' })
    .getByRole('checkbox', { name: state });
}
