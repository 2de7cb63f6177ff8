/** The main job: raise one end at an adjuster and see what the steering and the rear end make of it, and why. */
import { expect, test } from '@playwright/test';
import { rideStateOf } from '../../src/core/riding/states/all-ride-states.ts';
import { READING_GROUPS } from '../../src/core/readings/all-readings.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { FIRST_READINGS } from '../../src/session/preferences.svelte.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import {
  metricReading,
  savedDocument,
  savedText,
  sentencesOf,
  standing,
  writtenReading,
} from './support/bike-document.ts';
import {
  changeText,
  escaped,
  expectNoUndo,
  FRONT_HEIGHT,
  plain,
  readingLine,
  readings,
  readingText,
  REAR_HEIGHT,
  startDemo,
  typeInto,
  undoButton,
  why,
} from './support/panels.ts';
import { drawn, handle, openPage } from './support/side-view.ts';
import { layerOf, pictureText } from './support/side-view-picture.ts';

test(
  'a demonstration bike stands at once, said to be invented, with readings of every group',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    await expect(page.getByText('Invented figures')).toBeVisible();
    for (const { label } of READING_GROUPS)
      await expect(readings(page).getByRole('heading', { name: label })).toBeVisible();
    for (const reading of READINGS.filter(({ key }) => FIRST_READINGS.includes(key)))
      await expect(readingLine(page, reading.label)).toBeVisible();
    expect(layerOf(await pictureText(page), 'bike').length).toBeGreaterThan(1000);
    await expectNoUndo(page);
  },
);

test('10 mm more at the shock quicken the steering and steepen the swingarm, and the page says why', async ({
  page,
}) => {
  await openPage(page);
  const first = await savedDocument(page);
  const before = standing(first);
  expect(layerOf(await pictureText(page), 'shadow')).toBe('');
  await typeInto(page, REAR_HEIGHT, '10');
  const second = await savedDocument(page);
  const after = standing(second);

  expect(metricReading(after, 'rake')).toBeLessThan(metricReading(before, 'rake'));
  expect(metricReading(after, 'trail')).toBeLessThan(metricReading(before, 'trail'));
  expect(metricReading(after, 'swingarmAngle')).toBeGreaterThan(metricReading(before, 'swingarmAngle'));
  for (const [label, sign] of [
    ['Rake', '▼ −'],
    ['Trail', '▼ −'],
    ['Swingarm angle', '▲ +'],
  ] as const)
    expect((await changeText(page, label)).startsWith(sign), label).toBe(true);
  expect(await changeText(page, 'Trail')).toContain('quicker steering');

  const sentences = sentencesOf(first, second).map(({ text }) => text);
  expect(sentences).toHaveLength(5);
  expect((await why(page).getByRole('listitem').allInnerTexts()).map(plain)).toEqual(sentences);
  expect(sentences.every((text) => !text.includes(' from '))).toBe(true);
  await expect(why(page)).toContainText(/the steering turns quicker\. All from the shock\./);
  await why(page).locator('label', { hasText: 'By mechanism' }).click();
  await expect(why(page)).toContainText('all from the frame’s pitch');
  const tabs = page.getByRole('group', { name: 'Below the side view' });
  await tabs.getByText('Ride', { exact: true }).click();
  await expect(why(page)).toBeHidden();
  await tabs.getByText('Why', { exact: true }).click();
  await expect(why(page)).toContainText('all from the frame’s pitch');
  expect(layerOf(await pictureText(page), 'shadow')).toContain('<path');
});

test(
  'an adjuster goes back to the baseline by its own button, and the document is as it was',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    const first = await savedText(page);
    await typeInto(page, REAR_HEIGHT, '10');
    await typeInto(page, FRONT_HEIGHT, '12');
    await page.getByRole('button', { name: new RegExp(`^${escaped(REAR_HEIGHT)}.*baseline`) }).click();
    await expect(page.getByRole('textbox', { name: REAR_HEIGHT })).toHaveValue('0.0');
    await expect(page.getByRole('textbox', { name: FRONT_HEIGHT })).toHaveValue('12.0');
    await page.getByRole('button', { name: 'All to baseline' }).click();
    expect(await changeText(page, 'Trail')).toBe('same');
    expect(await savedText(page)).toBe(first);
  },
);

test(
  'setting the baseline takes all differences away and keeps the bike as it stands',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    await typeInto(page, REAR_HEIGHT, '10');
    const trail = await readingText(page, 'Trail');
    await page.getByRole('button', { name: 'Set as baseline' }).click();
    for (const change of await readings(page).locator('li .change').all())
      await expect(change).toHaveText('same');
    expect(await readingText(page, 'Trail')).toBe(trail);
    expect(layerOf(await pictureText(page), 'shadow')).toBe('');
    await expect(why(page).getByRole('listitem')).toHaveCount(0);
    await expect(undoButton(page)).toHaveAccessibleName('Undo: Set as baseline');
  },
);

test('every reading on the page is the one that the core computes, in three ride states', async ({
  page,
}) => {
  await openPage(page);
  for (const { bike } of DEMO_BIKES) {
    await startDemo(page, bike.name);
    await typeInto(page, REAR_HEIGHT, '6');
    await typeInto(page, FRONT_HEIGHT, '9');
    const saved = await savedDocument(page);
    for (const state of ['riderUp', 'toppedOut', 'travelByHand'] as const) {
      const { label: name } = rideStateOf(state);
      await page.getByRole('radio', { name, exact: true }).check({ force: true });
      await drawn(page);
      const stance = standing(saved, state);
      for (const { key, label } of READINGS.filter((reading) => FIRST_READINGS.includes(reading.key)))
        expect(`${bike.name}, ${name}: ${label} ${await readingText(page, label)}`).toBe(
          `${bike.name}, ${name}: ${label} ${plain(writtenReading(stance, key))}`,
        );
    }
  }
  await expect(handle(page, 'point-pivot')).toBeAttached();
});
