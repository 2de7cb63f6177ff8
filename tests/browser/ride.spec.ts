/** Ride states on the page: the choice, the table, sag, gas and brakes, ghosts, and what cannot be. */
import { expect, test } from '@playwright/test';
import { rideFigures } from '../../src/core/effects/ride-table.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { RIDE_STATES } from '../../src/core/riding/states/all-ride-states.ts';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { writeNumber, type NumberStyle } from '../../src/core/units/number-style.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { FIRST_READINGS } from '../../src/session/preferences.svelte.ts';
import { METRIC, savedDocument, savedText, standing, writtenReading } from './support/bike-document.ts';
import { expectBike } from './support/bikes.ts';
import {
  expectNoUndo,
  field,
  plain,
  readingText,
  REAR_HEIGHT,
  startDemo,
  typeInto,
  undoButton,
} from './support/panels.ts';
import {
  chooseState,
  openRide,
  ride,
  rideCell,
  rideRow,
  rideSentenceOn,
  rideStates,
} from './support/ride.ts';
import { chooseMode, drawn, middleOf, openPage, sideView } from './support/side-view.ts';
import { inkOf, layerOf, pictureText, wordsOf } from './support/side-view-picture.ts';

const GAS = adjusterLabel('acceleration', 'chain');
const FORK_RATE = adjusterLabel('forkSpringRate', 'chain');

const digits = (
  value: number,
  quantity: 'length' | 'force' | 'angle' | 'percent',
  style: NumberStyle = METRIC,
) => writeNumber(value, quantity, style).digits;

test('every ride state is in sight, and its readings are those that the core computes', async ({ page }) => {
  await openPage(page);
  await expect(rideStates(page).getByRole('radio')).toHaveCount(RIDE_STATES.length);
  const panel = (await page.locator('.readings').boundingBox()) ?? { x: 0, width: 0 };
  for (const { bike } of DEMO_BIKES.slice(0, 2)) {
    await startDemo(page, bike.name);
    const document = await savedDocument(page);
    for (const { key: state, label } of RIDE_STATES) {
      await chooseState(page, label);
      const box = await rideStates(page).locator('label').filter({ hasText: label }).boundingBox();
      expect((box?.x ?? 0) + (box?.width ?? Infinity)).toBeLessThanOrEqual(panel.x + panel.width);
      const stance = standing(document, state);
      for (const { key, label: name } of READINGS.filter((reading) => FIRST_READINGS.includes(reading.key)))
        expect(`${state} ${name} ${await readingText(page, name)}`).toBe(
          `${state} ${name} ${plain(writtenReading(stance, key))}`,
        );
    }
  }
});

test('arrow keys walk through the states, and a sentence says what each means', async ({ page }) => {
  await openPage(page);
  await chooseState(page, RIDE_STATES[0].label);
  await rideStates(page).getByRole('radio', { name: RIDE_STATES[0].label }).focus();
  const told = new Set([await rideSentenceOn(page)]);
  for (const { label } of RIDE_STATES.slice(1)) {
    await page.keyboard.press('ArrowRight');
    await expect(rideStates(page).getByRole('radio', { name: label })).toBeChecked();
    told.add(await rideSentenceOn(page));
  }
  expect(told.size).toBe(RIDE_STATES.length);
  await chooseState(page, 'Accelerating');
  expect(await rideSentenceOn(page)).toBe('Accelerating at 0.50 g; 78 kg rider; both ends on their springs.');
  await typeInto(page, GAS, '0.25');
  expect(await rideSentenceOn(page)).toContain('Accelerating at 0.25 g');
});

