/** Every point of the bike is placed by typed figures alone, axles and contact patches by what places them. */
import { expect, test } from '@playwright/test';
import { pointsOf, type PointKey } from '../../src/core/sketch/points.ts';
import type { BikeDocument } from '../../src/document/document.ts';
import { PARTS } from '../support/points.ts';
import { placeOf, savedDocument } from './support/bike-document.ts';
import { expectNoUndo, field, plain, startDemo, typeInto, undo, undoButton } from './support/panels.ts';
import { chooseMode, middleOf, openPage } from './support/side-view.ts';

/** The figures typed for points whose place follows from other figures, with what each must have set. */
const FOLLOWING: Partial<
  Record<
    PointKey,
    readonly { label: string; typed: string; set: (saved: BikeDocument) => unknown; to: unknown }[]
  >
> = {
  rearAxle: [
    { label: 'Swingarm length', typed: '561.5', set: ({ bike }) => bike.swingarm.length, to: 561.5 },
    {
      label: 'Swingarm angle, topped out',
      typed: '10,25',
      set: ({ bike }) => bike.swingarm.toppedOutAngleDeg,
      to: 10.25,
    },
  ],
  frontAxle: [
    { label: 'Fork length', typed: '652', set: ({ bike }) => bike.fork.length, to: 652 },
    { label: 'Axle lead', typed: '3.5', set: ({ bike }) => bike.fork.axleLead, to: 3.5 },
  ],
  rearPatch: [
    {
      label: 'Rear tyre, outside diameter',
      typed: '633',
      set: ({ setup }) => setup.rearTyre,
      to: { diameter: 633 },
    },
  ],
  frontPatch: [
    {
      label: 'Front tyre, outside diameter',
      typed: '23.5 in',
      set: ({ setup }) => setup.frontTyre,
      to: { diameter: 596.9 },
    },
  ],
};

test('S1: every point of the bike is placed by typed figures', async ({ page }) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  await page.getByText('Rear suspension', { exact: true }).click();
  const layout = page.getByRole('combobox', { name: 'Layout' });
  const layoutBefore = await layout.inputValue();
  // With drawn links the arm's angle follows from its bolts; by its table it is a figure of its own.
  const last = PARTS.filter(({ key }) => key === 'rearAxle');
  for (const { key, label } of [...PARTS.filter((part) => !last.includes(part)), ...last]) {
    if (key === 'rearAxle') await layout.selectOption({ label: 'Travel table' });
    await page.getByRole('combobox', { name: 'Point', exact: true }).selectOption({ label });
    const following = FOLLOWING[key];
    for (const { label: figure, typed, set, to } of following ?? []) {
      await typeInto(page, figure, typed);
      await expect(undoButton(page)).toBeEnabled();
      expect(set(await savedDocument(page)), figure).toEqual(to);
      await undo(page);
    }
    if (following !== undefined) continue;
    const place = (saved: BikeDocument) => placeOf(saved, key);
    const before = place(await savedDocument(page));
    const [x, y] = [Math.round(before.x) + 3, Math.round(before.y) - 2];
    await typeInto(page, 'Ahead of rear contact patch', String(x));
    await typeInto(page, 'Above the ground', String(y));
    const after = place(await savedDocument(page));
    expect(after.x, label).toBeCloseTo(x, 6);
    expect(after.y, label).toBeCloseTo(y, 6);
    await undo(page);
    await undo(page);
  }
  await undo(page);
  await expect(layout).toHaveValue(layoutBefore);
  await expectNoUndo(page);
});

for (const bikeName of ['Track day', 'Twin-shock roadster'])
  test(`S1: every bolt of the links of the ${bikeName} is placed by typed figures`, async ({ page }) => {
    await openPage(page, 'Topped out');
    await startDemo(page, bikeName);
    await chooseMode(page, 'Edit');
    const bolts = pointsOf((await savedDocument(page)).bike).filter(({ key }) =>
      PARTS.every((part) => part.key !== key),
    );
    expect(bolts.length).toBeGreaterThanOrEqual(2);
    for (const { key, label } of bolts) {
      const place = (saved: BikeDocument) => placeOf(saved, key);
      await page.getByRole('combobox', { name: 'Point', exact: true }).selectOption({ label });
      const before = place(await savedDocument(page));
      const [x, y] = [Math.round(before.x) + 3, Math.round(before.y) - 2];
      await typeInto(page, 'Ahead of rear contact patch', String(x));
      await typeInto(page, 'Above the ground', String(y));
      const after = place(await savedDocument(page));
      expect(after.x, key).toBeCloseTo(x, 6);
      expect(after.y, key).toBeCloseTo(y, 6);
      await undo(page);
      await undo(page);
    }
    await expectNoUndo(page);
  });

