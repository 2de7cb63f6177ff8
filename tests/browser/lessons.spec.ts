/** A lesson by mouse and keys: predicted before it shows, hidden from the accessibility tree until then, and the bike left as it was. */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { expectNothingSerious } from './support/axe.ts';
import { FRONT_HEIGHT, plain, readingText, typeInto } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

function room(page: Page): Locator {
  return page.getByRole('dialog');
}

async function begin(page: Page, title: string): Promise<void> {
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Lessons', { exact: true })
    .click();
  await page.getByRole('button', { name: `Start: ${title}` }).click();
  await expect(room(page).getByRole('heading', { name: title })).toBeVisible();
}

test('a whole lesson by mouse and keys, and the bike comes back to the last digit, with its undo history', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FRONT_HEIGHT, '7');
  const before = await readingText(page, 'Trail');
  await begin(page, 'Raise the rear');
  await room(page).getByRole('button', { name: 'Next' }).click();
  // What is hidden is not on the page at all: no figure with a unit, in no text and in no label.
  const tree = plain(await room(page).ariaSnapshot());
  expect(tree).toContain('Fit a longer shock.');
  expect(tree).toContain('What do you expect?');
  expect(tree).not.toMatch(/\d+\.\d+ ?(°|mm|%)/);
  await room(page).getByText('quicker steering', { exact: true }).click();
  const amount = room(page).getByLabel('By about how much?');
  await amount.fill('0.5');
  await amount.press('Enter');
  // A field keeps its keys to itself.
  await page.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toHaveCount(0);
  await amount.fill('0.5');
  await amount.press('Enter');
  await page.keyboard.press('Tab');
  // Page Down, as a clicker sends it, looks first and then goes on.
  await page.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toContainText('Rake: 24.1');
  await expect(room(page)).toContainText('Right. You said: quicker steering, by about 0.50°.');
  await expect(room(page).getByRole('img')).toHaveAccessibleName(/after the change/);
  await room(page).getByRole('button', { name: 'Undo the step' }).click();
  await expect(room(page).locator('.figure')).toHaveCount(0);
  await page.keyboard.press('PageDown');
  await expect(room(page).locator('.figure')).toBeVisible();
  await page.keyboard.press('b');
  await expect(room(page).getByText('Blank.')).toBeVisible();
  await expect(room(page).locator('.figure')).toHaveCount(0);
  await page.keyboard.press('b');
  await room(page).getByRole('button', { name: 'Pointer ring' }).click();
  await room(page).locator('.drawing').hover();
  await expect(room(page).locator('.ring')).toBeVisible();
  await expectNothingSerious(page, 'dialog');
  for (let press = 0; press < 7; press++) await page.keyboard.press('PageDown');
  await expect(room(page).getByText('End', { exact: true })).toBeVisible();
  await expect(room(page).locator('li').first()).toContainText('Right. You said: quicker steering');
  await page.keyboard.press('Escape');
  await expect(room(page)).toHaveCount(0);
  expect(await readingText(page, 'Trail')).toBe(before);
  await page.keyboard.press('Control+z');
  await expect.poll(() => readingText(page, 'Trail')).not.toBe(before);
});

test('sayings are held against the bike on the page, and one press shows a trial', async ({ page }) => {
  await openPage(page);
  await page
    .getByRole('group', { name: 'Below the side view' })
    .getByText('Lessons', { exact: true })
    .click();
  await page.getByText('Sayings, checked', { exact: true }).click();
  const card = page.getByRole('listitem').filter({ hasText: 'A bigger rear sprocket flattens' }).first();
  await expect(card).toContainText('Holds in part for this bike.');
  await card.getByRole('button', { name: 'Show: Two teeth more: on the gas' }).click();
  await expect(room(page).locator('.figure')).toContainText('Anti-squat');
});
