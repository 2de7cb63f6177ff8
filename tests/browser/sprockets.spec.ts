/** Choosing a pair of sprockets from the table: fitting, undoing, filtering, ordering, reasons and speeds. */
import { expect, test, type Page } from '@playwright/test';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { metricReading, savedDocument, standing } from './support/bike-document.ts';
import {
  changeText,
  expectNoUndo,
  field,
  plain,
  readingText,
  REAR_HEIGHT,
  typeInto,
  undo,
  undoButton,
  why,
} from './support/panels.ts';
import { chooseState } from './support/ride.ts';
import {
  cell,
  count,
  openFilters,
  openSprockets,
  pairButton,
  pairRow,
  pairsShown,
  sprockets,
  tryButton,
} from './support/sprockets.ts';
import { dragHandle, openPage } from './support/side-view.ts';

const [{ setup }] = DEMO_BIKES;
const OWN = `${setup.frontTeeth}/${setup.rearTeeth}`;
const OTHER = `${setup.frontTeeth + 1}/${setup.rearTeeth + 2}`;

/** Table columns with the reading of the same name. */
const READ = [
  ['wheelbase', 'Wheelbase'],
  ['swingarmAngle', 'Swingarm angle'],
  ['antiSquat', 'Anti-squat'],
  ['pivotGap', 'Chain clearance to chain slider'],
] as const;

async function chooseRange(page: Page, front: [number, number], rear: [number, number]): Promise<void> {
  await openFilters(page);
  await typeInto(page, 'Front from', String(front[0]));
  await typeInto(page, 'Front to', String(front[1]));
  await typeInto(page, 'Rear from', String(rear[0]));
  await typeInto(page, 'Rear to', String(rear[1]));
}

test('the pairs about the one on the bike are listed, which is marked in words', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  await expect(count(page)).toHaveText('All 45 pairs, topped out');
  await expect(pairRow(page, OWN)).toContainText('On the bike · Baseline');
  await expect(pairRow(page, OWN)).toBeInViewport();
  expect(await cell(page, OWN, 'antiSquat')).toEqual({
    figure: (await readingText(page, 'Anti-squat')).replace(' %', ''),
    change: 'same',
  });
});

test('what a row tells is what the readings say once it is tried, topped out, with a rider and accelerating', async ({
  page,
}) => {
  await openPage(page);
  await openSprockets(page);
  const tried = async (state: string): Promise<void> => {
    await chooseState(page, state);
    await expect(count(page)).toHaveText(`All 45 pairs, ${state.toLowerCase()}`);
    const told = await Promise.all(READ.map(([column]) => cell(page, OTHER, column)));
    const links = Number((await cell(page, OTHER, 'links')).figure);
    const axle = Number((await cell(page, OTHER, 'axlePosition')).figure);
    expect(links % 2).toBe(0);
    await tryButton(page, OTHER).click();
    for (const [index, [, label]] of READ.entries()) {
      expect(await readingText(page, label)).toMatch(new RegExp(`^${told[index].figure}( |°)`));
      // The readings name the effect where the table names the direction; arrow and amount are the same.
      const [arrow, amount] = told[index].change.split(' ');
      const change = await changeText(page, label);
      expect(change.startsWith(amount === undefined ? 'same' : `${arrow} ${amount.replace('°', '')}`)).toBe(
        true,
      );
    }
    const { setup: after } = await savedDocument(page);
    expect([after.frontTeeth, after.rearTeeth]).toEqual([setup.frontTeeth + 1, setup.rearTeeth + 2]);
    expect(after.axlePosition).toBeCloseTo(axle, 1);
    await undo(page);
    await expectNoUndo(page);
    await expect(tryButton(page, OTHER)).toBeVisible();
  };
  for (const state of ['Topped out', 'Rider on board', 'Accelerating'])
    await test.step(state, () => tried(state));
});

test('a tried pair is one undo, moves the marks, and Why tells of it', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  const before = await savedDocument(page);
  await tryButton(page, OTHER).focus();
  await page.keyboard.press('Enter');
  await expect(undoButton(page)).toHaveAccessibleName(`Undo: Sprockets ${OTHER}`);
  await expect(pairRow(page, OTHER)).toContainText('On the bike');
  await expect(pairRow(page, OWN)).toContainText('Baseline');
  await expect(pairRow(page, OWN)).not.toContainText('On the bike');
  await expect(pairButton(page, OTHER)).toBeFocused();
  await expect(tryButton(page, OTHER)).toHaveCount(0);
  await page.getByText('Why', { exact: true }).click();
  expect(await why(page).getByRole('listitem').count()).toBeGreaterThan(1);
  await undo(page);
  await expectNoUndo(page);
  expect(await savedDocument(page)).toEqual(before);
});

