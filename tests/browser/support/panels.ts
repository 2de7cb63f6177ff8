/** The panels in a browser test: readings, adjusters, Why, undo and the looks of the page. */
import { expect, type Locator, type Page } from '@playwright/test';
import { ADJUSTER_GROUPS } from '../../../src/core/adjusters/definition/adjuster-groups.ts';
import { adjusterLabel, namedAdjusters } from '../../../src/core/adjusters/named-adjusters.ts';
import { askForDemo, expectBike } from './bikes.ts';

export function readings(page: Page): Locator {
  return page.getByRole('region', { name: 'Readings' }).first();
}

/** The line of one reading: name, number and change. */
export function readingLine(page: Page, label: string): Locator {
  return readings(page)
    .locator('li button[aria-pressed]')
    .filter({ has: page.locator('.name').getByText(label, { exact: true }) });
}

/** The number of a reading with its unit, its spaces plain. */
export async function readingText(page: Page, label: string): Promise<string> {
  return plain(await readingLine(page, label).locator('.value').innerText());
}

/** The change of a reading with arrow, sign and word. */
export async function changeText(page: Page, label: string): Promise<string> {
  return plain(await readingLine(page, label).locator('.change').innerText());
}

/** Words with every kind of space made a plain one. */
export function plain(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

/** The field of a number, by its label. */
export function field(page: Page, label: string): Locator {
  return page.getByRole('textbox', { name: label, exact: true });
}

export const REAR_HEIGHT = adjusterLabel('shockLength', 'chain');
export const FRONT_HEIGHT = adjusterLabel('forkTubes', 'chain');

/** The button that opens and folds a group of adjusters, by the group's name; it says how many are changed, too. */
export function adjusterGroup(page: Page, name: string): Locator {
  return page
    .getByRole('region', { name: 'Adjusters' })
    .getByRole('button', { name: new RegExp(`^${name}( |$)`) });
}

/** Opens the group that an adjuster of this label lies in; a field of any other label is left to itself. */
export async function openAdjuster(page: Page, label: string): Promise<void> {
  const adjuster = namedAdjusters('chain').find((each) => each.label === label);
  const group = ADJUSTER_GROUPS.find(({ key }) => key === adjuster?.group);
  if (group === undefined) return;
  const heading = adjusterGroup(page, group.label);
  if ((await heading.getAttribute('aria-expanded')) === 'false') await heading.click();
  await expect(heading).toHaveAttribute('aria-expanded', 'true');
}

/** The adjuster of the chain's length, once its group is open. */
export function chainAdjuster(page: Page): Locator {
  return page.getByRole('region', { name: 'Adjusters' }).getByRole('group', {
    name: adjusterLabel('chainLinks', 'chain'),
    exact: true,
  });
}

/** Types a value into a field and takes it with Enter. An adjuster's group is opened first. */
export async function typeInto(page: Page, label: string, text: string): Promise<void> {
  await openAdjuster(page, label);
  await field(page, label).fill(text);
  await field(page, label).press('Enter');
}

export function undoButton(page: Page): Locator {
  return page.getByRole('banner').getByRole('button', { name: /^Undo/ });
}

export function redoButton(page: Page): Locator {
  return page.getByRole('banner').getByRole('button', { name: /^Redo/ });
}

export async function undo(page: Page): Promise<void> {
  await undoButton(page).click();
}

export function why(page: Page): Locator {
  return page.getByRole('region', { name: 'Why' });
}

export function liveRegion(page: Page): Locator {
  return page.locator('[data-live]');
}

/** Takes a new bike from a demonstration, by its name. */
export async function startDemo(page: Page, name: string): Promise<void> {
  await askForDemo(page, name);
  await expectBike(page, name);
}

/** Nothing can be undone: nothing that happened since left an entry. */
export async function expectNoUndo(page: Page): Promise<void> {
  await expect(undoButton(page)).toBeDisabled();
}

/** Words as part of a pattern, where none of their signs means anything else. */
export function escaped(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
