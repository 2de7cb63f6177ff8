/** Dragging points and grips on the side view with the mouse. */
import { expect, test, type Page } from '@playwright/test';
import { adjusterOf } from '../../src/core/adjusters/all-adjusters.ts';
import { adjusterRange } from '../../src/core/standing/adjuster-range.ts';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { pointsOf } from '../../src/core/sketch/points.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { savedDocument, savedText, standing } from './support/bike-document.ts';
import {
  expectNoUndo,
  field,
  FRONT_HEIGHT,
  openAdjuster,
  REAR_HEIGHT,
  redoButton,
  undo,
  undoButton,
} from './support/panels.ts';
import {
  apart,
  chooseMode,
  drawn,
  handle,
  middleOf,
  openPage,
  pressAndMove,
  pxPerMm,
  sideView,
} from './support/side-view.ts';

/** How far a dragged point may be from the pointer that holds it, px. */
const FOLLOWS_WITHIN_PX = 1.5;

test(
  'S5: a press beside the middle of a point moves it by nothing, and the drag keeps the distance',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    await chooseMode(page, 'Edit');
    const seat = await middleOf(page, 'point-seat');
    const press = { x: seat.x - 7, y: seat.y - 6 };
    await page.mouse.move(press.x, press.y);
    await page.mouse.down();
    await drawn(page);
    expect(apart(await middleOf(page, 'point-seat'), seat)).toBe(0);
    await page.keyboard.down('Control');
    await page.mouse.move(press.x - 31, press.y - 17, { steps: 4 });
    await drawn(page);
    expect(apart(await middleOf(page, 'point-seat'), { x: seat.x - 31, y: seat.y - 17 })).toBeLessThan(0.01);
    await page.mouse.up();
    await page.keyboard.up('Control');
    await expect(undoButton(page)).toHaveAccessibleName('Undo: Moved seat mark');
  },
);

test(
  'S5: one drag is one undo, which brings back the very document, and redo the moved one',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    const first = await savedText(page);
    await chooseMode(page, 'Edit');
    const pivot = await middleOf(page, 'point-pivot');
    await pressAndMove(page, pivot, { x: pivot.x - 12, y: pivot.y + 9 }, 12);
    await page.mouse.up();
    await expect(undoButton(page)).toBeEnabled();
    const second = await savedText(page);
    expect(second).not.toBe(first);
    await page.keyboard.press('Control+z');
    await expectNoUndo(page);
    expect(await savedText(page)).toBe(first);
    await expect(redoButton(page)).toHaveAccessibleName('Redo: Moved swingarm pivot');
    await page.keyboard.press('Control+Shift+z');
    expect(await savedText(page)).toBe(second);
  },
);

test('S5: a drag that comes back to where it began, and a press alone, leave no undo', async ({ page }) => {
  await openPage(page);
  const first = await savedText(page);
  await chooseMode(page, 'Edit');
  for (const id of ['point-seat', 'point-frontAxle', 'point-pivot']) {
    const at = await middleOf(page, id);
    await page.keyboard.down('Control');
    await pressAndMove(page, at, { x: at.x + 25, y: at.y - 14 });
    await page.mouse.move(at.x, at.y, { steps: 4 });
    await page.mouse.up();
    await page.keyboard.up('Control');
    await drawn(page);
    expect(apart(await middleOf(page, id), at)).toBeLessThan(0.01);
    await expectNoUndo(page);
  }
  expect(await savedText(page)).toBe(first);
});

test(
  'S5: Escape during a drag puts the point back without an undo entry, and the rest of the drag does nothing',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    const first = await savedText(page);
    await chooseMode(page, 'Edit');
    const head = await middleOf(page, 'point-steeringHead');
    await pressAndMove(page, head, { x: head.x - 20, y: head.y - 12 });
    await drawn(page);
    expect(apart(await middleOf(page, 'point-steeringHead'), head)).toBeGreaterThan(10);
    await page.keyboard.press('Escape');
    await drawn(page);
    expect(apart(await middleOf(page, 'point-steeringHead'), head)).toBe(0);
    await page.mouse.move(head.x + 40, head.y, { steps: 3 });
    await page.mouse.up();
    await drawn(page);
    expect(apart(await middleOf(page, 'point-steeringHead'), head)).toBe(0);
    await expectNoUndo(page);
    expect(await savedText(page)).toBe(first);
  },
);

test('S5: a cancelled pointer puts the point back without an undo entry', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const seat = await middleOf(page, 'point-seat');
  await pressAndMove(page, seat, { x: seat.x - 20, y: seat.y - 12 });
  await handle(page, 'point-seat').evaluate((element) =>
    element.parentElement?.dispatchEvent(
      new PointerEvent('pointercancel', { bubbles: true, pointerId: 1, pointerType: 'mouse' }),
    ),
  );
  await drawn(page);
  expect(apart(await middleOf(page, 'point-seat'), seat)).toBe(0);
  await page.mouse.up();
  await expectNoUndo(page);
});

