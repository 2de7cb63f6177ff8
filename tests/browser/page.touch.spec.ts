/** The page on a phone: nothing beside the screen, controls large enough for a finger, panels one at a time. */
import { expect, test, type Page } from '@playwright/test';
import { changeText, field, FRONT_HEIGHT, REAR_HEIGHT, typeInto, undoButton } from './support/panels.ts';
import { chooseMode, openPage } from './support/side-view.ts';
import { choosePanel, LEAST_PX, tapTheme } from './support/touch.ts';

/** Everything in sight that is pressed, and is smaller than a finger's reach; boxes and switches count with their label. */
async function smallControls(page: Page): Promise<string[]> {
  return await page.evaluate((least) => {
    const selector = 'button, select, input:not([type="file"]), textarea, a[href], summary, [role="slider"]';
    const found: string[] = [];
    for (const element of document.querySelectorAll<HTMLElement>(selector)) {
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      const ticked = element instanceof HTMLInputElement && ['checkbox', 'radio'].includes(element.type);
      const target = ticked ? (element.closest('label') ?? element) : element;
      const { width, height } = target.getBoundingClientRect();
      const name = element.getAttribute('aria-label') ?? target.textContent?.trim() ?? element.id;
      if (width > 0 && (width < least - 0.01 || height < least - 0.01))
        found.push(`${element.tagName} "${name}" ${Math.round(width)} × ${Math.round(height)}`);
    }
    return found;
  }, LEAST_PX);
}

/** Everything that reaches beyond the right or left edge of the window. */
async function beside(page: Page): Promise<string[]> {
  return await page.evaluate(() => {
    const found: string[] = [];
    for (const element of document.querySelectorAll<HTMLElement>('body *')) {
      if (!element.checkVisibility({ visibilityProperty: true })) continue;
      // Handles outside the side view's window are cut off there.
      if (element.closest('[role="application"]') !== null) continue;
      const { left, right, width } = element.getBoundingClientRect();
      if (width > 1 && (left < -0.5 || right > window.innerWidth + 0.5))
        found.push(`${element.tagName}.${element.className} ${Math.round(left)}…${Math.round(right)}`);
    }
    return found;
  });
}

test('on every panel, nothing lies beside the screen and every control is 44 px, in every theme', async ({
  page,
}) => {
  await openPage(page);
  for (const theme of ['paper', 'garage', 'sun'] as const) {
    await chooseMode(page, 'Adjusters');
    await tapTheme(page, theme);
    for (const panel of ['Adjusters', 'Readings', 'Why and more'] as const) {
      await choosePanel(page, panel);
      expect({ theme, panel, small: await smallControls(page), beside: await beside(page) }).toEqual({
        theme,
        panel,
        small: [],
        beside: [],
      });
    }
    await chooseMode(page, 'Edit');
    await choosePanel(page, 'Bike');
    await page.getByRole('button', { name: 'What is shown' }).tap();
    expect({ theme, small: await smallControls(page), beside: await beside(page) }).toEqual({
      theme,
      small: [],
      beside: [],
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    await page.getByRole('button', { name: 'What is shown' }).tap();
  }
});

test('one panel is in sight at a time, and the side view above it always', async ({ page }) => {
  await openPage(page);
  const adjusters = page.getByRole('region', { name: 'Adjusters' });
  const readings = page.getByRole('region', { name: 'Readings' }).first();
  const why = page.getByRole('region', { name: 'Why' });
  const sights = async (): Promise<boolean[]> =>
    await Promise.all([adjusters.isVisible(), readings.isVisible(), why.isVisible()]);
  expect(await sights()).toEqual([true, false, false]);
  await choosePanel(page, 'Readings');
  expect(await sights()).toEqual([false, true, false]);
  await choosePanel(page, 'Why and more');
  expect(await sights()).toEqual([false, false, true]);
  await expect(page.getByRole('application', { name: 'Side view of the bike' })).toBeInViewport({ ratio: 1 });
  await choosePanel(page, 'Adjusters');
  expect(await sights()).toEqual([true, false, false]);
});

test('a stepper steps once for each tap, and each tap is one change to undo', async ({ page }) => {
  await openPage(page);
  const more = page.getByRole('button', { name: `${FRONT_HEIGHT}: one step more` });
  const front = field(page, FRONT_HEIGHT);
  const before = Number(await front.inputValue());
  await more.tap();
  await more.tap();
  await expect(front).toHaveValue((before + 2).toFixed(1));
  await undoButton(page).tap();
  await expect(front).toHaveValue((before + 1).toFixed(1));
  await page.getByRole('button', { name: `${FRONT_HEIGHT}: one step less` }).tap();
  await expect(front).toHaveValue(before.toFixed(1));
});

test('a number typed on the screen is taken, and the reading changes with it', async ({ page }) => {
  await openPage(page);
  const rear = field(page, REAR_HEIGHT);
  await rear.tap();
  await expect(rear).toBeFocused();
  expect(await rear.getAttribute('inputmode')).toMatch(/decimal|text/);
  await typeInto(page, REAR_HEIGHT, '10');
  await choosePanel(page, 'Readings');
  expect(await changeText(page, 'Trail')).toMatch(/^▼ −\d/);
  expect(await page.evaluate(() => window.visualViewport?.scale)).toBe(1);
});

test('text fields are set in 16 px or more, so that no phone zooms in on them', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const sizes = await page
    .locator('input[type="text"], input[inputmode], select, textarea')
    .evaluateAll((fields) => fields.map((each) => parseFloat(getComputedStyle(each).fontSize)));
  expect(sizes.length).toBeGreaterThan(5);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(16);
});
