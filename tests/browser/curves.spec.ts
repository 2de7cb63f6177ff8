/** The Curves tab with the mouse: the cursor and the bike, zones, bands, kept curves, and what is saved. */
import { readFileSync } from 'node:fs';
import { expect, test, type Download, type Page } from '@playwright/test';
import { decode } from 'fast-png';
import { antiSquat } from '../../src/core/readings/anti-squat.ts';
import { shockLeverage } from '../../src/core/readings/shock-leverage.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { CAUTION_ON_PICTURES } from '../../src/ui/controls/cautions.ts';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { savedDocument } from './support/bike-document.ts';
import { cursor, curves, openCurves, openStates, stateBox } from './support/curves.ts';
import {
  expectNoUndo,
  field,
  openAdjuster,
  plain,
  readingText,
  typeInto,
  undo,
  undoButton,
} from './support/panels.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { openPage } from './support/side-view.ts';

const REAR_TEETH = adjusterLabel('rearTeeth', 'chain');

/** Rear teeth of the bike that the page opens with. */
const TEETH = String(DEMO_BIKES[0].setup.rearTeeth);

async function saved(page: Page, button: string): Promise<Download> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    curves(page).getByRole('button', { name: button }).click(),
  ]);
  return download;
}

test('the cursor over an adjuster turns the adjuster and the bike, and a drag of it is one undo', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Anti-squat', REAR_TEETH);
  const before = await readingText(page, 'Anti-squat');
  await expect(cursor(page)).toHaveValue(TEETH);
  const picture = curves(page).locator('svg[role="img"]');
  const box = await picture.boundingBox();
  if (box === null) throw new Error('no chart');
  await page.mouse.move(box.x + box.width * 0.5, box.y + 60);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.6, box.y + 60, { steps: 6 });
  await page.mouse.up();
  const teeth = await cursor(page).inputValue();
  expect(Number(teeth)).toBeGreaterThan(55);
  await openAdjuster(page, REAR_TEETH);
  await expect(field(page, REAR_TEETH)).toHaveValue(teeth);
  expect(await readingText(page, 'Anti-squat')).not.toBe(before);
  await undo(page);
  await expect(cursor(page)).toHaveValue(TEETH);
  expect(await readingText(page, 'Anti-squat')).toBe(before);
  await expectNoUndo(page);
});

test('an adjuster that turns moves the cursor, and keys move the cursor', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Trail', REAR_TEETH);
  await typeInto(page, REAR_TEETH, '48');
  await expect(cursor(page)).toHaveValue('48');
  await cursor(page).focus();
  await page.keyboard.press('ArrowRight');
  await expect(field(page, REAR_TEETH)).toHaveValue('49');
  await expect(cursor(page)).toHaveAttribute('aria-valuetext', /^Rear sprocket 49.teeth: Trail /);
  await expect(undoButton(page)).toBeEnabled();
});

test('over travel the bike is read travel set by hand, with the travel of the cursor', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Anti-squat', 'Rear travel');
  await cursor(page).focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Travel set by hand' })).toBeChecked();
  const { bike, setup } = await savedDocument(page);
  expect(setup.rearTravelUsed).toBe(2);
  const on = standBike(bike, setup, 'travelByHand');
  if (!on.ok) throw new Error(on.reason);
  expect(await readingText(page, 'Anti-squat')).toContain((antiSquat.read(on) as number).toFixed(1));
});

test('zones through travel are one click away and said in words', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Trail', 'Fork travel');
  await curves(page).getByRole('button', { name: 'Zones through travel' }).click();
  await expect(curves(page).getByRole('combobox', { name: 'Reading' })).toHaveValue('antiSquat');
  const words = curves(page).getByText(
    /^The squat line runs in the lift zone from 0\.0 to .*, in the neutral zone from .*, in the squat zone from /,
  );
  await expect(words).toBeVisible();
});