test('pairs of one ratio are told apart in words, with their wear', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  const [front, rear] = [setup.frontTeeth + 1, (setup.rearTeeth / setup.frontTeeth) * (setup.frontTeeth + 1)];
  expect(Number.isInteger(rear)).toBe(true);
  const key = `${front}/${rear}`;
  await pairButton(page, key).focus();
  await page.keyboard.press('Enter');
  await expect(pairButton(page, key)).toHaveAttribute('aria-expanded', 'true');
  const words = plain(await sprockets(page).locator('tr.more').innerText());
  expect(words).toMatch(
    new RegExp(
      `Beside ${OWN}, the baseline’s pair on the bike as it is set: Same ratio, almost the same anti-squat \\([+−]0\\.\\d points\\)\\.`,
    ),
  );
  expect(words).toContain('Tooth wear: ');
  const told = await cell(page, key, 'antiSquat');
  expect(told.change).toContain(words.includes('anti-squat (−') ? '▼' : '▲');
});

test('filters keep what meets them, and the one that takes the last pair away can be lifted', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  // Without a press on Ranges and filters.
  await page.getByRole('checkbox', { name: 'Same ratio' }).check();
  await typeInto(page, 'Ratio within', '0');
  const same = await pairsShown(page);
  for (const key of same) {
    const [front, rear] = key.split('/').map(Number);
    expect(rear / front).toBeCloseTo(setup.rearTeeth / setup.frontTeeth, 9);
  }
  expect(same.length).toBeGreaterThan(1);
  await expect(count(page)).toHaveText(`${same.length} of 45 pairs meet the filters, topped out`);
  await openFilters(page);
  await page.getByRole('checkbox', { name: 'Chain clears' }).check();
  await typeInto(page, 'Least clearance', '150');
  await expect(count(page)).toHaveText('0 of 45 pairs meet the filters, topped out');
  await expect(sprockets(page)).toContainText('No pair is left. The filter for the chain’s clearance');
  await page.getByRole('button', { name: 'Remove this filter' }).click();
  expect(await pairsShown(page)).toEqual(same);
});

test('a chain in hand that is too short is named in the row and in words, and nothing is lost', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  await openFilters(page);
  const chains = page.getByRole('textbox', { name: 'Chains in stock, links' });
  await chains.fill('abc');
  await chains.press('Enter');
  await expect(sprockets(page).getByRole('alert')).toContainText('“abc” is not a number. Kept it empty.');
  await chains.fill('100');
  await chains.press('Enter');
  await expect(count(page)).toHaveText('0 of 45 pairs meet the filters, topped out');
  await page.getByRole('button', { name: /^Remove/ }).click();
  await page.getByRole('checkbox', { name: 'Axle within its slot only' }).uncheck();
  await chains.fill('100');
  await chains.press('Enter');
  await expect(pairRow(page, OTHER)).toContainText(
    /Does not fit: (axle .* ahead of its slot|chain too short)/,
  );
  await expect(tryButton(page, OTHER)).toHaveCount(0);
  await pairButton(page, OTHER).click();
  await expect(sprockets(page).locator('tr.more')).toContainText(
    /A chain of 100 links is too short.*With \d+.* links it fits\./,
  );
  await expectNoUndo(page);
});

test('every column sorts, and says which way', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  const heads = sprockets(page).getByRole('columnheader');
  expect(await heads.count()).toBe(8);
  for (const name of [
    'ratio',
    'chain',
    'axle back in slot',
    'wheelbase',
    'swingarm',
    'anti-squat',
    'chain clearance',
    'rear',
  ]) {
    const button = page.getByRole('button', { name: `Sort by ${name}`, exact: true });
    const head = heads.filter({ has: button });
    await button.click();
    await expect(head).toHaveAttribute('aria-sort', 'ascending');
    const rising = await pairsShown(page);
    await button.click();
    await expect(head).toHaveAttribute('aria-sort', 'descending');
    expect(await pairsShown(page)).not.toEqual(rising);
    await expect(
      sprockets(page).locator('th[aria-sort="ascending"], th[aria-sort="descending"]'),
    ).toHaveCount(1);
  }
});

