/** The tab Find a setup by finger: on a phone, and on a tablet in sun. */
import { expect, test, type Locator } from '@playwright/test';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { writeNumber } from '../../src/core/units/number-style.ts';
import { METRIC, savedDocument } from './support/bike-document.ts';
import { openPlan, plan, plans, setTarget } from './support/plan.ts';
import { expectNoUndo, plain, undoButton } from './support/panels.ts';
import { openSheets, sheetRow, sheets } from './support/sheets.ts';
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

/** From the complaint to the sheet that is kept, the theme, each tab and each line that folds included. */
const MOST_PRESSES = 16;

test.describe('on a tablet', () => {
  test.use({ viewport: { width: 1024, height: 768 } });

  test('in sun a complaint becomes a first step, a target, a plan on the bike and a sheet, in sixteen presses', async ({
    page,
  }) => {
    let presses = 0;
    const tap = async (target: Locator): Promise<void> => {
      await target.tap();
      presses += 1;
    };
    const choose = async (target: Locator, label: string): Promise<void> => {
      await target.selectOption({ label });
      presses += 1;
    };
    /** A reading of the bike as it is saved, as the page writes it. */
    const now = async (key: string, state: RideStateKey): Promise<string> => {
      const { bike, setup } = await savedDocument(page);
      const on = standBike(bike, setup, state);
      const reading = READINGS.find((each) => each.key === key);
      const value = on.ok && reading !== undefined ? metricReading(reading, on) : null;
      return typeof value === 'number' && reading !== undefined
        ? plain(writeNumber(value, reading.quantity, METRIC).text)
        : '–';
    };
    const units = page.getByRole('button', { name: 'Units and theme' });
    await openPage(page);
    await tap(units);
    await choose(page.getByRole('combobox', { name: 'Theme' }), 'Sun');
    await tap(units);
    await choosePanel(page, 'Why and more');
    await openPlan(page);
    presses += 2;

    // What the rider says leads to the end, and to a step whose reading is what trying it gives.
    await tap(plan(page).getByText('Rider says'));
    await choose(plan(page).getByRole('combobox', { name: 'Where' }), 'Opening the throttle');
    await expect(plan(page)).toContainText('Start at the rear.');
    const step = plan(page).getByRole('row').nth(1);
    await expect(step).toContainText('Shock');
    const before = await now('antiSquat', 'accelerating');
    const told = plain(await step.getByRole('cell').first().innerText());
    await tap(step.getByRole('button', { name: /^Try/ }));
    await expect(undoButton(page)).toBeEnabled();
    const tried = await now('antiSquat', 'accelerating');
    expect(tried).not.toBe(before);
    expect(told.startsWith(`${tried} `)).toBe(true);
    await tap(undoButton(page));

    // As a target, with the trail kept, it becomes a plan in working order.
    await tap(plan(page).getByRole('button', { name: 'Make it a target' }));
    await tap(plan(page).getByRole('button', { name: 'Find setups' }));
    const first = plans(page).getByRole('article', { name: 'Plan 1' });
    await expect(first.getByRole('listitem').first()).toContainText('Shock length');
    await expect(first.getByRole('listitem').last()).not.toContainText('Shock length');
    expect(await amissIn(plan(page))).toEqual([]);
    const promised = plain(await first.getByRole('listitem').last().innerText());
    await tap(first.getByRole('button', { name: 'Try plan 1' }));
    await expect(plans(page)).toContainText('The bike or what was asked has changed since');
    expect(promised).toContain(`Anti-squat (accelerating) ${await now('antiSquat', 'accelerating')}`);
    expect(promised).toContain(`Trail (rider on board) ${await now('trail', 'riderUp')}`);

    // What was said, turned and felt is kept as a sheet.
    await plan(page).getByRole('textbox', { name: 'What the rider felt' }).fill('It holds its line.');
    presses += 1;
    await tap(plan(page).getByRole('button', { name: 'Put it on the setup sheet' }));
    await expect(plan(page)).toContainText('It is on today’s setup sheet.');
    await openSheets(page);
    presses += 1;
    await tap(sheets(page).getByRole('button', { name: 'Keep this sheet' }));
    expect(presses).toBeLessThanOrEqual(MOST_PRESSES);
    await sheetRow(page, 'It holds').tap();
    const notes = page.getByRole('article').getByRole('region', { name: 'Notes' });
    for (const line of ['It squats when the throttle opens, and runs wide.', 'It holds its line.'])
      await expect(notes).toContainText(line);
    await expect(notes).toContainText(/Shock length 0\.0\smm → /);
  });
});
