/** Ride states and the corner sequence under fingers on a phone. */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { RIDE_STATES } from '../../src/core/riding/states/all-ride-states.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { FIRST_READINGS } from '../../src/session/preferences.svelte.ts';
import { savedDocument, standing, writtenReading } from './support/bike-document.ts';
import { fingersOn, slide } from './support/fingers.ts';
import { plain, readingText, startDemo } from './support/panels.ts';
import { openRide, ride, rideRow, cornerSlider } from './support/ride.ts';
import { openPage } from './support/side-view.ts';
import { pictureText, wordsOf } from './support/side-view-picture.ts';

/** Least size of what a finger presses, px. */
const TARGET_PX = 44;

const stateList = (page: Page): Locator => page.getByRole('combobox', { name: 'Ride state' });

test('all ride states are in one list, which is large enough for a finger', async ({ page }) => {
  await openPage(page);
  await page.getByText('Readings', { exact: true }).first().tap();
  const list = stateList(page);
  const box = await list.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(TARGET_PX);
  expect((box?.x ?? 0) + (box?.width ?? Infinity)).toBeLessThanOrEqual(390);
  for (const { key, label } of RIDE_STATES) {
    await list.selectOption({ label });
    await expect(list).toHaveValue(key);
  }
});

test('each state read on a phone has the figures that the core computes', async ({ page }) => {
  await openPage(page);
  await startDemo(page, 'Long-travel off-road');
  const saved = await savedDocument(page);
  await page.getByText('Readings', { exact: true }).first().tap();
  for (const { key: state, label: name } of RIDE_STATES) {
    await stateList(page).selectOption({ label: name });
    const stance = standing(saved, state);
    for (const { key, label } of READINGS.filter((reading) => FIRST_READINGS.includes(reading.key)))
      expect(`${state} ${label} ${await readingText(page, label)}`).toBe(
        `${state} ${label} ${plain(writtenReading(stance, key))}`,
      );
  }
});

test('a tap on a row shows its state, one on its box an outline, and the page does not grow wider', async ({
  page,
}) => {
  await openPage(page);
  await openRide(page);
  await rideRow(page, 'No rider').getByRole('cell').nth(1).tap();
  await expect(rideRow(page, 'No rider')).toHaveAttribute('aria-current', 'true');
  const box = ride(page).getByRole('checkbox', { name: 'Outline of Rider on board on the side view' });
  const target = await box.locator('..').boundingBox();
  expect(Math.min(target?.width ?? 0, target?.height ?? 0)).toBeGreaterThanOrEqual(TARGET_PX);
  await box.tap();
  // The tap on the box is the box's alone.
  await expect(rideRow(page, 'No rider')).toHaveAttribute('aria-current', 'true');
  expect(wordsOf(await pictureText(page))).toContain('Rider on board');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});

test('a finger slides the corner sequence along, and a tap ends it', async ({ page }) => {
  await openPage(page);
  await openRide(page, 'Corner');
  await cornerSlider(page).scrollIntoViewIfNeeded();
  const box = await cornerSlider(page).boundingBox();
  if (box === null) throw new Error('the slider is not on the page');
  const fingers = await fingersOn(page);
  const y = box.y + box.height / 2;
  // The thumb waits at the beginning, where the bike brakes.
  await slide(fingers, { x: box.x + 12, y }, { x: box.x + box.width * 0.95, y });
  await fingers.lift();
  const at = Number(await cornerSlider(page).inputValue());
  expect(at).toBeGreaterThan(60);
  await expect(rideRow(page, 'Corner sequence')).toBeVisible();
  await page.getByRole('button', { name: 'End the corner sequence' }).tap();
  await expect(rideRow(page, 'Corner sequence')).toHaveCount(0);
});
