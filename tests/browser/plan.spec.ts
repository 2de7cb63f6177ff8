/** The tab Find a setup: targets typed, a search in its thread, a plan tried and undone, and words where nothing is found. */
import { expect, test } from '@playwright/test';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { openPlan, plan, plans, setTarget } from './support/plan.ts';
import { field, plain, readingText, REAR_HEIGHT, undoButton } from './support/panels.ts';
import { openPage } from './support/side-view.ts';

test('a target is typed, the plan found and tried in one press, and one undo takes it back', async ({
  page,
}) => {
  await openPage(page);
  const thread = page.waitForEvent('worker', (worker) => worker.url().includes('core.worker'));
  await openPlan(page);
  await setTarget(page, 1, '11');
  await plan(page).getByRole('group', { name: 'Triple-clamp [yoke] offset' }).getByRole('checkbox').check();
  await plan(page).getByRole('button', { name: 'Find setups' }).click();
  await thread;
  const first = plans(page).getByRole('article', { name: 'Plan 1' });
  await expect(first).toBeVisible();
  await expect(plan(page).getByRole('status')).toContainText('all');
  const steps = first.getByRole('listitem');
  await expect(steps.first()).toContainText('Shock length');
  const after = plain(await steps.last().innerText());
  const trail = /Trail \(rider on board\) ([\d.]+) mm/.exec(after)?.[1];
  const before = await readingText(page, 'Trail');
  await first.getByRole('button', { name: 'Try plan 1' }).click();
  expect(await readingText(page, 'Trail')).toBe(`${trail} mm`);
  await expect(field(page, REAR_HEIGHT)).not.toHaveValue('0.0');
  await expect(plans(page)).toContainText('The bike or what was asked has changed since');
  await undoButton(page).click();
  expect(await readingText(page, 'Trail')).toBe(before);
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.0');
});

test('words say why nothing is found and what has to give way, and what makes no sense', async ({ page }) => {
  await openPage(page);
  await openPlan(page);
  await setTarget(page, 1, '20');
  await plan(page).getByRole('button', { name: 'Find setups' }).click();
  await expect(plans(page)).toContainText('miss Swingarm angle (topped out)');
  await expect(plans(page)).toContainText(
    'The smallest change that gives a plan: let Swingarm angle (topped out) be',
  );
  await expect(plans(page).getByRole('article', { name: 'Nearest plan' })).toBeVisible();
  await expect(plans(page)).toContainText('No single range gives a plan');
  const tubes = plan(page).getByRole('group', { name: 'Fork tubes above clamp [yoke]' });
  await setTarget(page, 1, '9.48');
  const trail = plan(page).getByRole('group', { name: 'Target 2' });
  await trail.getByRole('combobox', { name: 'What it should be' }).selectOption({ label: 'at least' });
  await trail.getByRole('textbox', { name: 'Value' }).fill('101');
  await tubes.getByRole('textbox', { name: 'from' }).fill('4');
  await tubes.getByRole('textbox', { name: 'from' }).press('Enter');
  await plan(page).getByRole('button', { name: 'Find setups' }).click();
  const wider = plans(page).getByRole('article', { name: 'Plan beyond the range' });
  await expect(plans(page)).toContainText('Or widen one range: let Fork tubes above clamp [yoke] go to');
  await wider.getByRole('button', { name: 'Try plan beyond the range' }).click();
  expect(Number.parseFloat(await readingText(page, 'Trail'))).toBeGreaterThanOrEqual(101);
  await undoButton(page).click();
  for (const name of ['Shock length', 'Fork tubes above clamp [yoke]'])
    await plan(page).getByRole('group', { name }).getByRole('checkbox').uncheck();
  await expect(plan(page).getByRole('note').first()).toContainText('No adjuster is available');
  await expect(plan(page).getByRole('button', { name: 'Find setups' })).toBeDisabled();
});

