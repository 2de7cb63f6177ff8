/** Real rear links entered on the page: each layout from the table, its bolts typed, and what cannot close refused. */
import { inFrame } from '../../src/core/chassis/pose.ts';
import { expect, test, type Page } from '@playwright/test';
import { distance } from '../../src/core/plane/point.ts';
import { POINTS, pointsOf } from '../../src/core/sketch/points.ts';
import { placeOf, savedDocument, savedText, standing } from './support/bike-document.ts';
import { expectNoUndo, field, readingText, startDemo, typeInto, undo, undoButton } from './support/panels.ts';
import {
  chooseMode,
  dragHandle,
  emptySpot,
  handle,
  middleOf,
  openPage,
  pressAndMove,
  pxPerMm,
} from './support/side-view.ts';

async function openLinks(page: Page): Promise<void> {
  await openPage(page, 'Topped out');
  await startDemo(page, 'Twin-shock roadster');
  await chooseMode(page, 'Edit');
  await page.getByText('Rear suspension', { exact: true }).click();
}

const LAYOUTS = [
  { label: 'Straight shock, or two', kind: 'direct', bolt: 'Shock on frame, above the pivot' },
  {
    label: 'Rocker on the frame, rod to the swingarm',
    kind: 'rockerOnFrame',
    bolt: 'Rocker pivot, forward of the pivot',
  },
  {
    label: 'Rocker on the swingarm, rod to the frame',
    kind: 'rockerOnArm',
    bolt: 'Rod on frame, above the pivot',
  },
];

test('each kind of drawn links: begun from the table it stands at once, a bolt is typed, and undo takes it back', async ({
  page,
}) => {
  await openLinks(page);
  for (const { label, kind, bolt } of LAYOUTS) {
    const layout = page.getByRole('combobox', { name: 'Layout' });
    await layout.selectOption({ label: 'Travel table' });
    const swingarm = await readingText(page, 'Swingarm angle');
    await layout.selectOption({ label });
    expect((await savedDocument(page)).bike.swingarm.links?.kind).toBe(kind);
    expect(await readingText(page, 'Swingarm angle')).toBe(swingarm);
    const told = page.getByText(/^Wheel travel .* leverage .* to 1 hanging/);
    await expect(told).toBeVisible();
    const words = await told.innerText();
    const before = Number((await field(page, bolt).inputValue()).replace('\u2212', '-'));
    await typeInto(page, bolt, String(before + 2));
    await expect(told).not.toHaveText(words);
    await undo(page);
    await undo(page);
    await undo(page);
    await expectNoUndo(page);
  }
});

for (const { label, bolts } of [
  { label: 'Straight shock, or two', bolts: ['shockOnFrame', 'shockOnArm'] },
  {
    label: 'Rocker on the frame, rod to the swingarm',
    bolts: ['rockerPivot', 'rodOnRocker', 'shockOnRocker', 'rodOnArm', 'shockFarEnd'],
  },
  {
    label: 'Rocker on the swingarm, rod to the frame',
    bolts: ['rockerPivot', 'rodOnRocker', 'shockOnRocker', 'rodOnFrame', 'shockFarEnd'],
  },
] as const)
  test(`${label}: every bolt is dragged on the side view, and nothing else of the bike moves`, async ({
    page,
  }) => {
    await openLinks(page);
    await page.getByRole('combobox', { name: 'Layout' }).selectOption({ label });
    // Bolts of one rocker lie so near each other that a press on the whole bike may mean either.
    await page.getByRole('button', { name: 'Zoom in' }).click();
    await page.getByRole('button', { name: 'Zoom in' }).click();
    for (const key of bolts) {
      const before = await savedDocument(page);
      await dragHandle(page, `point-${key}`, -9, 7);
      const name = POINTS[key].label.toLowerCase();
      await expect(undoButton(page)).toHaveAccessibleName(`Undo: Moved ${name}`);
      const after = await savedDocument(page);
      const scale = await pxPerMm(page, standing(before, 'toppedOut').pose.wheelbase);
      for (const { key: each } of pointsOf(before.bike)) {
        const [was, is] = [before, after].map((saved) =>
          inFrame(standing(saved, 'toppedOut').pose, placeOf(saved, each)),
        );
        const [dx, dy] = each === key ? [-9, -7] : [0, 0];
        const turn = standing(before, 'toppedOut').pose.pitch;
        const expected = {
          x: was.x + (dx * Math.cos(turn) + dy * Math.sin(turn)) / scale,
          y: was.y + (dy * Math.cos(turn) - dx * Math.sin(turn)) / scale,
        };
        expect(distance(is, expected), each).toBeLessThan(each === key ? 1 / scale : 0.001);
      }
    }
    for (let times = 0; times < bolts.length + 1; times++) await undo(page);
    await expectNoUndo(page);
  });

