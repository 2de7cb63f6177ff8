/** The Adjusters panel on a phone: groups opened by a tap, controls for a finger, the chain put on and taken back. */
import { expect, test } from '@playwright/test';
import { ADJUSTER_GROUPS } from '../../src/core/adjusters/definition/adjuster-groups.ts';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { chainAdjuster, adjusterGroup, expectNoUndo, field, typeInto, undoButton } from './support/panels.ts';
import { openPage, sideView } from './support/side-view.ts';
import { choosePanel, LEAST_PX } from './support/touch.ts';

test('a tap opens a group and another folds it, each name wide and high enough for a finger', async ({
  page,
}) => {
  await openPage(page);
  for (const { label } of ADJUSTER_GROUPS) {
    const box = await adjusterGroup(page, label).boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(LEAST_PX);
    expect(box?.width).toBeGreaterThan(300);
  }
  await adjusterGroup(page, 'Tyres').tap();
  await expect(page.getByLabel('Front tyre', { exact: true })).toBeVisible();
  await adjusterGroup(page, 'Tyres').tap();
  await expect(adjusterGroup(page, 'Tyres')).toHaveAttribute('aria-expanded', 'false');
});

test('all groups open are within the screen, every control for a finger', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Open all adjusters' }).tap();
  await chainAdjuster(page).getByText('By the chain').tap();
  const amiss = await page.getByRole('region', { name: 'Adjusters' }).evaluate((region, least) => {
    const found: string[] = [];
    for (const element of region.querySelectorAll<HTMLElement>('button, select, input')) {
      const radio = element instanceof HTMLInputElement && element.type === 'radio';
      const target = radio ? (element.closest('label') ?? element) : element;
      const { width, height, left, right } = target.getBoundingClientRect();
      // A slim track is a way beside the number's own field and steppers.
      const isTrack = element instanceof HTMLInputElement && element.type === 'range';
      if (!isTrack && (width < least - 0.01 || height < least - 0.01))
        found.push(
          `${element.getAttribute('aria-label') ?? element.id} ${Math.round(width)} × ${Math.round(height)}`,
        );
      if (left < -0.5 || right > window.innerWidth + 0.5) found.push(`${element.id} beside the screen`);
    }
    return found;
  }, LEAST_PX);
  expect(amiss).toEqual([]);
});

test('a chain is put on, stepped and taken back by taps, and a refusal leads into its folded group', async ({
  page,
}) => {
  await openPage(page);
  await adjusterGroup(page, 'Gearing and axle').tap();
  await chainAdjuster(page).getByText('By the chain').tap();
  const links = field(page, 'Links of the chain');
  const first = await links.inputValue();
  await typeInto(page, adjusterLabel('rearTeeth', 'chain'), '32');
  await adjusterGroup(page, 'Gearing and axle').tap();
  await choosePanel(page, 'Readings');
  await sideView(page).getByRole('button', { name: 'Go to Chain length' }).tap();
  await expect(chainAdjuster(page)).toBeInViewport();
  await chainAdjuster(page).getByRole('button', { name: 'Chain length: the next shorter chain' }).tap();
  await expect(links).not.toHaveValue(first);
  await undoButton(page).tap();
  await expect(links).toHaveValue(first);
  await undoButton(page).tap();
  await undoButton(page).tap();
  await expect(links).toHaveCount(0);
  await expectNoUndo(page);
});
