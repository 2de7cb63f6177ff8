/** The tab Find a setup by finger: on a phone, and on a tablet in sun. */
import { expect, test } from '@playwright/test';
import { openPlan, plan, plans, setTarget } from './support/plan.ts';
import { expectNoUndo, undoButton } from './support/panels.ts';
import { openPage } from './support/side-view.ts';
import { amissIn, choosePanel } from './support/touch.ts';

test('a finger types a target in inches, finds a plan, tries it and takes it back, and all of it is large enough', async ({
  page,
}) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Units and theme' }).tap();
  await page.getByRole('combobox', { name: 'Units' }).selectOption('inch');
  await page.getByRole('button', { name: 'Units and theme' }).tap();
  await choosePanel(page, 'Why and more');
  await openPlan(page);
  await setTarget(page, 1, '11');
  await plan(page).getByRole('group', { name: 'Triple-clamp [yoke] offset' }).getByRole('checkbox').tap();
  await plan(page).getByText('What moves what').tap();
  await plan(page).getByText('Rider says').tap();
  await plan(page).getByRole('button', { name: 'Find setups' }).tap();
  const first = plans(page).getByRole('article', { name: 'Plan 1' });
  await expect(first).toContainText('in');
  expect(await amissIn(plan(page))).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  await first.getByRole('button', { name: 'Try plan 1' }).tap();
  await expect(plans(page)).toContainText('The bike or what was asked has changed since');
  await undoButton(page).tap();
  await expectNoUndo(page);
});

test.describe('on a tablet', () => {
  test.use({ viewport: { width: 1024, height: 768 } });

  test('in sun the tuner says what the bike should be and what is in the van, and gets setups in working order', async ({
    page,
  }) => {
    await openPage(page);
    await page.getByRole('button', { name: 'Units and theme' }).tap();
    await page.getByRole('combobox', { name: 'Theme' }).selectOption({ label: 'Sun' });
    await page.getByRole('button', { name: 'Units and theme' }).tap();
    await choosePanel(page, 'Why and more');
    await openPlan(page);
    await setTarget(page, 1, '10.4');
    await plan(page).getByRole('group', { name: 'Triple-clamp [yoke] offset' }).getByRole('checkbox').tap();
    await plan(page).getByRole('button', { name: 'Find setups' }).tap();
    const steps = plans(page).getByRole('article', { name: 'Plan 1' }).getByRole('listitem');
    await expect(steps.first()).toContainText('Shock length');
    await expect(steps.last()).not.toContainText('Shock length');
    expect(await amissIn(plan(page))).toEqual([]);
  });
});
