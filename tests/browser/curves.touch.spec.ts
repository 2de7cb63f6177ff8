/** The Curves tab under a finger. */
import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { fingersOn, slide } from './support/fingers.ts';
import { cursor, curves, openCurves, openStates, stateBox } from './support/curves.ts';
import { savedDocument, standing } from './support/bike-document.ts';
import { apart, middleOf, openPage } from './support/side-view.ts';
import { choosePanel, trackOf } from './support/touch.ts';

test('a finger chooses a curve and moves the bike along it, and nothing lies beside the screen', async ({
  page,
}) => {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openCurves(page, 'Anti-squat', 'Rear travel');
  const picture = curves(page).locator('svg[role="img"]');
  await picture.scrollIntoViewIfNeeded();
  const box = await picture.boundingBox();
  if (box === null) throw new Error('no chart');
  await page.touchscreen.tap(box.x + box.width * 0.6, box.y + 60);
  await expect(cursor(page)).not.toHaveValue('0');
  expect(Number(await cursor(page).inputValue())).toBeGreaterThan(40);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  for (const button of await curves(page).getByRole('button').all()) {
    if (!(await button.isVisible())) continue;
    const size = await button.boundingBox();
    expect(size?.height, (await button.textContent()) ?? '').toBeGreaterThanOrEqual(44);
  }
});

test('two ride states by finger, a drag of the cursor that moves the side view, and the figures saved', async ({
  page,
}) => {
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openCurves(page, 'Trail', 'Rear travel');
  await openStates(page);
  for (const state of ['Rider on board', 'Accelerating']) {
    const box = await stateBox(page, state).locator('..').boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(44);
    await stateBox(page, state).tap();
    await expect(stateBox(page, state)).toBeChecked();
  }
  const { thumb } = await trackOf(cursor(page));
  const box = await curves(page).locator('svg[role="img"]').boundingBox();
  if (box === null) throw new Error('no chart');
  const before = await middleOf(page, 'grip-shockLength');
  const y = box.y + box.height - 80;
  const fingers = await fingersOn(page);
  // The line that marks the place stands over the thumb.
  await slide(fingers, { x: thumb.x, y }, { x: thumb.x + box.width * 0.5, y }, 8);
  expect(apart(await middleOf(page, 'grip-shockLength'), before)).toBeGreaterThan(3);
  await fingers.lift();
  const at = Number(await cursor(page).inputValue());
  expect(at).toBeGreaterThan(60);
  const document = await savedDocument(page);
  expect(document.setup.rearTravelUsed).toBe(at);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    curves(page).getByRole('button', { name: 'Save figures as CSV' }).tap(),
  ]);
  const [head, ...rows] = readFileSync(await download.path(), 'utf8')
    .trimEnd()
    .split('\r\n');
  expect(head).toContain('"Trail, now (travel set by hand) [mm]"');
  for (const name of ['rider on board', 'accelerating']) expect(head).toContain(`"Trail, ${name} [mm]"`);
  const riderUp = standing(document, 'riderUp');
  const here = rows.find((row) => /Rider on board/.test(row)) ?? '';
  expect(Number(here.split(',')[0])).toBeCloseTo(riderUp.travel.rear, 3);
});
