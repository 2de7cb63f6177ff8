/** The Springs tab in a browser test: its fields, and the sags of the bike that was saved. */
import type { Locator, Page } from '@playwright/test';
import { sag } from '../../../src/core/riding/ride-changes.ts';
import { machine } from '../../../src/core/standing/machine.ts';
import { sprungMachine } from '../../../src/core/springs/sprung-machine.ts';
import { savedDocument } from './bike-document.ts';

export function springs(page: Page): Locator {
  return page.getByRole('region', { name: 'Springs', exact: true });
}

export async function openSprings(page: Page): Promise<void> {
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Springs', { exact: true })
    .click();
}

export async function wish(page: Page, label: string, mm: string): Promise<void> {
  const field = springs(page).getByRole('textbox', { name: label });
  await field.fill(mm);
  await field.press('Enter');
}

/** The sags of the saved bike, as the core has them. */
export async function sags(page: Page) {
  const { bike, setup } = await savedDocument(page);
  const made = machine(bike, setup);
  const sprung = made.ok ? sprungMachine(made) : made;
  const found = sprung.ok ? sag(sprung) : sprung;
  if (!found.ok) throw new Error(found.reason);
  return found;
}
