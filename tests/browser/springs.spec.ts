/** The Springs tab: a wished sag, the spring that gives it, rates at hand, and what the bike then does. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { sag } from '../../src/core/springs/ride-changes.ts';
import { machine } from '../../src/core/springs/machine.ts';
import { sprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { savedDocument } from './support/bike-document.ts';
import { expectNoUndo, undo } from './support/panels.ts';
import { openPage } from './support/stand.ts';

function springs(page: Page): Locator {
  return page.getByRole('region', { name: 'Springs', exact: true });
}

async function openSprings(page: Page): Promise<void> {
  await page.getByRole('group', { name: 'Below the Stand' }).getByText('Springs', { exact: true }).click();
}

async function wish(page: Page, label: string, mm: string): Promise<void> {
  const field = springs(page).getByRole('textbox', { name: label });
  await field.fill(mm);
  await field.press('Enter');
}

/** The sags of the saved bike, as the core has them. */
async function sags(page: Page) {
  const { bike, setup } = await savedDocument(page);
  const made = machine(bike, setup);
  const sprung = made.ok ? sprungMachine(made) : made;
  const found = sprung.ok ? sag(sprung) : sprung;
  if (!found.ok) throw new Error(found.reason);
  return found;
}

test('the spring that is told gives just the sag that was wished, in one undo for each end', async ({
  page,
}) => {
  await openPage(page);
  await openSprings(page);
  await wish(page, 'Free sag wanted, front', '22');
  await wish(page, 'Rider sag wanted, front', '35');
  await wish(page, 'Free sag wanted, rear', '8');
  await wish(page, 'Rider sag wanted, rear', '30');
  await springs(page).getByRole('button', { name: 'Fit this at the front' }).click();
  await springs(page).getByRole('button', { name: 'Fit this at the rear' }).click();
  const { free, rider } = await sags(page);
  for (const [found, wanted] of [
    [free.front, 22],
    [rider.front, 35],
    [free.rear, 8],
    [rider.rear, 30],
  ])
    expect(found).toBeCloseTo(wanted, 2);
  await expect(springs(page)).toContainText('As it is: 8.0 mm free, 30.0 mm with the rider.');
  await undo(page);
  await undo(page);
  await expectNoUndo(page);
});

test('of the rates at hand the best is told, kept after a reload, and gives the sag it says', async ({
  page,
}) => {
  await openPage(page);
  await openSprings(page);
  await wish(page, 'Rider sag wanted, rear', '32');
  const rates = springs(page).getByRole('textbox', { name: 'Rates at hand, rear' });
  await rates.fill('110 soft');
  await rates.press('Enter');
  await expect(springs(page).getByRole('alert')).toContainText('Write rates above zero');
  await rates.fill('110 120 130 140');
  await rates.press('Enter');
  const best = springs(page).getByRole('listitem').filter({ hasText: 'the best of them' });
  await expect(best).toHaveCount(1);
  const told = /sags ([\d.]+)\s*mm free, ([\d.]+)\s*mm with the rider/.exec(
    (await best.textContent())?.replace(/\s+/g, ' ') ?? '',
  );
  await best.getByRole('button').click();
  const { rider } = await sags(page);
  expect(rider.rear.toFixed(0)).toBe(Number(told?.[2]).toFixed(0));
  await page.reload();
  await openSprings(page);
  await expect(springs(page).getByRole('textbox', { name: 'Rates at hand, rear' })).toHaveValue(
    '110  120  130  140',
  );
});

test('sags that no spring can give together are refused in words', async ({ page }) => {
  await openPage(page);
  await openSprings(page);
  await wish(page, 'Free sag wanted, rear', '40');
  await wish(page, 'Rider sag wanted, rear', '30');
  await expect(springs(page)).toContainText('No shock spring gives both sags');
});

for (const theme of ['paper', 'garage', 'sun'])
  test(`axe finds nothing on the Springs tab, in the theme ${theme}`, async ({ page }) => {
    await openPage(page);
    await page.getByRole('combobox', { name: 'Theme' }).selectOption(theme);
    await openSprings(page);
    const { violations } = await new AxeBuilder({ page }).analyze();
    const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(serious.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });
