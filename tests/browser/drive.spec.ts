/** Chain, belt, shaft and hub, both kinds of braking, and the clearances at the fork, on the page. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { expectNothingSerious } from './support/axe.ts';
import { savedDocument, standing, writtenReading } from './support/bike-document.ts';
import {
  adjusterGroup,
  openAdjuster,
  field,
  FRONT_HEIGHT,
  liveRegion,
  readingLine,
  readings,
  readingText,
  REAR_HEIGHT,
  typeInto,
  undo,
  why,
} from './support/panels.ts';
import { layerOf, pictureText, wordsOf } from './support/side-view-picture.ts';
import { chooseMode, handle, openPage, sideView } from './support/side-view.ts';

const SHAFT = fileURLToPath(new URL('../../fixtures/bikes/shaft.json', import.meta.url));

async function openShaft(page: Page): Promise<void> {
  await openPage(page);
  const file = { name: 'shaft.json', mimeType: 'application/json', buffer: readFileSync(SHAFT) };
  await page.getByLabel('Bike file', { exact: true }).setInputFiles(file);
  const said = page.getByRole('status').filter({ hasText: 'Opened shaft.json' });
  await said.getByRole('button', { name: 'Dismiss' }).click();
}

async function showAllReadings(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Choose readings' }).click();
  await readings(page)
    .getByRole('button', { name: /^Show all/ })
    .click();
  await readings(page).getByRole('button', { name: 'Done' }).click();
}

async function ride(page: Page, state: string): Promise<void> {
  await page.getByRole('group', { name: 'Ride state' }).getByText(state, { exact: true }).click();
}

async function openGroup(page: Page, name: string): Promise<void> {
  await page.locator('.bike').getByText(name, { exact: true }).click();
}

test('the engine-braking line is drawn while its reading is chosen, and named with its number', async ({
  page,
}) => {
  await openPage(page);
  await showAllReadings(page);
  await ride(page, 'Rider on board');
  const before = await pictureText(page);
  expect(wordsOf(before).join()).not.toContain('Engine-braking');
  await readingLine(page, 'Engine braking, anti-rise').click();
  const lit = await pictureText(page);
  const number = await readingText(page, 'Engine braking, anti-rise');
  expect(wordsOf(lit)).toContain(`Engine-braking line, anti-rise ${number}`);
  const lines = (picture: string) => layerOf(picture, 'construction').split('<path').length;
  // The line, the lower run and the swingarm carried on to where they cross.
  expect(lines(lit)).toBeGreaterThanOrEqual(lines(before) + 3);
  const saved = await savedDocument(page);
  expect(number).toBe(writtenReading(standing(saved, 'riderUp'), 'engineBraking').replace(/\s/g, ' '));
  await readingLine(page, 'Engine braking, anti-rise').click();
  expect(wordsOf(await pictureText(page)).join()).not.toContain('Engine-braking');
});

test('a caliper put on a bracket with a stay has fields for the stay, is drawn with it and changes the brake’s anti-rise', async ({
  page,
}) => {
  await openPage(page);
  await showAllReadings(page);
  await chooseMode(page, 'Edit');
  await openGroup(page, 'Rear brake');
  await expect(field(page, 'Bracket radius')).toBeHidden();
  const onArm = await readingText(page, 'Rear brake, anti-rise');
  await page
    .getByRole('combobox', { name: 'Rear caliper' })
    .selectOption({ label: 'On a bracket with a brake stay' });
  await page.getByRole('combobox', { name: 'Bracket’s bolt' }).selectOption({ index: 1 });
  await typeInto(page, 'Brake stay’s length', '525');
  await typeInto(page, 'Brake stay’s anchor, above the pivot', '-70');
  await readingLine(page, 'Rear brake, anti-rise').click();
  const number = await readingText(page, 'Rear brake, anti-rise');
  expect(number).not.toBe(onArm);
  const words = wordsOf(await pictureText(page));
  expect(words).toContain(`Rear-brake line, anti-rise ${number}`);
  expect(words).toContain('Caliper’s stay');
  const { rearBrake } = (await savedDocument(page)).bike;
  expect(rearBrake).toMatchObject({ caliper: 'ownStay', bracketSide: 'below', stayLength: 525 });
  await expectNothingSerious(page, 'main');
  await typeInto(page, 'Brake stay’s length', '5');
  await expect(readingLine(page, 'Rear brake, anti-rise').locator('.change')).toContainText('reach');
  for (let step = 0; step < 5; step++) await undo(page);
  await expect(field(page, 'Bracket radius')).toBeHidden();
  expect(await readingText(page, 'Rear brake, anti-rise')).toBe(onArm);
});

test('a shaft bike has no sprockets, no adjusters of a chain and no readings of a run, and Why speaks of none', async ({
  page,
}) => {
  await openShaft(page);
  await showAllReadings(page);
  await expect(handle(page, 'grip-axlePosition')).toHaveCount(0);
  await expect(handle(page, 'point-countershaft')).toHaveCount(0);
  await page.getByRole('button', { name: 'Open all adjusters' }).click();
  await expect(field(page, adjusterLabel('frontTravelUsed', 'chain'))).toBeVisible();
  await expect(page.getByRole('group', { name: 'Chain length' })).toHaveCount(0);
  await expect(adjusterGroup(page, 'Gearing and axle')).toHaveCount(0);
  for (const label of ['Front sprocket', 'Rear sprocket', 'Axle position', 'Chain slack'])
    await expect(field(page, label)).toHaveCount(0);
  for (const label of ['Upper-run angle', 'Final drive ratio', 'Anti-squat, chain’s part'])
    await expect(readingLine(page, label).locator('.change')).toHaveText(
      'a shaft or hub drive has no chain run',
    );
  expect(await readingText(page, 'Anti-squat')).toBe(await readingText(page, 'Anti-squat, swingarm’s part'));
  await typeInto(page, REAR_HEIGHT, '10');
  await expect(why(page)).toContainText('All from the shock');
  expect(await why(page).locator('li').allInnerTexts()).not.toEqual([]);
  expect((await why(page).locator('ul').innerText()).toLowerCase()).not.toMatch(/chain|sprocket/);
  await expectNothingSerious(page, 'main');
});

test('the kind of drive is chosen in the Bike panel, asks for what it has, and one undo takes it back', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await openGroup(page, 'Drive');
  const kind = page.getByRole('combobox', { name: 'Kind of drive' });
  await expect(kind.locator('option:checked')).toHaveText('Chain');
  await page.getByRole('checkbox', { name: 'A half link may be put in' }).check();
  expect((await savedDocument(page)).bike.drive.halfLink).toBe(true);
  await kind.selectOption({ label: 'Toothed belt' });
  await expect(page.getByRole('checkbox', { name: 'A half link may be put in' })).toBeHidden();
  await expect(field(page, 'Belt pitch')).toBeVisible();
  await kind.selectOption({ label: 'Motor in the rear wheel' });
  await expect(field(page, 'Belt pitch')).toBeHidden();
  await expect(page.getByRole('group', { name: 'Gear ratios' })).toBeHidden();
  await expect(liveRegion(page)).not.toBeEmpty();
  expect((await savedDocument(page)).bike.drive.kind).toBe('hub');
  await expectNothingSerious(page, 'main');
  await undo(page);
  await expect(kind.locator('option:checked')).toHaveText('Toothed belt');
});

test('a belt is called a belt wherever it is spoken of, and counted in its teeth', async ({ page }) => {
  await openPage(page);
  await showAllReadings(page);
  await ride(page, 'Rider on board');
  await chooseMode(page, 'Edit');
  await openGroup(page, 'Drive');
  await page.getByRole('combobox', { name: 'Kind of drive' }).selectOption({ label: 'Toothed belt' });
  await expect(field(page, 'Belt pitch')).toBeVisible();
  await chooseMode(page, 'Adjusters');
  await openAdjuster(page, adjusterLabel('chainSlack', 'chain'));
  await expect(field(page, 'Belt slack')).toBeVisible();
  await typeInto(page, 'Belt slack', '20');
  await expect(page.getByRole('banner').getByRole('button', { name: 'Undo: Belt slack' })).toBeVisible();
  await typeInto(page, 'Axle position', '20');
  await expect(page.locator('[data-adjuster="axlePosition"]')).toContainText(/\d\steeth/);
  await expect(readingLine(page, 'Anti-squat, belt’s part')).toBeVisible();
  await readings(page).getByRole('button', { name: 'Lower-run angle: what it means' }).click();
  await expect(readings(page)).toContainText('Slope of the belt’s lower run');
  const below = page.getByRole('group', { name: 'Below the side view' });
  await below.getByText('Belt', { exact: true }).click();
  await expect(page.getByRole('region', { name: 'Belt', exact: true })).toContainText('toothed belt');
  await below.getByText('Sprockets', { exact: true }).click();
  const table = page.getByRole('region', { name: 'Sprockets', exact: true });
  await table.getByRole('button', { name: 'Ranges and filters' }).click();
  await expect(table.getByRole('button', { name: 'Sort by belt', exact: true })).toContainText('teeth');
  await expect(page.getByRole('textbox', { name: 'Belts in stock, teeth' })).toBeVisible();
  await expect(table.getByRole('checkbox', { name: 'Half link allowed' })).toHaveCount(0);
  await typeInto(page, 'Belts in stock, teeth', '60');
  await table.getByRole('checkbox', { name: 'Axle within its slot only' }).uncheck();
  await table.locator('tbody th button[aria-expanded]').first().click();
  await expect(table.locator('tr.more')).toContainText('A belt of 60 teeth is too short');
  // What stays of the word is the kind that can be chosen and what to check before riding.
  for (const part of ['.left', '.below', '.readings'])
    expect((await page.locator(part).innerText()).match(/chain\w*/gi) ?? []).toEqual([]);
  await expectNothingSerious(page, 'main');
});

test('gears are added, typed and taken away as a list', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await openGroup(page, 'Drive');
  const gears = page.getByRole('group', { name: 'Gear ratios' });
  const before = (await savedDocument(page)).bike.drive.gearRatios;
  await gears.getByRole('button', { name: 'Add a gear' }).click();
  await typeInto(page, `Gear ${before.length + 1}`, '1.05');
  await gears.getByRole('button', { name: 'Remove gear 1' }).click();
  expect((await savedDocument(page)).bike.drive.gearRatios).toEqual([...before.slice(1), 1.05]);
  await typeInto(page, 'Gear 1', '-3');
  await expect(field(page, 'Gear 1')).toHaveAttribute('aria-invalid', 'true');
  expect((await savedDocument(page)).bike.drive.gearRatios[0]).toBe(before[1]);
});

test('a front tyre that would meet the lower clamp is warned of with its number, until there is room again', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await openGroup(page, 'Fork');
  await typeInto(page, 'Lower clamp’s underside', '260');
  await chooseMode(page, 'Adjusters');
  const cautions = page.getByRole('complementary', { name: 'Cautions' });
  await typeInto(page, FRONT_HEIGHT, '20');
  const warning = cautions.getByRole('alert');
  await expect(warning).toContainText(
    /Warning, Tyre clearance to lower clamp \[bottom yoke\], fork bottomed −[\d.]+\smm\./u,
  );
  await expect(page.locator('section.side-view > .foot [role="alert"]')).toContainText('the tyre hits it');
  await typeInto(page, FRONT_HEIGHT, '0');
  await expect(warning).toBeEmpty();
});

