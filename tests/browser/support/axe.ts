/** Looks through the page, or a part of it, with axe, which knows the web's accessibility rules. */
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { drawn } from './side-view.ts';

/** `part` limits the search to what has changed since the whole was searched, a rule to what a theme can break. */
export async function expectNothingSerious(
  page: Page,
  part?: string,
  rule?: 'color-contrast',
): Promise<void> {
  await drawn(page);
  // A page without frames needs no second page to gather results in, only faults need their places written down, and
  // a page that has axe from the look before need not read its half a megabyte again: each saves a fifth of the time.
  const isThere = await page.evaluate(() => 'axe' in window);
  const axe = new AxeBuilder({ page, axeSource: isThere ? 'void 0' : undefined })
    .setLegacyMode()
    .options({ resultTypes: ['violations'] });
  if (part !== undefined) axe.include(part);
  if (rule !== undefined) axe.withRules(rule);
  const { violations, passes } = await axe.analyze();
  expect(passes.length).toBeGreaterThan(0);
  const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  expect(grave.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
}

export async function chooseTheme(page: Page, theme: 'paper' | 'garage' | 'sun'): Promise<void> {
  await page.getByRole('combobox', { name: 'Theme' }).selectOption(theme);
  await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
}

/** Calls `look` in every theme with the rule to look for: all of them once, then contrast, as a theme can break nothing else. */
export async function inEveryTheme(
  page: Page,
  look: (rule?: 'color-contrast') => Promise<void>,
): Promise<void> {
  await chooseTheme(page, 'paper');
  await look();
  for (const theme of ['garage', 'sun'] as const) {
    await chooseTheme(page, theme);
    await look('color-contrast');
  }
}