test('the table has the figures of every state, as the Readings have them in that state', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  await openRide(page);
  const document = await savedDocument(page);
  for (const { key: state, label: name } of RIDE_STATES) {
    const figures = rideFigures(standing(document, state));
    const was = rideFigures(standing(document.baseline, state));
    const fork = await rideCell(page, name, 'Fork used');
    expect(fork).toContain(
      `${digits(figures.frontUsed, 'length')} ${digits(figures.frontLeft, 'length')} left`,
    );
    const rear = await rideCell(page, name, 'Rear used');
    expect(rear).toContain(
      `${digits(figures.rearUsed, 'length')} ${digits(figures.rearLeft, 'length')} left`,
    );
    const front = await rideCell(page, name, 'Front wheel load');
    const back = await rideCell(page, name, 'Rear wheel');
    const { frontLoad, rearLoad, frontShare } = figures;
    if (frontLoad === null || rearLoad === null || frontShare === null)
      expect([front, back]).toEqual(['–', '–']);
    else {
      expect(front).toContain(`${digits(frontLoad, 'force')} ${digits(frontShare, 'percent')} %`);
      expect(back).toContain(digits(rearLoad, 'force'));
    }
    const rake = await rideCell(page, name, 'Rake');
    const trail = await rideCell(page, name, 'Trail');
    const squat = await rideCell(page, name, 'Anti-squat');
    // The change from the baseline's row has its arrow, its sign and a word.
    expect(rake).toMatch(new RegExp(`^${digits(figures.rake, 'angle')} ▼ −0\\.\\d\\d steeper$`));
    expect(trail).toMatch(/ ▼ −\d\.\d shorter$/);
    expect(squat.includes('▲ +')).toBe((figures.antiSquat ?? 0) > (was.antiSquat ?? 0));
    // A press on the row shows the state; the Readings then say the same.
    await rideRow(page, name).getByRole('cell').nth(2).click();
    await expect(rideStates(page).getByRole('radio', { name })).toBeChecked();
    await expect(rideRow(page, name)).toHaveAttribute('aria-current', 'true');
    expect(rake.startsWith((await readingText(page, 'Rake')).replace('°', ''))).toBe(true);
    expect(trail.startsWith((await readingText(page, 'Trail')).replace(' mm', ''))).toBe(true);
    expect(squat.startsWith((await readingText(page, 'Anti-squat')).replace(' %', ''))).toBe(true);
  }
  await expect(rideRow(page, 'Braking')).toContainText('front on its springs, rear topped out');
  await expect(rideRow(page, 'Rider on board')).toContainText('both on their springs');
  await expect(ride(page).getByRole('row').and(page.locator('[aria-current]'))).toHaveCount(1);
});

test('keys alone show a state from the table', async ({ page }) => {
  await openPage(page);
  await openRide(page);
  await rideRow(page, 'Mid-corner').getByRole('button').press('Enter');
  await expect(rideStates(page).getByRole('radio', { name: 'Mid-corner' })).toBeChecked();
});

test('sag is shown in mm and per cent against what is common for the use, and the use is kept', async ({
  page,
}) => {
  await openPage(page);
  await openRide(page, 'Sag');
  const lines = ride(page).getByRole('listitem');
  await expect(lines).toHaveCount(4);
  await expect(lines.nth(3)).toContainText(
    /Rear rider sag 3\d\.\d\smm, 25\s% of the travel, within 25 to 40\smm common on the road\./,
  );
  await ride(page).getByText('Off-road', { exact: true }).click();
  await expect(lines.nth(3)).toContainText(/less than the 90 to 110\smm common off the road/);
  await typeInto(page, adjusterLabel('shockPreload', 'chain'), '8');
  await expect(lines.nth(3)).toContainText(/▲ \+\d+\.\d\smm\s+more sag/);
  await expect
    .poll(async () => {
      await page.reload();
      await openRide(page, 'Sag');
      return await ride(page).getByRole('radio', { name: 'Off-road' }).isChecked();
    })
    .toBe(true);
});

test('gas and brakes are shown in mm, limits in g, and the neutral point with its shift', async ({
  page,
}) => {
  await openPage(page);
  await openRide(page, 'Gas, brakes');
  const region = ride(page);
  await expect(region.getByRole('term')).toHaveText([
    'Squat (+) or lift (−) on the gas, from mid-corner',
    'Dive on the brakes, upright',
    'Rise (+) or drop (−), throttle closed',
    'Wheelie limit, accelerating up to it',
    'Rear-lift [stoppie] limit, braking up to it',
    'Neutral anti-squat',
  ]);
  await expect(region).toContainText(
    /Leaned over 40°, from steady speed to 0\.50\sg of acceleration: the rear squats \d\.\d\smm/,
  );
  await expect(region).toContainText(/Upright, from steady speed to 0\.70\sg, 90\s% of it at the front/);
  await expect(region).toContainText(/At 10\d\.\d\s% the gas neither squats nor lifts the rear/);
  await typeInto(page, adjusterLabel('riderHeight', 'chain'), '250');
  await expect(region).toContainText(/▼ −0\.\d\d\sg\s+lifts sooner/);
  // A refused figure spoils its own line only.
  await typeInto(page, GAS, '1.5');
  await expect(region).toContainText(/At 1\.50\sg the front wheel lifts; it stays on the ground up to/);
  await expect(region).toContainText('Dive on the brakes');
});

