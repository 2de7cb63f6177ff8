/** The tab Find a setup in a browser test. */
import { expect, type Locator, type Page } from '@playwright/test';

export function plan(page: Page): Locator {
  return page.getByRole('region', { name: 'Find a setup', exact: true });
}

export function plans(page: Page): Locator {
  return plan(page).getByRole('group', { name: 'Plans' });
}

export async function openPlan(page: Page): Promise<void> {
  const tabs = page.getByRole('group', { name: 'Below the side view' });
  await tabs.getByText('Find a setup', { exact: true }).click();
  await expect(plan(page)).toBeVisible();
}

/** Types the value of a target by its place in the list. */
export async function setTarget(page: Page, place: number, value: string): Promise<void> {
  const field = plan(page)
    .getByRole('group', { name: `Target ${place}`, exact: true })
    .getByRole('textbox', { name: 'Value' });
  await field.fill(value);
  await field.press('Enter');
}