test('a target band is drawn and said in words, and refuses ends the wrong way round', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Trail', REAR_TEETH);
  await curves(page).getByRole('checkbox', { name: 'Target band' }).check();
  await expect(
    curves(page)
      .getByText(/target band/)
      .first(),
  ).toBeVisible();
  const from = curves(page).getByRole('textbox', { name: 'Band from' });
  await from.fill('500');
  await from.press('Enter');
  await expect(from).toHaveAttribute('aria-invalid', 'true');
  await expect(curves(page)).toContainText('The lower end has to be below the upper one.');
});

test('a kept curve, the baseline and several ride states lie beside the present curve at once', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Anti-squat', REAR_TEETH);
  await typeInto(page, adjusterLabel('shockLength', 'chain'), '3');
  await curves(page).getByRole('button', { name: 'Keep this curve' }).click();
  await typeInto(page, adjusterLabel('shockLength', 'chain'), '6');
  await openStates(page);
  for (const state of ['Rider on board', 'Accelerating']) await stateBox(page, state).check();
  const svg = readFileSync(await (await saved(page, 'Save curves as SVG')).path(), 'utf8');
  for (const name of ['Now (topped out)', 'Kept 1', 'Rider on board', 'Accelerating', 'Baseline'])
    expect(svg).toContain(`>${name}<`);
  const dashes = (text: string) => new Set(text.match(/stroke-dasharray="[^"]+"/g));
  expect(dashes(svg).size).toBeGreaterThan(4);
  await curves(page).getByRole('button', { name: 'Drop Kept 1' }).click();
  await expect(curves(page).getByRole('button', { name: 'Drop Kept 1' })).toBeHidden();
  await stateBox(page, 'Accelerating').uncheck();
  const fewer = readFileSync(await (await saved(page, 'Save curves as SVG')).path(), 'utf8');
  expect(fewer).toContain('>Rider on board<');
  for (const name of ['Kept 1', 'Accelerating']) expect(fewer).not.toContain(`>${name}<`);
});

test('each ride state has a column in the file and in the table, as the bike reads there', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Anti-squat', REAR_TEETH);
  await openStates(page);
  for (const state of ['Rider on board', 'Mid-corner']) await stateBox(page, state).check();
  const lines = readFileSync(await (await saved(page, 'Save figures as CSV')).path(), 'utf8')
    .trimEnd()
    .split('\r\n');
  expect(lines[0]).toBe(
    'Rear sprocket [teeth],"Anti-squat, now (topped out) [%]","Anti-squat, baseline [%]","Anti-squat, rider on board [%]",' +
      '"Anti-squat, mid-corner [%]",Stands here,Why empty',
  );
  const row = (lines.find((line) => line.startsWith(`${TEETH}.0000,`)) ?? '').split(',');
  expect(row[5]).toBe('"Now (topped out); Baseline; Rider on board; Mid-corner"');
  const { bike, setup } = await savedDocument(page);
  for (const [column, state] of [
    [3, 'riderUp'],
    [4, 'midCorner'],
  ] as const) {
    const on = standBike(bike, setup, state);
    if (!on.ok) throw new Error(on.reason);
    expect(Number(row[column])).toBeCloseTo(antiSquat.read(on) as number, 3);
  }
  await curves(page).getByText('As a table').click();
  const table = curves(page).getByRole('table');
  await expect(table.getByRole('columnheader')).toHaveText([
    /^Rear sprocket/,
    /now \(topped out\)/,
    /baseline/,
    /rider on board/,
    /mid-corner/,
    'Stands here',
  ]);
  await expect(table.getByRole('row', { name: new RegExp(`^${TEETH} `) })).toContainText(
    Number(row[3]).toFixed(1),
  );
});

test('over travel each state is named at its own place, and one that does not settle with its reason', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openCurves(page, shockLeverage.label, 'Rear travel');
  await openStates(page);
  await stateBox(page, 'Rider on board').check();
  await stateBox(page, 'Accelerating').check();
  const { bike, setup } = await savedDocument(page);
  const on = standBike(bike, setup, 'riderUp');
  if (!on.ok) throw new Error(on.reason);
  await expect(curves(page)).toContainText(
    new RegExp(`Rider on board [\\d.]+ at ${on.travel.rear.toFixed(1)}.mm`),
  );
  await expect(curves(page)).toContainText(/Rider on board.*: the same line/);
  const svg = curves(page).locator('svg[role="img"]');
  await expect(svg.getByText('Rider on board', { exact: true })).toHaveCount(2);
  await typeInto(page, adjusterLabel('acceleration', 'chain'), '1.5');
  await expect(curves(page)).toContainText('Accelerating: cannot stand like this.');
  await expect(svg.getByText('Accelerating', { exact: true })).toHaveCount(1);
});