test('S5: letting go outside the window ends the drag where the pointer left', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const load = await middleOf(page, 'point-loadMark');
  await pressAndMove(page, load, { x: load.x - 60, y: load.y - 20 });
  await page.mouse.move(-40, load.y - 20);
  await page.mouse.up();
  await expect(undoButton(page)).toHaveAccessibleName('Undo: Moved load mark');
  const text = await savedText(page);
  await page.mouse.move(600, 300, { steps: 4 });
  await drawn(page);
  expect(await savedText(page)).toBe(text);
  await undo(page);
  await expectNoUndo(page);
});

test('S5: keys for undo and for moving points wait while a point is in the hand', async ({ page }) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  await handle(page, 'point-loadMark').press('ArrowUp');
  const seat = await middleOf(page, 'point-seat');
  await page.keyboard.down('Control');
  await pressAndMove(page, seat, { x: seat.x - 30, y: seat.y - 12 });
  await page.keyboard.press('z');
  await page.keyboard.up('Control');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.down('Control');
  await page.mouse.move(seat.x - 31, seat.y - 12);
  await page.mouse.up();
  await page.keyboard.up('Control');
  await drawn(page);
  expect(apart(await middleOf(page, 'point-seat'), { x: seat.x - 31, y: seat.y - 12 })).toBeLessThan(0.01);
  await undo(page);
  await expect(undoButton(page)).toHaveAccessibleName('Undo: Moved load mark');
  await undo(page);
  await expectNoUndo(page);
});

test('S5: parts are locked until editing is switched on: a drag on a point’s place moves the view only', async ({
  page,
}) => {
  await openPage(page);
  const first = await savedText(page);
  for (const mode of ['Adjusters', 'Measure'] as const) {
    await chooseMode(page, mode);
    for (const id of ['point-frontAxle', 'point-seat', 'point-countershaft']) {
      const at = await middleOf(page, id);
      const axle = await middleOf(page, 'point-rearAxle');
      await pressAndMove(page, at, { x: at.x + 12, y: at.y - 9 });
      await page.mouse.up();
      await drawn(page);
      expect(apart(await middleOf(page, 'point-rearAxle'), { x: axle.x + 12, y: axle.y - 9 })).toBeLessThan(
        0.01,
      );
    }
    await expectNoUndo(page);
  }
  expect(await savedText(page)).toBe(first);
});

/**
 * How far each point is dragged, mm of the bike: in px the same drag would ask more of the bike on a smaller drawing. The
 * bolt that joins rod and rocker goes 45 mm this way; beyond, the shock would grow longer as the wheel rises.
 */
const DRAGGED_MM = { x: 23, y: -27 };
const BEYOND_LINKS_MM = { x: 34, y: -40 };

/** px of the screen per mm of the bike as it is opened. */
async function bikeScale(page: Page): Promise<number> {
  return await pxPerMm(page, standing(await savedDocument(page), 'toppedOut').pose.wheelbase);
}

const DRAGGED = {
  'Topped out': pointsOf(DEMO_BIKES[0].bike).map(({ key }) => key),
  // Those whose place depends on the travel that is used.
  'Travel set by hand': ['pivot', 'rearAxle', 'frontAxle', 'steeringHead', 'rearPatch'],
} as const;

for (const state of ['Topped out', 'Travel set by hand'] as const)
  test(`S5: each point follows the pointer that drags it, although the bike stands anew at every step, ${state}`, async ({
    page,
  }) => {
    await openPage(page);
    await page.getByText(state, { exact: true }).click();
    const first = await savedText(page);
    const scale = await bikeScale(page);
    await chooseMode(page, 'Edit');
    for (const key of DRAGGED[state]) {
      const id = `point-${key}`;
      const from = await middleOf(page, id);
      // A contact patch lies where the tyre is: only its distance from the axle can be dragged.
      const patch = key === 'rearPatch' || key === 'frontPatch';
      const by = patch ? { x: 0, y: 12 } : { x: DRAGGED_MM.x * scale, y: DRAGGED_MM.y * scale };
      await page.keyboard.down('Control');
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      for (const part of [0.5, 1]) {
        const to = { x: from.x + by.x * part, y: from.y + by.y * part };
        await page.mouse.move(to.x, to.y);
        await drawn(page);
        expect(apart(await middleOf(page, id), to), `${key} at ${part}`).toBeLessThan(FOLLOWS_WITHIN_PX);
      }
      await page.mouse.up();
      await page.keyboard.up('Control');
      await drawn(page);
      await expect(undoButton(page)).toHaveAccessibleName(/^Undo: Moved /);
      await undo(page);
      await expectNoUndo(page);
    }
    expect(await savedText(page)).toBe(first);
  });

