/** The Springs tab: what holds each end is chosen once, its figures are entered, and what cannot be is refused in words. */
import { expect, test, type Page } from '@playwright/test';
import { expectNothingSerious } from './support/axe.ts';
import { savedDocument } from './support/bike-document.ts';
import { expectNoUndo, undo } from './support/panels.ts';
import { openSprings, sags, springs, wish } from './support/springs.ts';
import { openPage } from './support/side-view.ts';

async function hold(page: Page, place: string, kind: string): Promise<void> {
  await springs(page)
    .getByRole('combobox', { name: `What holds the ${place}` })
    .selectOption({ label: kind });
}

/** Types into a field that is named by its label and its place, such as "Air gap, front". */
const enter = wish;

test('two springs in series are entered, say where they change over, and go with one undo each', async ({
  page,
}) => {
  await openPage(page);
  await openSprings(page);
  const before = await sags(page);
  await hold(page, 'front', 'Two springs in series');
  await expect(springs(page)).toContainText('The springs never change over: neither is coil-bound.');
  await enter(page, 'Rate of the second spring, front', '40');
  await springs(page).getByRole('checkbox', { name: 'First spring coil-bound after' }).check();
  await enter(page, 'First spring coil-bound after, front', '80');
  await expect(springs(page)).toContainText(
    /The second rate begins at [\d.]+\s*mm of [\d.]+\s*mm of fork travel\./,
  );
  expect((await savedDocument(page)).bike.fork.support).toEqual({
    spring: { kind: 'inSeries', otherRate: 40, firstCloses: 80, otherCloses: null },
    air: null,
  });
  expect((await sags(page)).rider.front).toBeGreaterThan(before.rider.front);
  for (let i = 0; i < 4; i++) await undo(page);
  await expectNoUndo(page);
  expect((await savedDocument(page)).bike.fork.support).toBeNull();
});

test('a spring wound with two rates at the rear says which of its rates work', async ({ page }) => {
  await openPage(page);
  await openSprings(page);
  await hold(page, 'rear', 'A spring wound with two rates');
  await enter(page, 'Second rate begins after, rear', '2');
  await expect(springs(page)).toContainText('only the second rate works');
  await enter(page, 'Second rate begins after, rear', '400');
  await expect(springs(page)).toContainText('The changeover is never reached');
  const { bike } = await savedDocument(page);
  expect(bike.shock.support?.spring).toMatchObject({ kind: 'twoRates', changeover: 400 });
});

test('a force table is entered row by row, and a row that falls is refused with its number', async ({
  page,
}) => {
  await openPage(page);
  await openSprings(page);
  await hold(page, 'front', 'A force table');
  const table = springs(page).getByRole('group', { name: 'Force table, front' });
  await table.getByRole('button', { name: 'Add a row, front' }).click();
  await expect(table.getByRole('listitem')).toHaveCount(4);
  await enter(page, 'Force, row 3, front', '1');
  await expect(springs(page)).toContainText('Row 3 of the front force table does not rise');
  await undo(page);
  await expect(springs(page)).not.toContainText('does not rise');
  await expect(springs(page)).toContainText('of preload would give the rider sag wanted');
});

test('air beside a spring takes its gap and sizes, and says at which mm a leg without air locks', async ({
  page,
}) => {
  await openPage(page);
  await openSprings(page);
  const before = await sags(page);
  await springs(page).getByRole('checkbox', { name: 'Count the air, front' }).check();
  await enter(page, 'Air gap, front', '100');
  await enter(page, 'Sliding tube, outside diameter, front', '41');
  const { bike, setup } = await savedDocument(page);
  expect([setup.forkAirGap, bike.fork.support?.air?.slidingTube]).toEqual([100, 41]);
  expect((await sags(page)).rider.front).toBeLessThan(before.rider.front);
  await springs(page).getByText('More of the air, front').click();
  await springs(page).getByRole('checkbox', { name: 'Balance chamber, front' }).check();
  await enter(page, 'Steel of the spring in it, front', '180');
  await expect(springs(page)).toContainText(/is used up at [\d.]+\s*mm of [\d.]+\s*mm: it locks there/);
});

test('air alone holds the rear with the pressure that gives the rider sag', async ({ page }) => {
  await openPage(page);
  await openSprings(page);
  await hold(page, 'rear', 'Air alone');
  await wish(page, 'Rider sag wanted, rear', '33');
  await springs(page).getByRole('button', { name: 'Set this at the rear' }).click();
  const { setup } = await savedDocument(page);
  expect(setup.shockAirPressure).toBeGreaterThan(1);
  expect((await sags(page)).rider.rear).toBeCloseTo(33, 0);
  await enter(page, 'Air pressure, rear', '-2');
  await expect(springs(page)).toContainText('is less than no air at all');
});

test('an unlike fork leg has a spring of another rate, and both are summed', async ({ page }) => {
  await openPage(page);
  await openSprings(page);
  const before = await sags(page);
  await springs(page).getByRole('checkbox', { name: 'The other fork leg is different' }).check();
  expect((await sags(page)).rider.front).toBeCloseTo(before.rider.front, 9);
  await enter(page, 'Spring rate, other leg', '14');
  expect((await sags(page)).rider.front).toBeLessThan(before.rider.front);
  await hold(page, 'other leg', 'A spring wound with two rates');
  expect((await savedDocument(page)).bike.fork.otherLeg).toMatchObject({
    rate: 14,
    spring: { kind: 'twoRates' },
  });
});

test('S19: nothing serious with every figure of both ends open', async ({ page }) => {
  await openPage(page);
  await openSprings(page);
  await hold(page, 'rear', 'A force table');
  await springs(page).getByRole('checkbox', { name: 'Count the air, front' }).check();
  await springs(page).getByText('More of the air, front').click();
  await springs(page).getByRole('checkbox', { name: 'The other fork leg is different' }).check();
  await expectNothingSerious(page);
});
