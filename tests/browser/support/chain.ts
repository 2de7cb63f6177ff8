/** The Chain panel in a browser test. */
import { expect, type Locator, type Page } from '@playwright/test';

export function chain(page: Page): Locator {
  return page.getByRole('region', { name: 'Chain', exact: true });
}

export type ChainPart = 'Axle' | 'Slack' | 'Wear' | 'Over the pivot';

/** Brings the panel up where what lies below the side view is in sight. */
export async function openChain(page: Page, part: ChainPart): Promise<void> {
  await page.getByRole('group', { name: 'Below the side view' }).getByText('Chain', { exact: true }).click();
  await chooseChainPart(page, part);
}

export async function chooseChainPart(page: Page, part: ChainPart): Promise<void> {
  const group = chain(page).getByRole('group', { name: 'Of the chain' });
  await group.getByText(part, { exact: true }).click();
  await expect(group.getByRole('radio', { name: part })).toBeChecked();
}

/** A row of the whole chains. */
export function chainRow(page: Page, links: number): Locator {
  const count = page.getByText(`${links} links`, { exact: true });
  return chain(page).getByRole('listitem').filter({ has: count });
}