test('S1: the side view says in words in which zone the squat line runs', async ({ page }) => {
  await openPage(page, 'Topped out');
  const described = page.getByRole('application', { name: 'Side view of the bike' });
  await expect(described).toHaveAccessibleDescription(/runs in the lift zone, above the neutral one\.$/);
  await typeInto(page, 'Front sprocket', '17');
  await typeInto(page, 'Rear sprocket', '39');
  await expect(described).toHaveAccessibleDescription(/runs in the neutral zone\.$/);
  await typeInto(page, 'Front sprocket', '19');
  await typeInto(page, 'Rear sprocket', '34');
  await expect(described).toHaveAccessibleDescription(/runs in the squat zone, below the neutral one\.$/);
  await page.getByRole('radio', { name: 'Accelerating', exact: true }).check({ force: true });
  await expect(described).toHaveAccessibleDescription(/squat zone.* The rear squats on the gas\.$/);
});

test('a place that cannot be is refused beside its field, where the typed words stay, also by an arrow key', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  const ahead = field(page, 'Ahead of rear contact patch');
  const old = await ahead.inputValue();
  await typeInto(page, 'Ahead of rear contact patch', '-3');
  await expect(ahead).toHaveValue('-3');
  const advice = page.getByRole('alert').filter({ hasText: 'The rear axle has to stay behind' });
  await expect(advice).toBeVisible();
  expect(plain(await advice.innerText())).toContain(`Kept ${old} mm.`);
  await expect(ahead).toHaveAttribute('aria-invalid', 'true');
  await expectNoUndo(page);
  await ahead.press('Escape');
  await expect(ahead).toHaveValue(old);
  await expect(advice).toHaveCount(0);
  // Ten mm a press: somewhere on the way to the axle the bike can stand no more.
  const told = page.getByRole('alert').filter({ hasText: /Kept \d/ });
  for (let press = 0; press < 60 && (await told.count()) === 0; press++) await ahead.press('PageDown');
  await expect(told).toBeVisible();
  const last = await ahead.inputValue();
  await ahead.press('PageDown');
  await expect(told).toBeVisible();
  await expect(ahead).toHaveValue(last);
  await ahead.press('PageUp');
  await expect(told).toHaveCount(0);
  await expect(ahead).not.toHaveValue(last);
});

test('what is typed for one point is its own, also when a press on another point ends the typing', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  const press = async (id: string): Promise<void> => {
    const { x, y } = await middleOf(page, id);
    await page.mouse.click(x, y);
  };
  const before = await savedDocument(page);
  const seat = placeOf(before, 'seat');
  await page.getByRole('combobox', { name: 'Point' }).selectOption({ label: 'Seat mark' });
  await field(page, 'Ahead of rear contact patch').fill(String(seat.x - 20));
  await press('point-tank');
  await expect(page.getByRole('combobox', { name: 'Point' }).locator('option:checked')).toHaveText('Tank');
  await expect(undoButton(page)).toBeEnabled();
  const { bike } = await savedDocument(page);
  expect(bike.frame.tank).toEqual(before.bike.frame.tank);
  expect(
    Math.hypot(bike.frame.seat.x - before.bike.frame.seat.x, bike.frame.seat.y - before.bike.frame.seat.y),
  ).toBeCloseTo(20, 6);
  await undo(page);
  await expectNoUndo(page);

  await page.getByRole('combobox', { name: 'Point' }).selectOption({ label: 'Front contact patch' });
  await field(page, 'Front tyre, outside diameter').fill('601');
  await press('point-tank');
  await expect(field(page, 'Above the ground')).toBeVisible();
  const { bike: then, setup } = await savedDocument(page);
  expect(setup.frontTyre).toEqual({ diameter: 601 });
  expect(then.frame).toEqual(before.bike.frame);
});