test('a torque arm and a travel table read within a ± are entered on the page, which keeps the bike where either cannot be', async ({
  page,
}) => {
  await openShaft(page);
  await showAllReadings(page);
  await chooseMode(page, 'Edit');
  const alert = sideView(page).getByRole('alert');
  const onArm = await readingText(page, 'Anti-squat');
  await openGroup(page, 'Shaft’s housing');
  await page
    .getByRole('combobox', { name: 'Housing held by' })
    .selectOption({ label: 'A torque arm to the frame' });
  await expect(field(page, 'Torque arm’s length')).toBeVisible();
  const held = await readingText(page, 'Anti-squat');
  expect(held).not.toBe(onArm);
  await typeInto(page, 'Torque arm’s length', '5');
  await expect(alert).toContainText('the torque arm cannot reach');
  expect(await readingText(page, 'Anti-squat')).toBe(held);
  await undo(page);
  await expect(alert).toBeHidden();
  await page
    .getByRole('combobox', { name: 'Housing’s bolt' })
    .selectOption({ label: 'Above the line to the frame’s bolt' });
  expect((await savedDocument(page)).bike.housing).toMatchObject({ heldBy: 'torqueArm', boltSide: 'above' });

  await openGroup(page, 'Rear suspension');
  await page.getByRole('combobox', { name: 'Layout' }).selectOption({ label: 'Travel table' });
  await openGroup(page, 'Swingarm');
  const table = page.getByRole('group', { name: 'Travel table' });
  await expect(table).toContainText('The rows count as exact');
  await typeInto(page, 'All rows: wheel travel ±', '0.5');
  await typeInto(page, 'All rows: shock stroke ±', '0.25');
  await expect(table).toContainText(/The motion ratio is known to ±[\d.]+\s%/);
  await expect(table).toContainText('Rear suspension, Layout');
  const { travelTable } = (await savedDocument(page)).bike.swingarm;
  for (const row of travelTable)
    expect(row).toMatchObject({ wheelTravelPlusMinus: 0.5, shockStrokePlusMinus: 0.25 });
  const rake = await readingText(page, 'Rake');
  await typeInto(page, 'Row 2: wheel travel', '-10');
  await expect(alert).toContainText('travel table cannot be used');
  expect(await readingText(page, 'Rake')).toBe(rake);
  await undo(page);
  await expect(alert).toBeHidden();
  await expectNothingSerious(page, 'main');
});