test('ranges are the tuner’s own, too many pairs are refused, and below the shaft’s teeth nothing is offered', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  await chooseRange(page, [11, 12], [40, 41]);
  await page.getByRole('checkbox', { name: 'Axle within its slot only' }).uncheck();
  expect(await pairsShown(page)).toEqual(['11/40', '11/41', '12/40', '12/41']);
  await expect(pairRow(page, '11/40')).toContainText('too small for the shaft');
  await expect(tryButton(page, '11/40')).toHaveCount(0);
  await typeInto(page, 'Front from', '14');
  await expect(sprockets(page).getByRole('alert')).toContainText('from 14 down to 12');
  await page.getByRole('textbox', { name: 'Front from' }).press('Escape');
  await page.getByRole('button', { name: 'Ranges about this bike' }).click();
  expect(await pairsShown(page)).toHaveLength(45);
});

test('speed and revs follow the chosen pair, from ratios that can be typed', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  await pairButton(page, OTHER).click();
  await sprockets(page).getByText('Speed and revs').click();
  const ratio = (setup.rearTeeth + 2) / (setup.frontTeeth + 1);
  const change = 100 * (ratio / (setup.rearTeeth / setup.frontTeeth) - 1);
  await expect(sprockets(page)).toContainText(
    new RegExp(
      `engine turns ${Math.abs(change).toFixed(1)}\\s%\\s+${change > 0 ? 'faster' : 'slower'}\\s+with ${OTHER}`,
    ),
  );
  const primary = page.getByRole('textbox', { name: 'Primary ratio' });
  await primary.fill('2');
  await primary.press('Enter');
  const gears = page.getByRole('textbox', { name: 'Gearbox ratios, first gear first' });
  await gears.fill('2.5, 1');
  await gears.press('Enter');
  await expect(undoButton(page)).toHaveAccessibleName('Undo: Gearbox ratios');
  const document = await savedDocument(page);
  expect(document.bike.drive).toMatchObject({ primaryRatio: 2, gearRatios: [2.5, 1] });
  const { machine } = standing(document, 'toppedOut');
  const speed = (1000 * 60 * 2 * Math.PI * machine.rearRadius) / (2 * 1 * ratio) / 1e6;
  const rows = sprockets(page).getByRole('table', { name: 'Speed in each gear' }).getByRole('row');
  await expect(rows).toHaveCount(3);
  await expect(rows.nth(2)).toContainText(`${speed.toFixed(1)}\u00a0km/h`);
  await undo(page);
  await undo(page);
  expect((await savedDocument(page)).bike.drive).toEqual(DEMO_BIKES[0].bike.drive);
});

test('the table waits for a hand to let go, then tells of the new bike', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  const before = await cell(page, OTHER, 'swingarmAngle');
  await dragHandle(page, 'grip-shockLength', 0, -6);
  const after = await cell(page, OTHER, 'swingarmAngle');
  expect(after.figure).not.toBe(before.figure);
  await expect(count(page)).toHaveText('All 45 pairs, topped out');
  await tryButton(page, OTHER).click();
  expect(await readingText(page, 'Swingarm angle')).toBe(`${after.figure}°`);
});

test('pairs are compared with the present one when asked, and the readings of a new height go in', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  await typeInto(page, REAR_HEIGHT, '5');
  await tryButton(page, OTHER).click();
  await page.getByText('Beside present', { exact: true }).click();
  expect((await cell(page, OTHER, 'antiSquat')).change).toBe('same');
  const on = standing(await savedDocument(page), 'toppedOut');
  expect((await cell(page, OTHER, 'antiSquat')).figure).toBe(metricReading(on, 'antiSquat').toFixed(1));
  await expect(field(page, REAR_HEIGHT)).toHaveValue('5.0');
});

test('S19: nothing serious in the sprockets’ tab, in any theme', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openSprockets(page);
  await openFilters(page);
  await tryButton(page, OTHER).click();
  await sprockets(page).getByText('Speed and revs').click();
  await inEveryTheme(page, (rule) => expectNothingSerious(page, '.below', rule));
});