test('as many lines as can be told apart, and words where no more fit', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Trail', REAR_TEETH);
  await curves(page).getByRole('button', { name: 'Keep this curve' }).click();
  await openStates(page);
  for (const state of ['No rider', 'Rider on board', 'Accelerating', 'Braking', 'Mid-corner'])
    await stateBox(page, state).check();
  await expect(stateBox(page, 'Travel set by hand')).toBeDisabled();
  await expect(curves(page).getByRole('button', { name: 'Keep this curve' })).toBeDisabled();
  await expect(curves(page)).toContainText('No more lines beside Now and the baseline');
  await stateBox(page, 'Rider on board').uncheck();
  await expect(stateBox(page, 'Travel set by hand')).toBeEnabled();
});

test('figures are saved with units in the head, and the picture at the size chosen with bike, day, units and caution', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Anti-squat', REAR_TEETH);
  const download = await saved(page, 'Save figures as CSV');
  expect(download.suggestedFilename()).toMatch(/anti-squat\.csv$/);
  const lines = readFileSync(await download.path(), 'utf8')
    .trimEnd()
    .split('\r\n');
  expect(lines[0]).toBe(
    'Rear sprocket [teeth],"Anti-squat, now [%]","Anti-squat, baseline [%]",Stands here,Why empty',
  );
  const row = lines.find((line) => line.startsWith(`${TEETH}.0000,`));
  expect(plain(await readingText(page, 'Anti-squat'))).toContain(Number(row?.split(',')[1]).toFixed(1));
  // At the size chosen, read by a decoder that is not the browser's: the curves, and below them two lines of words.
  await curves(page).getByLabel('Size of pictures').selectOption('1280');
  const picture = decode(readFileSync(await (await saved(page, 'Save curves as PNG')).path()));
  const ratio = 1280 / 960;
  expect([picture.width, picture.height]).toEqual([1280, Math.round(ratio * (540 + 2.5 * 15))]);
  const rows = Array.from(
    { length: picture.height },
    (_, y) =>
      new Set(picture.data.subarray(y * 1280 * picture.channels, (y + 1) * 1280 * picture.channels)).size,
  );
  for (const line of [1, 2]) expect(rows[Math.round(ratio * (540 + line * 15 - 4))]).toBeGreaterThan(8);
  const svg = readFileSync(await (await saved(page, 'Save curves as SVG')).path(), 'utf8');
  expect(svg).toContain('<svg xmlns="http://www.w3.org/2000/svg" width="1280"');
  expect(svg).toMatch(
    />Road sport, as delivered\. Anti-squat \[%\] against .*\. Lengths in mm, angles in degrees\. /,
  );
  expect(svg).toContain(`>${CAUTION_ON_PICTURES}</text>`);
});

test('the curve is a table too', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Anti-squat', 'Rear travel');
  await curves(page).getByText('As a table').click();
  const table = curves(page).getByRole('table', { name: /^Anti-squat \[%\] against rear travel \[mm\]/ });
  await expect(table.getByRole('row')).toHaveCount(14);
  await expect(table.getByRole('rowheader').first()).toHaveText('0.0');
});

test('S19: nothing serious on the Curves tab with outlines of states and the table, in any theme', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await openCurves(page, 'Anti-squat', 'Rear travel');
  await openStates(page);
  for (const state of ['Rider on board', 'Accelerating', 'Mid-corner']) await stateBox(page, state).check();
  await curves(page).getByText('As a table').click();
  await inEveryTheme(page, (rule) => expectNothingSerious(page, undefined, rule));
});