test('a long search is ended by a press, and what it found stays', async ({ page }) => {
  await openPage(page);
  await openPlan(page);
  await setTarget(page, 1, '9.7');
  for (const name of ['Triple-clamp [yoke] offset', 'Rear sprocket'])
    await plan(page).getByRole('group', { name }).getByRole('checkbox').check();
  const sprocket = plan(page).getByRole('group', { name: 'Rear sprocket' });
  await sprocket.getByRole('textbox', { name: 'from' }).fill('38');
  await sprocket.getByRole('textbox', { name: 'to' }).fill('50');
  await sprocket.getByRole('textbox', { name: 'to' }).press('Enter');
  await plan(page).getByRole('button', { name: 'Find setups' }).click();
  await expect(plan(page).getByRole('article', { name: 'Best so far' })).toBeVisible();
  await plan(page).getByRole('button', { name: 'End the search' }).click();
  await expect(plan(page).getByRole('status')).toContainText('ended after');
  await expect(plans(page).getByRole('article', { name: 'Plan 1' })).toBeVisible();
});

test('What moves what tells a step’s change, and trying it makes just that change', async ({ page }) => {
  await openPage(page);
  await openPlan(page);
  await plan(page).getByText('What moves what').click();
  const row = plan(page)
    .getByRole('row')
    .filter({ has: page.getByRole('button', { name: /^Try / }) })
    .first();
  const told = plain(await row.getByRole('cell').first().innerText());
  const before = Number.parseFloat(await readingText(page, 'Trail'));
  await row.getByRole('button').click();
  await expect.poll(async () => readingText(page, 'Trail')).not.toBe(`${before.toFixed(1)} mm`);
  const after = Number.parseFloat(await readingText(page, 'Trail'));
  const change = Number.parseFloat(told.replace('−', '-'));
  // Three figures, each rounded to its last digit.
  expect(Math.abs(after - before - change)).toBeLessThan(0.16);
});

test('S19: nothing serious in the tab with plans and steps in sight, in every theme', async ({ page }) => {
  await openPage(page);
  await openPlan(page);
  await plan(page).getByText('What moves what').click();
  await expect(plan(page).getByRole('heading', { name: 'The two ends' })).toBeVisible();
  await plan(page).getByText('Rider says').click();
  await plan(page).getByRole('button', { name: 'Find setups' }).click();
  await expect(plans(page)).toBeVisible();
  await inEveryTheme(page, (rule) => expectNothingSerious(page, 'section.plan', rule));
});

test('Rider says leads from the place in the corner to the end and to first steps of this bike', async ({
  page,
}) => {
  await openPage(page);
  await openPlan(page);
  await plan(page).getByText('Rider says').click();
  await plan(page).getByRole('combobox', { name: 'Where' }).selectOption({ label: 'Opening the throttle' });
  await expect(plan(page)).toContainText('Start at the rear.');
  await expect(plan(page)).toContainText(
    'From opening the throttle on, the rear is adjusted first. (common practice, no source)',
  );
  const steps = plan(page).getByRole('row');
  await expect(steps.first()).toContainText('Anti-squat (accelerating)');
  await steps.nth(1).getByRole('button').click();
  await expect(undoButton(page)).toBeEnabled();
  await undoButton(page).click();
  await plan(page).getByRole('textbox', { name: 'What the rider felt' }).fill('Still wide.');
  await plan(page).getByRole('button', { name: 'Put it on the setup sheet' }).click();
  await expect(plan(page)).toContainText('It is on today’s setup sheet.');
  await plan(page).getByRole('button', { name: 'Make it a target' }).click();
  await expect(plan(page).getByRole('group', { name: 'Targets', exact: true })).toBeFocused();
  const aimed = plan(page).getByRole('group', { name: 'Target 1' });
  await expect(aimed.getByRole('combobox', { name: 'Reading' })).toHaveValue('antiSquat');
  await plan(page).getByRole('combobox', { name: 'Where' }).selectOption({ label: 'Turning in' });
  await expect(plan(page)).toContainText('Start at the front.');
});
