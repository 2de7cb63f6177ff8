/** The page on a phone in a browser test: one panel at a time, controls for a finger, nothing beside the screen. */
import { expect, type Locator, type Page } from '@playwright/test';
import type { Place } from './side-view.ts';

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

/** A slider as a finger meets it. */
export interface Track {
  readonly thumb: Place;
  readonly runPx: number;
  readonly least: number;
  readonly most: number;
  readonly value: number;
}

/** Where a slider's thumb is and how far it runs; brought to the middle of the window first. */
export async function trackOf(slider: Locator): Promise<Track> {
  return await slider.evaluate((input: HTMLInputElement) => {
    input.scrollIntoView({ block: 'center' });
    const { left, top, width, height } = input.getBoundingClientRect();
    const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
    const thumbPx = rem * parseFloat(getComputedStyle(input).getPropertyValue('--thumb'));
    const [least, most, value] = [Number(input.min), Number(input.max), input.valueAsNumber];
    const runPx = width - thumbPx;
    const x = left + thumbPx / 2 + (runPx * (value - least)) / (most - least);
    return { thumb: { x, y: top + height / 2 }, runPx, least, most, value };
  });
}

/** Chooses a theme in the menu of units and theme, and folds the menu again. */
export async function tapTheme(page: Page, theme: 'paper' | 'garage' | 'sun'): Promise<void> {
  const menu = page.getByRole('button', { name: 'Units and theme' });
  await menu.tap();
  await page.getByRole('combobox', { name: 'Theme' }).selectOption(theme);
  await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
  await menu.tap();
}