test('an undo that takes the links away lets go of the bolt that was to be placed', async ({ page }) => {
  await openLinks(page);
  await page.getByRole('combobox', { name: 'Layout' }).selectOption({ label: 'Travel table' });
  await page
    .getByRole('combobox', { name: 'Layout' })
    .selectOption({ label: 'Rocker on the frame, rod to the swingarm' });
  await handle(page, 'point-rockerPivot').focus();
  await page.keyboard.press('Enter');
  await expect(handle(page, 'point-rockerPivot')).toHaveAttribute('aria-pressed', 'true');
  await undo(page);
  await expect(handle(page, 'point-rockerPivot')).toHaveCount(0);
  const text = await savedText(page);
  const spot = await emptySpot(page);
  await page.mouse.click(spot.x, spot.y);
  expect(await savedText(page)).toBe(text);
});

test('a shock that the links cannot hold is named on the side view, and the last bike is kept', async ({
  page,
}) => {
  await openLinks(page);
  await page
    .getByRole('combobox', { name: 'Layout' })
    .selectOption({ label: 'Rocker on the swingarm, rod to the frame' });
  const rake = await readingText(page, 'Rake');
  await typeInto(page, 'Shock fully extended, eye to eye', '900');
  await expect(page.getByRole('alert').first()).toContainText('the shock is longer than the links allow');
  expect(await readingText(page, 'Rake')).toBe(rake);
});

test('bolts that no rod can join are named where they are typed and on the side view, and undo brings the links back', async ({
  page,
}) => {
  await openLinks(page);
  await page
    .getByRole('combobox', { name: 'Layout' })
    .selectOption({ label: 'Rocker on the frame, rod to the swingarm' });
  const text = await savedText(page);
  const rake = await readingText(page, 'Rake');
  // On the line of rod end and rocker nothing tells to which side they fold.
  const bolt = async (way: string) =>
    Number((await field(page, `Rod on rocker, ${way}`).inputValue()).replace('\u2212', '-'));
  const pivot = async (way: string) =>
    Number((await field(page, `Rocker pivot, ${way}`).inputValue()).replace('\u2212', '-'));
  expect(await bolt('above the pivot')).not.toBe(await pivot('above the pivot'));
  await typeInto(page, 'Rod on rocker, forward of the pivot', String(await pivot('forward of the pivot')));
  await typeInto(page, 'Rod on rocker, above the pivot', String(await pivot('above the pivot')));
  await expect(page.getByRole('alert').first()).toContainText(/Move the two points apart/);
  expect(await readingText(page, 'Rake')).toBe(rake);
  await undo(page);
  await undo(page);
  expect(await savedText(page)).toBe(text);
  // Dragged there it stays at the last place where the links closed, and the page says why.
  const onto = await middleOf(page, 'point-rockerPivot');
  const from = await middleOf(page, 'point-rodOnRocker');
  await page.keyboard.down('Control');
  await pressAndMove(page, from, onto);
  await expect(page.getByRole('alert').filter({ hasText: 'rear links could not close' })).toBeVisible();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await page.keyboard.up('Control');
  expect(await savedText(page)).toBe(text);
});

test('the shock’s other end changes hands and stays where it was', async ({ page }) => {
  await openLinks(page);
  await page
    .getByRole('combobox', { name: 'Layout' })
    .selectOption({ label: 'Rocker on the frame, rod to the swingarm' });
  const swingarm = await readingText(page, 'Swingarm angle');
  await page.getByRole('combobox', { name: 'Shock’s other end' }).selectOption({ label: 'On the swingarm' });
  const { links } = (await savedDocument(page)).bike.swingarm;
  expect(links !== null && links.kind !== 'direct' && links.shockFarEnd.on).toBe('arm');
  expect(await readingText(page, 'Swingarm angle')).toBe(swingarm);
});

test('a figure of the links beyond what is saved is refused beside its field, where the typed words stay', async ({
  page,
}) => {
  await openLinks(page);
  for (const [label, typed, advice] of [
    ['Swingarm angle as drawn', '999', 'This goes from −180.00° to 180.00°.'],
    ['Shock closed, eye to eye', '-3', 'This goes from 0.0 mm to 100'],
  ]) {
    const old = await field(page, label).inputValue();
    await typeInto(page, label, typed);
    await expect(field(page, label)).toHaveValue(typed);
    await expect(page.getByRole('alert').filter({ hasText: advice })).toBeVisible();
    await field(page, label).press('Escape');
    await expect(field(page, label)).toHaveValue(old);
  }
  await expectNoUndo(page);
});
