/** What has to stand in sight on a laptop without a scroll. */
import { expect, test } from '@playwright/test';
import { chooseTheme } from './support/axe.ts';
import { openPage } from './support/side-view.ts';
import { REAR_HEIGHT, typeInto } from './support/panels.ts';
import { curves, openCurves, openStates, stateBox } from './support/curves.ts';

test.use({ viewport: { width: 1280, height: 720 } });

test('on a laptop a raised rear says in sight that the steering turns quicker, and why, in every theme', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  for (const theme of ['paper', 'garage', 'sun'] as const) {
    await chooseTheme(page, theme);
    const why = page.getByRole('region', { name: 'Why' });
    await expect(why.locator('.headline')).toHaveText(/the steering turns slightly quicker/);
    for (const sentence of [why.locator('.headline'), ...(await why.getByRole('listitem').all())])
      await expect(sentence).toBeInViewport({ ratio: 1 });
    await expect(why.getByRole('listitem')).toHaveCount(5);
    const caution = page.getByRole('complementary', { name: 'Cautions' });
    expect((await caution.boundingBox())?.height).toBeLessThan(60);
    await expect(caution.locator('summary')).toHaveText(/One change at a time; ride gently first/);
    await caution.locator('summary').click();
    await expect(caution).toContainText('alters how a motorcycle steers and stops');
    await expect(caution.getByRole('listitem').first()).toBeVisible();
    await caution.locator('summary').click();
    await expect(caution.getByRole('listitem').first()).toBeHidden();
  }
});

test('the ride states of the curves are opened at the head of their panel, and folded again', async ({
  page,
}) => {
  await openPage(page);
  await openCurves(page, 'Anti-squat', 'Rear travel');
  await expect(stateBox(page, 'Rider on board')).toHaveCount(0);
  await expect(curves(page).getByRole('button', { name: 'Ride states' })).toBeInViewport({ ratio: 1 });
  await openStates(page);
  await expect(stateBox(page, 'Rider on board')).toBeInViewport({ ratio: 1 });
  await stateBox(page, 'Rider on board').check();
  await curves(page).getByRole('button', { name: 'Ride states' }).click();
  await expect(stateBox(page, 'Rider on board')).toHaveCount(0);
  await openStates(page);
  await expect(stateBox(page, 'Rider on board')).toBeChecked();
});
