/** The choices at the head of the panels on a tablet lying down, where the panel is narrowest. */
import { expect, test } from '@playwright/test';
import { openPage } from './support/side-view.ts';
import { choosePanel } from './support/touch.ts';

test.use({ viewport: { width: 1024, height: 768 } });

test('on a tablet in sun each part of a panel’s choices is as large as a finger, in even rows', async ({
  page,
}) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Units and theme' }).tap();
  await page.getByRole('combobox', { name: 'Theme' }).selectOption({ label: 'Sun' });
  await page.getByRole('button', { name: 'Units and theme' }).tap();
  await choosePanel(page, 'Why and more');
  const tabs = page.getByRole('group', { name: 'Below the side view' });
  await tabs.getByText('Ride', { exact: true }).tap();
  for (const [bar, rows] of [
    [page.getByRole('group', { name: 'Panel' }), 1],
    [tabs, 3],
    [page.getByRole('region', { name: 'Ride' }).locator('header fieldset'), 1],
  ] as const) {
    const tops = new Map<number, number>();
    for (const part of await bar.locator('label').all()) {
      const box = await part.boundingBox();
      expect(box?.width).toBeGreaterThanOrEqual(44);
      expect(box?.height).toBeGreaterThanOrEqual(44);
      const top = Math.round(box?.y ?? 0);
      tops.set(top, (tops.get(top) ?? 0) + 1);
    }
    expect(tops.size).toBe(rows);
    // None stands alone in its row.
    for (const parts of tops.values()) expect(parts).toBeGreaterThan(1);
  }
});
