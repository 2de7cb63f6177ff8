/** The Springs tab: a wished sag, the spring that gives it, rates at hand, and what the bike then does. */
import { expect, test } from '@playwright/test';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { savedDocument } from './support/bike-document.ts';
import { expectNoUndo, typeInto, undo } from './support/panels.ts';
import { openSprings, sags, springs, wish } from './support/springs.ts';
import { chooseMode, openPage } from './support/side-view.ts';

test('the spring that is named gives just the sag that was wished, in one undo for each end', async ({
  page,
}) => {
  await openPage(page);
  await openSprings(page);
  await wish(page, 'Free sag wanted, front', '22');
  await wish(page, 'Rider sag wanted, front', '33');
  await wish(page, 'Free sag wanted, rear', '8');
  await wish(page, 'Rider sag wanted, rear', '30');
  await springs(page).getByRole('button', { name: 'Fit this at the front' }).click();
  await springs(page).getByRole('button', { name: 'Fit this at the rear' }).click();
  const { free, rider } = await sags(page);
  for (const [found, wanted] of [
    [free.front, 22],
    [rider.front, 33],
    [free.rear, 8],
    [rider.rear, 30],
  ])
    expect(found).toBeCloseTo(wanted, 2);
  await expect(springs(page)).toContainText('It sags 8.0 mm free, 30.0 mm with the rider.');
  await undo(page);
  await undo(page);
  await expectNoUndo(page);
});

test('of the rates at hand the best is named, kept after a reload, and gives the sag it says', async ({
  page,
}) => {
  await openPage(page);
  await openSprings(page);
  await wish(page, 'Rider sag wanted, rear', '32');
  const rates = springs(page).getByRole('textbox', { name: 'Rates in stock, rear' });
  for (const wrong of ['110 soft', '0x10']) {
    await rates.fill(wrong);
    await rates.press('Enter');
    await expect(springs(page).getByRole('alert')).toContainText(/is not a number\. Kept it empty\./);
    await rates.press('Escape');
    await expect(rates).toHaveValue('');
  }
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
  await expect(springs(page).getByRole('textbox', { name: 'Rates in stock, rear' })).toHaveValue(
    '110, 120, 130, 140',
  );
});

test('what the adjuster gives is entered with the fork, and rates that need more say so', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await page.getByText('Shock', { exact: true }).click();
  await typeInto(page, 'Most preload of the shock adjuster', '14');
  expect((await savedDocument(page)).bike.shock.ends.mostPreload).toBe(14);
  await openSprings(page);
  const rates = springs(page).getByRole('textbox', { name: 'Rates in stock, rear' });
  await rates.fill('90 110 120 130 140 400');
  await rates.press('Enter');
  const lines = springs(page).getByRole('listitem');
  await expect(lines).toHaveCount(6);
  const preloads = await lines.evaluateAll((items) =>
    items.map(({ textContent }) => {
      const words = (textContent ?? '').replace(/\s+/g, ' ').replace('\u2212', '-');
      return { mm: Number(/preload (-?[\d.]+) mm/.exec(words)?.[1]), words };
    }),
  );
  expect(preloads).toHaveLength(6);
  for (const { mm, words } of preloads) {
    if (mm < 0) expect(words).toContain('the spring stands loose while the wheel hangs');
    else if (mm > 14) expect(words).toContain('the adjuster gives 14.0 mm at most');
    else expect(words).not.toMatch(/loose|at most/);
  }
  expect(preloads.some(({ mm }) => mm > 14) && preloads.some(({ mm }) => mm < 0)).toBe(true);
});

test('sags that no spring can give together are refused in words', async ({ page }) => {
  await openPage(page);
  await openSprings(page);
  await wish(page, 'Free sag wanted, rear', '40');
  await wish(page, 'Rider sag wanted, rear', '30');
  await expect(springs(page)).toContainText('No shock spring gives both sags');
});

test('S19: nothing serious on the Springs tab, in any theme', async ({ page }) => {
  await openPage(page);
  await openSprings(page);
  await inEveryTheme(page, (rule) => expectNothingSerious(page, undefined, rule));
});