test('the tail, the top clamp and the axle are pulled in Adjusters mode and turn their adjusters', async ({
  page,
}) => {
  await openPage(page);
  const pulls = [
    { id: 'grip-shockLength', x: 0, y: -14, label: REAR_HEIGHT, least: 3 },
    { id: 'grip-forkTubes', x: 2, y: 9, label: FRONT_HEIGHT, least: 5.5 },
    { id: 'grip-axlePosition', x: -5, y: 1, label: adjusterLabel('axlePosition', 'chain'), least: 14 },
  ];
  const first = await savedText(page);
  for (const { id, x, y, label, least } of pulls) {
    await openAdjuster(page, label);
    const from = await middleOf(page, id);
    await pressAndMove(page, from, { x: from.x + x, y: from.y + y });
    await expect.poll(async () => Number(await field(page, label).inputValue())).toBeGreaterThan(least);
    await page.mouse.up();
    await expect(undoButton(page)).toHaveAccessibleName(`Undo: ${label}`);
    await undo(page);
    await expectNoUndo(page);
  }
  expect(await savedText(page)).toBe(first);
});

test('a pulled tail goes the pointer’s way, its whole range takes 150 px, and it is held in it', async ({
  page,
}) => {
  await openPage(page);
  const start = await savedDocument(page);
  const range = adjusterRange(adjusterOf('shockLength'), start.bike, start.setup);
  const from = await middleOf(page, 'grip-shockLength');
  await pressAndMove(page, from, { x: from.x, y: from.y - 4 });
  await drawn(page);
  expect((await middleOf(page, 'grip-shockLength')).y).toBeLessThan(from.y);
  const rear = field(page, REAR_HEIGHT);
  await expect.poll(async () => Number(await rear.inputValue())).toBeGreaterThan(0);
  // A step of the adjuster may come on top.
  expect(Number(await rear.inputValue())).toBeLessThanOrEqual(
    (4 / 150) * (range.most - range.least) + range.step,
  );
  await page.mouse.move(from.x, from.y - 250, { steps: 4 });
  await page.mouse.up();
  const { bike, setup } = await savedDocument(page);
  // Links may end the range before the workshop's own 30 mm.
  expect(setup.shockLength).toBe(adjusterRange(adjusterOf('shockLength'), bike, setup).most);
  expect(setup.shockLength).toBeGreaterThan(20);
  await expect(field(page, REAR_HEIGHT)).toHaveValue(setup.shockLength.toFixed(1));
});

test('S5: a drag into danger or beyond what can be says so, and the side view stays under the hand', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const first = await savedText(page);
  const box = await sideView(page).boundingBox();
  const foot = page.locator('section.side-view > .foot [role="alert"]');
  const rear = await middleOf(page, 'point-rearAxle');
  const pivot = await middleOf(page, 'point-pivot');
  await page.keyboard.down('Control');
  await pressAndMove(page, rear, { x: pivot.x + 30, y: pivot.y });
  await expect(foot).toContainText('The rear axle has to stay behind the swingarm pivot.');
  expect(await sideView(page).boundingBox()).toEqual(box);
  await page.mouse.move(rear.x, rear.y, { steps: 4 });
  await expect(foot).toBeHidden();
  await page.mouse.up();
  await expectNoUndo(page);
  const bolt = await middleOf(page, 'point-rodOnRocker');
  const scale = await bikeScale(page);
  await pressAndMove(page, bolt, {
    x: bolt.x + BEYOND_LINKS_MM.x * scale,
    y: bolt.y + BEYOND_LINKS_MM.y * scale,
  });
  await expect(foot).toContainText('With the point there the shock would grow longer as the wheel rises.');
  expect(await sideView(page).boundingBox()).toEqual(box);
  await page.mouse.move(bolt.x, bolt.y, { steps: 4 });
  await expect(foot).toBeHidden();
  await page.mouse.up();
  await expectNoUndo(page);
  const axle = await middleOf(page, 'point-frontAxle');
  await pressAndMove(page, axle, { x: axle.x + 44, y: axle.y - 12 });
  await expect(foot).toContainText('Do not ride like this.');
  expect(await sideView(page).boundingBox()).toEqual(box);
  await drawn(page);
  expect(apart(await middleOf(page, 'point-frontAxle'), { x: axle.x + 44, y: axle.y - 12 })).toBeLessThan(
    FOLLOWS_WITHIN_PX,
  );
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await page.keyboard.up('Control');
  await expect(foot).toBeHidden();
  expect(await savedText(page)).toBe(first);
});
