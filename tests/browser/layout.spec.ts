/** How the page shares its room: the line between drawing and panels, columns that fold, tabs that stay. */
import { expect, test } from '@playwright/test';
import { field, REAR_HEIGHT } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

test('the first adjuster is at most eight presses from the start, past the bar along the top', async ({
  page,
}) => {
  await openPage(page);
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Go to the adjusters' })).toBeFocused();
  await page.keyboard.press('Enter');
  const first = field(page, REAR_HEIGHT);
  for (let presses = 2; !(await first.evaluate((one) => one === document.activeElement)); presses++) {
    expect(presses).toBeLessThan(8);
    await page.keyboard.press('Tab');
  }
  const names = await page
    .getByRole('region')
    .evaluateAll((all) =>
      all.map(
        (one) =>
          one.getAttribute('aria-label') ??
          document.getElementById(one.getAttribute('aria-labelledby') ?? '')?.textContent ??
          '',
      ),
    );
  expect(new Set(names).size).toBe(names.length);
  await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
});

test('dark and contrast preferences choose a theme until one is chosen', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openPage(page);
  const html = page.locator('html');
  await expect(html).toHaveAttribute('data-theme', 'garage');
  await page.emulateMedia({ colorScheme: 'dark', contrast: 'more' });
  await expect(html).toHaveAttribute('data-theme', 'sun');
  await page.getByRole('combobox', { name: 'Theme' }).selectOption('paper');
  await expect(html).toHaveAttribute('data-theme', 'paper');
  await page.reload();
  await expect(html).toHaveAttribute('data-theme', 'paper');
});

test('the line between drawing and panels moves by hand and by keys, columns fold, a reload keeps both, and tabs stay', async ({
  page,
}) => {
  await openPage(page);
  const drawing = page.getByRole('application', { name: 'Side view of the bike' });
  const sizeOf = async () => {
    const box = await drawing.boundingBox();
    return [Math.round(box?.width ?? 0), Math.round(box?.height ?? 0)] as const;
  };
  const [, high] = await sizeOf();

  const line = page.getByRole('separator', { name: 'Size of the drawing' });
  await line.focus();
  await page.keyboard.press('ArrowDown');
  await expect.poll(async () => (await sizeOf())[1]).toBeGreaterThan(high);
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await sizeOf())[1]).toBe(high);

  const at = await line.boundingBox();
  await page.mouse.move((at?.x ?? 0) + 100, (at?.y ?? 0) + 4);
  await page.mouse.down();
  await page.mouse.move((at?.x ?? 0) + 100, (at?.y ?? 0) - 76, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => Math.abs((await sizeOf())[1] - (high - 80))).toBeLessThanOrEqual(6);
  await page.getByRole('button', { name: 'Fold the readings' }).click();
  await expect(page.getByRole('region', { name: 'Readings' })).toBeHidden();

  const tabs = page.getByRole('group', { name: 'Below the side view' });
  const kept = await sizeOf();
  const places = async () =>
    await tabs
      .locator('label')
      .evaluateAll((all) =>
        all.map((each) => each.getBoundingClientRect().x + each.getBoundingClientRect().y),
      );
  const before = await places();
  for (const tab of ['Sprockets', 'Curves', 'Why']) {
    await tabs.getByText(tab, { exact: true }).click();
    await expect(page.getByRole('region', { name: tab, exact: true })).toBeVisible();
    expect(await places()).toEqual(before);
  }
  // What is chosen is written a moment later, and at the latest when the page is left.
  await page.reload();
  await expect.poll(sizeOf).toEqual(kept);
  await page.getByRole('button', { name: 'Open the readings' }).click();
  await expect(page.getByRole('region', { name: 'Readings' })).toBeVisible();
});
