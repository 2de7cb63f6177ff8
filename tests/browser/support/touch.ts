/** The page on a phone in a browser test: one panel at a time, controls for a finger, nothing beside the screen. */
import { expect, type Locator, type Page } from '@playwright/test';

/** The least height and width of what a finger presses, CSS px: WCAG 2.2, target size, level AAA. */
export const LEAST_PX = 44;

export type PhonePanel = 'Adjusters' | 'Bike' | 'Readings' | 'Why and more';

export async function choosePanel(page: Page, panel: PhonePanel): Promise<void> {
  const group = page.getByRole('group', { name: 'Panel' });
  await group.getByText(panel, { exact: true }).tap();
  await expect(group.getByRole('radio', { name: panel })).toBeChecked();
}

/**
 * Controls of a part of the page that are too small for a finger, and what of it reaches beyond the screen. Boxes and
 * switches count with their label; what scrolls within a region of its own, or lies in a picture, is cut off there.
 */
export async function amissIn(part: Locator): Promise<string[]> {
  return await part.evaluate((root, least) => {
    const found: string[] = [];
    for (const element of root.querySelectorAll<HTMLElement>('button, input, select, summary')) {
      const ticked = element instanceof HTMLInputElement && ['checkbox', 'radio'].includes(element.type);
      const target = ticked ? (element.closest('label') ?? element) : element;
      const { width, height } = target.getBoundingClientRect();
      if (width < least - 0.01 || height < least - 0.01)
        found.push(`${target.textContent?.trim()} ${Math.round(width)} × ${Math.round(height)}`);
    }
    for (const element of root.querySelectorAll('*')) {
      if (element.closest('svg') !== null && element.tagName !== 'svg') continue;
      if (element.closest('table')?.closest('[role="region"]')) continue;
      const { left, right, width } = element.getBoundingClientRect();
      if (width > 1 && (left < -0.5 || right > window.innerWidth + 0.5))
        found.push(`${element.tagName} ${Math.round(left)}…${Math.round(right)}`);
    }
    return found;
  }, LEAST_PX);
}