test('more g than the front holds is refused with the limit and the way to the adjuster, and nothing is lost', async ({
  page,
}) => {
  await openPage(page);
  await chooseState(page, 'Accelerating');
  const before = layerOf(await pictureText(page), 'bike');
  const trail = await readingText(page, 'Trail');
  await typeInto(page, GAS, '1.5');
  const alert = sideView(page).getByRole('alert');
  await expect(alert).toContainText(
    /At 1\.50\sg the front wheel lifts; it stays on the ground up to (0|1)\.\d\d\sg\./,
  );
  const picture = await pictureText(page);
  expect(layerOf(picture, 'bike') === before, 'the same picture').toBe(true);
  expect(inkOf(picture, 'bike')).toBeLessThan(1);
  expect(await readingText(page, 'Trail')).toBe(trail);
  expect((await savedDocument(page)).setup.acceleration).toBe(1.5);
  await openRide(page);
  await expect(rideRow(page, 'Accelerating')).toContainText('the front wheel lifts');
  await expect(rideRow(page, 'Braking')).toContainText('front on its springs');
  await field(page, REAR_HEIGHT).focus();
  await alert.getByRole('button', { name: `Go to ${GAS}` }).click();
  await expect(field(page, GAS)).toBeFocused();
  await expect(field(page, GAS)).toBeInViewport();
  await undoButton(page).click();
  await expect(alert).toBeHidden();
  expect(inkOf(await pictureText(page), 'bike')).toBe(1);
  expect(await readingText(page, 'Trail')).toBe(trail);
});

const IMPOSSIBLE = [
  {
    adjuster: 'braking',
    value: '1.5',
    state: 'Braking',
    words: /rear wheel lifts; it stays on the ground up to [01]\.\d\d\sg/,
  },
  {
    adjuster: 'cornerBraking',
    value: '1.6',
    state: 'Mid-corner',
    words: /braking the rear wheel lifts/,
  },
  {
    adjuster: 'leanDeg',
    value: '85',
    state: 'Mid-corner',
    words: /A lean of 85\.00° is more than any tyre holds/,
  },
  {
    adjuster: 'frontTravelUsed',
    value: '130',
    state: 'Travel set by hand',
    words: /Fork travel used is 130/,
  },
] as const;

test('a state that cannot be says why, keeps the picture and leads to its adjuster', async ({ page }) => {
  await openPage(page);
  const saved = await savedText(page);
  const asked = async ({ adjuster, value, state, words }: (typeof IMPOSSIBLE)[number]): Promise<void> => {
    const label = adjusterLabel(adjuster, 'chain');
    // The adjuster's own range is common practice; what a file may hold reaches further.
    const file = JSON.parse(saved) as {
      bike: { name: string };
      setup: Record<string, number>;
    };
    // Each has a name of its own, by which the page shows that it is there.
    file.bike.name = `${adjuster} at ${value}`;
    file.setup[adjuster] = Number(value);
    await page.locator('[data-bike-file]').setInputFiles({
      name: 'asked.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(file)),
    });
    await expectBike(page, `${adjuster} at ${value}`);
    const before = layerOf(await pictureText(page), 'bike');
    await chooseState(page, state);
    await expect(sideView(page).getByRole('alert')).toContainText(words);
    expect(layerOf(await pictureText(page), 'bike') === before, 'the same picture').toBe(true);
    const side = page.getByRole('region', { name: 'Readings' }).first();
    await expect(side.getByRole('status')).toContainText(words);
    await side.getByRole('button', { name: `Go to ${label}` }).click();
    await expect(field(page, label)).toBeFocused();
    await expect(field(page, label)).toBeInViewport();
    await expect(field(page, label)).toHaveValue(new RegExp(value.replace('-', '[-−]')));
    await chooseState(page, 'Topped out');
    await expect(sideView(page).getByRole('alert')).toBeHidden();
  };
  for (const each of IMPOSSIBLE) await test.step(each.adjuster, () => asked(each));
});

