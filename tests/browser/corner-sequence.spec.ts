/** The corner sequence from braking to the exit, by mouse and keys, played, and in steps for those who want no motion. */
import { expect, test, type Page } from '@playwright/test';
import { machine } from '../../src/core/standing/machine.ts';
import { cornerSequenceCase } from '../../src/core/riding/states/corner-sequence.ts';
import { standRide } from '../../src/core/riding/stand-bike.ts';
import { savedDocument, writtenReading } from './support/bike-document.ts';
import { field, plain, readingText, REAR_HEIGHT, typeInto } from './support/panels.ts';
import {
  chooseState,
  openRide,
  rideCell,
  rideRow,
  rideSentenceOn,
  rideStates,
  cornerSlider,
} from './support/ride.ts';
import { openPage } from './support/side-view.ts';
import { layerOf, pictureText } from './support/side-view-picture.ts';

/** Readings in the three named states, as the page writes them. */
async function trails(page: Page): Promise<string[]> {
  const all: string[] = [];
  for (const state of ['Braking', 'Mid-corner', 'Accelerating']) {
    await chooseState(page, state);
    all.push(await readingText(page, 'Trail'));
  }
  await chooseState(page, 'Rider on board');
  return all;
}

test('the slider takes Stand, Readings and table along, and its ends and middle are the named states', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '4');
  const named = await trails(page);
  await openRide(page, 'Corner');
  for (const [i, at] of ['0', '50', '100'].entries()) {
    await cornerSlider(page).fill(at);
    expect(await readingText(page, 'Trail')).toBe(named[i]);
  }
  const { bike, setup } = await savedDocument(page);
  const made = machine(bike, setup);
  let picture = '';
  for (const percent of [10, 35, 80]) {
    await cornerSlider(page).fill(String(percent));
    const on = made.ok ? standRide(made, cornerSequenceCase(percent / 100, setup)) : made;
    if (!on.ok) throw new Error(on.reason);
    for (const [key, label] of [
      ['trail', 'Trail'],
      ['rake', 'Rake'],
      ['antiSquat', 'Anti-squat'],
    ] as const)
      expect(await readingText(page, label)).toBe(plain(writtenReading(on, key)));
    expect(await rideCell(page, 'Corner sequence', 'Trail')).toContain(
      (await readingText(page, 'Trail')).replace(' mm', ''),
    );
    expect(await rideSentenceOn(page)).toMatch(
      new RegExp(`^${percent} % of the way from braking to the exit\\.`),
    );
    const now = layerOf(await pictureText(page), 'bike');
    expect(now).not.toBe(picture);
    picture = now;
  }
  await expect(rideStates(page).locator('input:checked')).toHaveCount(0);
});

test('the mouse pulls the slider, arrow keys move it, Escape ends it where it began', async ({ page }) => {
  await openPage(page);
  await chooseState(page, 'Rider on board');
  const trail = await readingText(page, 'Trail');
  await openRide(page, 'Corner');
  const box = await cornerSlider(page).boundingBox();
  if (box === null) throw new Error('the slider is not on the page');
  await page.mouse.move(box.x + box.width * 0.1, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.3, box.y + box.height / 2, { steps: 5 });
  await page.mouse.up();
  const at = Number(await cornerSlider(page).inputValue());
  expect(at).toBeGreaterThan(20);
  expect(at).toBeLessThan(40);
  expect(await readingText(page, 'Trail')).not.toBe(trail);
  await page.keyboard.press('ArrowRight');
  await expect(cornerSlider(page)).toHaveValue(String(at + 1));
  await expect(cornerSlider(page)).toHaveAttribute(
    'aria-valuetext',
    new RegExp(`^${at + 1} % of the way: leaned`),
  );
  await page.keyboard.press('Escape');
  await expect(rideStates(page).getByRole('radio', { name: 'Rider on board' })).toBeChecked();
  expect(await readingText(page, 'Trail')).toBe(trail);
  // Choosing a state ends it too, even the one that it began from.
  await cornerSlider(page).fill('70');
  await chooseState(page, 'Rider on board');
  expect(await readingText(page, 'Trail')).toBe(trail);
  await expect(rideRow(page, 'Corner sequence')).toHaveCount(0);
});

test('adjusters turn while the bike rolls, and Escape in a field leaves the corner sequence where it is', async ({
  page,
}) => {
  await openPage(page);
  await openRide(page, 'Corner');
  await cornerSlider(page).fill('30');
  const trail = await readingText(page, 'Trail');
  await typeInto(page, REAR_HEIGHT, '8');
  expect(await readingText(page, 'Trail')).not.toBe(trail);
  await field(page, REAR_HEIGHT).fill('11');
  await field(page, REAR_HEIGHT).press('Escape');
  await expect(rideRow(page, 'Corner sequence')).toBeVisible();
});

test('played, it takes four seconds from braking to the gas, once', async ({ page }) => {
  await page.clock.install();
  await openPage(page);
  await openRide(page, 'Corner');
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);
  await page.getByRole('button', { name: 'Play the corner sequence' }).click();
  const seen: number[] = [];
  for (let tenth = 0; tenth < 45; tenth++) {
    await page.clock.runFor(100);
    seen.push(Number(await cornerSlider(page).inputValue()));
  }
  expect(new Set(seen).size).toBeGreaterThan(30);
  for (const [i, at] of seen.slice(1).entries()) expect(at).toBeGreaterThanOrEqual(seen[i]);
  const halfway = seen.findIndex((at) => at >= 50);
  expect(halfway).toBeGreaterThanOrEqual(18);
  expect(halfway).toBeLessThanOrEqual(22);
  expect(seen.at(-1)).toBe(100);
  await expect(page.getByRole('button', { name: 'Play the corner sequence' })).toBeVisible();
  await page.clock.runFor(5000);
  await expect(cornerSlider(page)).toHaveValue('100');
});

test('with reduced motion it shows the named places in turn', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.clock.install();
  await openPage(page);
  await openRide(page, 'Corner');
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);
  await page.getByRole('button', { name: 'Play the corner sequence' }).click();
  const seen = new Set<string>();
  for (let tenth = 0; tenth < 45; tenth++) {
    await page.clock.runFor(100);
    const at = await cornerSlider(page).inputValue();
    if ((await rideRow(page, 'Corner sequence').count()) > 0) seen.add(at);
  }
  expect([...seen]).toEqual(['0', '25', '50', '100']);
});

test('a place of the corner sequence that cannot be says why and keeps the picture', async ({ page }) => {
  await openPage(page);
  await typeInto(page, 'Acceleration', '1.5');
  await openRide(page, 'Corner');
  await cornerSlider(page).fill('60');
  const before = layerOf(await pictureText(page), 'bike');
  await cornerSlider(page).fill('99');
  await expect(rideRow(page, 'Corner sequence')).toContainText('the front wheel lifts');
  expect(layerOf(await pictureText(page), 'bike') === before, 'the same picture').toBe(true);
});
