/** A window too low for the side view and a panel: the page scrolls, and keeps its name. */
import { expect, test, type Page } from '@playwright/test';
import { openPage, sideView } from './support/side-view.ts';

/** How far the page to print reaches beyond what shows it, px. */
async function beyondPreview(page: Page): Promise<number> {
  const paper = page.getByRole('article', { name: 'Page to print' });
  return await paper.evaluate(({ parentElement }) => {
    if (parentElement === null) throw new Error('nothing shows the page');
    return parentElement.scrollWidth - parentElement.clientWidth;
  });
}

test('below 560 px of height the page scrolls down to its last panel, and not before', async ({ page }) => {
  const scrolledTo = () =>
    page.evaluate(() => {
      window.scrollTo(0, document.documentElement.scrollHeight);
      return window.scrollY;
    });
  await page.setViewportSize({ width: 667, height: 320 });
  await openPage(page);
  expect(await scrolledTo()).toBe(240);
  await page.setViewportSize({ width: 390, height: 664 });
  await expect.poll(scrolledTo).toBe(0);
  await expect(page.getByRole('heading', { level: 1, name: 'Sidestance' })).toHaveCount(1);
  // The pop-up of the bar lies over the page, and closes on Escape and on a press outside.
  const opener = page.getByRole('button', { name: 'Files, units and theme' });
  const theme = page.getByRole('combobox', { name: 'Theme' });
  const box = await sideView(page).boundingBox();
  await opener.tap();
  await expect(theme).toBeVisible();
  expect(await sideView(page).boundingBox()).toEqual(box);
  await page.keyboard.press('Escape');
  await expect(theme).toBeHidden();
  await expect(opener).toBeFocused();
  await opener.tap();
  await expect(theme).toBeVisible();
  await page.getByRole('group', { name: 'Panel' }).getByText('Readings', { exact: true }).tap();
  await expect(theme).toBeHidden();
  // What opens from the pop-up gives the keys back to its button: the pop-up itself has gone.
  for (const name of ['Send', 'Print']) {
    await opener.tap();
    await page.getByRole('button', { name, exact: true }).tap();
    await expect(page.getByRole('dialog', { name })).toBeVisible();
    await expect(theme).toBeHidden();
    if (name === 'Print') expect(await beyondPreview(page)).toBeLessThanOrEqual(0);
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(opener).toBeFocused();
  }
});