test('preload beyond its spring, and a mass behind the rear axle, are named with what to change, and the picture stays', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  // In Edit the bike hangs until a state is chosen.
  await chooseState(page, 'Rider on board');
  const before = layerOf(await pictureText(page), 'bike');
  await page.getByText('Shock', { exact: true }).click();
  await page.getByRole('checkbox', { name: 'Shock spring’s own travel', exact: true }).check();
  await typeInto(page, 'Shock spring’s own travel', '10');
  const alert = sideView(page).getByRole('alert');
  await expect(alert).toContainText(
    /preload of 13\.0\smm makes the shock spring coil-bound, which can be compressed 10\.0\smm\. Take preload off/,
  );
  expect(layerOf(await pictureText(page), 'bike') === before, 'the same picture').toBe(true);
  await alert.getByRole('button', { name: `Go to ${adjusterLabel('shockPreload', 'chain')}` }).click();
  await expect(field(page, adjusterLabel('shockPreload', 'chain'))).toBeFocused();
  await undoButton(page).click();
  await undoButton(page).click();
  await expect(alert).toBeHidden();
  await expectNoUndo(page);
  await chooseMode(page, 'Edit');
  await chooseState(page, 'Rider on board');
  await page.getByRole('combobox', { name: 'Point', exact: true }).selectOption('Sprung centre of gravity');
  const text = await savedText(page);
  await typeInto(page, 'Ahead of rear contact patch', '-900');
  await expect(page.getByRole('alert').filter({ hasText: 'Put back' })).toContainText(
    'The centre of gravity is at or behind the rear axle, so the front wheel carries nothing. Check the weights',
  );
  expect(await savedText(page)).toBe(text);
});

test('a spring rate that is not known is asked for, by its adjuster, and the picture stays', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, FORK_RATE, '0');
  const before = layerOf(await pictureText(page), 'bike');
  await chooseState(page, 'Mid-corner');
  const side = page.getByRole('region', { name: 'Readings' }).first();
  await expect(side.getByRole('status')).toContainText(`${FORK_RATE} is not known yet. Set that adjuster`);
  expect(layerOf(await pictureText(page), 'bike') === before, 'the same picture').toBe(true);
  await openRide(page, 'Sag');
  await ride(page)
    .getByRole('button', { name: `Go to ${FORK_RATE}` })
    .click();
  await expect(field(page, FORK_RATE)).toBeFocused();
  await typeInto(page, FORK_RATE, '10');
  await expect(side.getByRole('status')).toBeHidden();
  await expect(ride(page).getByRole('listitem')).toHaveCount(4);
});

test('ghosts of several states stand beside the bike, each named, and go again', async ({ page }) => {
  await openPage(page, 'Topped out');
  await openRide(page);
  for (const name of ['Accelerating', 'Braking', 'Topped out'])
    await ride(page)
      .getByRole('checkbox', { name: `Outline of ${name} on the side view` })
      .check();
  const picture = await pictureText(page);
  expect(wordsOf(picture)).toEqual(expect.arrayContaining(['Accelerating', 'Braking']));
  // The state that is drawn in full has no ghost of its own.
  expect(wordsOf(picture)).not.toContain('Topped out');
  const drawnThen = layerOf(picture, 'ghosts');
  expect(drawnThen).toContain('<path');
  await chooseState(page, 'Accelerating');
  const other = await pictureText(page);
  expect(wordsOf(other)).toEqual(expect.arrayContaining(['Topped out', 'Braking']));
  expect(layerOf(other, 'ghosts')).not.toBe(drawnThen);
  for (const box of await ride(page).getByRole('checkbox').all()) await box.uncheck();
  expect(layerOf(await pictureText(page), 'ghosts')).toBe('');
});

test('a drag in a state that is a balance stays on its rest and follows the hand', async ({ page }) => {
  await openPage(page);
  await chooseState(page, 'Braking');
  await drawn(page);
  const before = await readingText(page, 'Trail');
  const from = await middleOf(page, 'grip-shockLength');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x, from.y - 12, { steps: 6 });
  await drawn(page);
  let trail = before;
  // Figures follow a hand a few times a second, so they rest once a look finds them as the last one did.
  const isAtRest = async (): Promise<boolean> => {
    const last = trail;
    trail = await readingText(page, 'Trail');
    return trail === last && trail !== before;
  };
  await expect.poll(isAtRest, { intervals: [200] }).toBe(true);
  await page.mouse.up();
  expect(await readingText(page, 'Trail')).toBe(trail);
  const document = await savedDocument(page);
  expect(trail).toBe(plain(writtenReading(standing(document, 'braking'), 'trail')));
});
