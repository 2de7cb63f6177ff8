/** Points and grips by keyboard, by tap and by figures. */
import { inFrame, onGround } from '../../src/core/chassis/pose.ts';
import { expect, test, type Page } from '@playwright/test';
import { pointsOf, type PointKey } from '../../src/core/sketch/points.ts';
import { GRIPS } from '../../src/core/sketch/grips.ts';
import type { Point } from '../../src/core/plane/point.ts';
import type { BikeDocument } from '../../src/document/document.ts';
import { placeOf, savedDocument, savedText, standing } from './support/bike-document.ts';
import { escaped, expectNoUndo, field, REAR_HEIGHT, undo, undoButton } from './support/panels.ts';
import {
  apart,
  chooseMode,
  drawn,
  emptySpot,
  handle,
  handLine,
  middleOf,
  openPage,
  pxPerMm,
  sideView,
  zoomOutAt,
} from './support/side-view.ts';
import { toggleShown } from './support/side-view-picture.ts';

/** What rounding of saved numbers and of key presses may come to, mm. */
const NUDGE_TOLERANCE = 0.01;

/** The one point or grip that Tab reaches from the tools, and those that Page Down goes on to, round to the first; their ids in order. */
async function pageThroughHandles(page: Page): Promise<string[]> {
  const held = () => page.evaluate(() => document.activeElement?.getAttribute('data-handle') ?? null);
  await page.getByRole('button', { name: 'What is shown' }).focus();
  for (let presses = 0; (await held()) === null; presses++) {
    expect(presses, 'the side view is not reached').toBeLessThan(5);
    await page.keyboard.press('Tab');
  }
  const ids: string[] = [];
  for (let id = await held(); id !== null && !ids.includes(id); id = await held()) {
    ids.push(id);
    await page.keyboard.press('PageDown');
  }
  await page.keyboard.press('PageUp');
  expect(await held()).toBe(ids.at(-1));
  await page.keyboard.press('Tab');
  expect(await held()).toBeNull();
  return ids;
}

test('S1: the side view is one stop of Tab, from which Page keys reach every point and grip that is not locked', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  const points = pointsOf((await savedDocument(page)).bike);
  expect(points.length).toBeGreaterThan(15);
  const grips = GRIPS.map(({ key }) => `grip-${key}`);
  const places = points.map(({ key }) => `point-${key}`);
  for (const [mode, wanted] of [
    ['Adjusters', grips],
    ['Edit', places],
    ['Measure', places],
  ] as const) {
    await chooseMode(page, mode);
    // The point that had the keys last is where they come back to.
    expect((await pageThroughHandles(page)).sort()).toEqual([...wanted].sort());
  }
  for (const { key, label } of points)
    await expect(handle(page, `point-${key}`)).toHaveAccessibleName(
      new RegExp(
        `^${label.replace(/[[\]]/g, '\\$&')}: −?[\\d.]+\\smm ahead of the rear contact patch, −?[\\d.]+\\smm high`,
      ),
    );
  await expect(handle(page, 'grip-shockLength')).toHaveAccessibleName(
    new RegExp(`^${GRIPS[0].label}: ${escaped(REAR_HEIGHT)} 0\\.0\\smm`),
  );
  await expect(handle(page, 'point-pivot')).toHaveRole('button');
});

test('S1: a point is moved from the open page by keyboard alone', async ({ page }) => {
  await openPage(page, 'Topped out');
  const before = await savedDocument(page);
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  const focusedName = () => page.evaluate(() => document.activeElement?.getAttribute('value'));
  for (let presses = 0; (await focusedName()) !== 'adjusters'; presses++) {
    expect(presses, 'the choice of what a hand does is not reached').toBeLessThan(40);
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Edit' })).toBeChecked();
  for (let presses = 0; ; presses++) {
    expect(presses, 'the seat mark is not reached').toBeLessThan(40);
    const id = await page.evaluate(() => document.activeElement?.getAttribute('data-handle') ?? null);
    if (id === 'point-seat') break;
    await page.keyboard.press(id === null ? 'Tab' : 'PageDown');
  }
  await page.keyboard.press('ArrowUp');
  await expect(handle(page, 'point-seat')).toBeFocused();
  const after = await savedDocument(page);
  expect(placeOf(after, 'seat').y - placeOf(before, 'seat').y).toBeCloseTo(1, 2);
});

test('S22: a tap on a point chooses it and shows its figures, and once placing is asked for the next tap is its place', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  await toggleShown(page);
  await page.getByRole('checkbox', { name: /^Snapping/ }).uncheck();
  await toggleShown(page);
  for (const [key, placed] of [
    ['seat', { x: -22, y: -31 }],
    // However near: inside the point's own hit area.
    ['steeringHead', { x: -4, y: -5 }],
    ['frontAxle', { x: -22, y: -31 }],
  ] as const) {
    const before = await savedDocument(page);
    const scale = await pxPerMm(page, standing(before, 'toppedOut').pose.wheelbase);
    const from = await middleOf(page, `point-${key}`);
    await page.mouse.click(from.x, from.y);
    await expect(handle(page, `point-${key}`)).toHaveAttribute('aria-pressed', 'true');
    await expect(page.getByRole('combobox', { name: 'Point', exact: true })).toHaveValue(key);
    await expect(handLine(page)).toContainText(/−?[\d.]+ ahead, −?[\d.]+\smm high/);
    await page.getByRole('button', { name: 'Place it' }).click();
    const to = { x: from.x + placed.x, y: from.y + placed.y };
    await page.mouse.click(to.x, to.y);
    await expect(undoButton(page)).toHaveAccessibleName(/^Undo: Moved /);
    const after = await savedDocument(page);
    // In the frame the point is where it was tapped; the bike then stands anew, so the screen may show it elsewhere.
    const reached = placeInFrameOf(before, after, key);
    const was = placeOf(before, key);
    expect(apart({ x: (reached.x - was.x) * scale, y: (was.y - reached.y) * scale }, placed)).toBeLessThan(
      1.5,
    );
    await undo(page);
    await page.keyboard.press('Escape');
    await handle(page, `point-${key}`).focus();
    await page.keyboard.press('Escape');
    await expect(handle(page, `point-${key}`)).toHaveAttribute('aria-pressed', 'false');
  }
});

test('S1: a point is moved by its figures, and stands where they say', async ({ page }) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  await page.getByRole('combobox', { name: 'Point', exact: true }).selectOption({ label: 'Seat mark' });
  await field(page, 'Ahead of rear contact patch').fill('512.5');
  await field(page, 'Ahead of rear contact patch').press('Enter');
  await field(page, 'Above the ground').fill('801');
  await field(page, 'Above the ground').press('Enter');
  const seat = placeOf(await savedDocument(page), 'seat');
  expect(seat.x).toBeCloseTo(512.5, 6);
  expect(seat.y).toBeCloseTo(801, 6);
  await expect(handle(page, 'point-seat')).toHaveAccessibleName(/: 512\.5\smm ahead .*, 801\.0\smm high/);
});

/** A point of `after` where it lies on the frame, shown on the ground that `before` stood on. */
function placeInFrameOf(before: BikeDocument, after: BikeDocument, key: PointKey): Point {
  return onGround(
    standing(before, 'toppedOut').pose,
    inFrame(standing(after, 'toppedOut').pose, placeOf(after, key)),
  );
}

const STEPS = [
  { press: 'ArrowUp', x: 0, y: 1 },
  { press: 'Shift+ArrowRight', x: 10, y: 0 },
  { press: 'Shift+ArrowDown', x: 0, y: -10 },
  { press: 'Alt+ArrowRight', x: 0.1, y: 0 },
] as const;

test('S2: arrow keys move a point by 1, 10 and 0.1 mm along and up', async ({ page }) => {
  await openPage(page, 'Topped out');
  const told = page.getByText('Arrow keys move it 1 mm, Shift 10, Alt a tenth', { exact: false });
  await expect(told).toBeHidden();
  await chooseMode(page, 'Edit');
  await expect(told).toBeVisible();
  let before = await savedDocument(page);
  for (const key of ['seat', 'rearAxle', 'frontAxle', 'steeringHead'] as const) {
    await handle(page, `point-${key}`).focus();
    for (const { press, x, y } of STEPS) {
      await handle(page, `point-${key}`).press(press);
      const after = await savedDocument(page);
      const was = placeOf(before, key);
      const is = placeInFrameOf(before, after, key);
      expect(Math.abs(is.x - was.x - x), `${key}, ${press} along`).toBeLessThanOrEqual(NUDGE_TOLERANCE);
      expect(Math.abs(is.y - was.y - y), `${key}, ${press} up`).toBeLessThanOrEqual(NUDGE_TOLERANCE);
      before = after;
    }
  }
});

test('S2: an arrow key on a grip turns its adjuster by one step, with Shift by ten', async ({ page }) => {
  await openPage(page, 'Topped out');
  await handle(page, 'grip-shockLength').press('ArrowUp');
  await expect(field(page, REAR_HEIGHT)).toHaveValue('0.5');
  await handle(page, 'grip-shockLength').press('Shift+ArrowUp');
  await expect(field(page, REAR_HEIGHT)).toHaveValue('5.5');
  await undo(page);
  await undo(page);
  await expectNoUndo(page);
});

test('S2: a locked point stays where it is under every key', async ({ page }) => {
  await openPage(page, 'Topped out');
  const before = await savedText(page);
  await handle(page, 'point-seat').press('ArrowUp');
  await handle(page, 'point-seat').press('Enter');
  await expect(handle(page, 'point-seat')).toHaveAccessibleName(/, locked$/);
  expect(await savedText(page)).toBe(before);
});

test('S3: a handle keeps its size and is taken within 12 px of its middle at every zoom', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  for (const turns of [0, -6, -6, 14]) {
    const near = await middleOf(page, 'point-seat');
    await page.mouse.move(near.x, near.y);
    await page.keyboard.down('Control');
    for (let turn = 0; turn < Math.abs(turns); turn++) await page.mouse.wheel(0, Math.sign(turns) * 20);
    await page.keyboard.up('Control');
    await drawn(page);
    const seat = await middleOf(page, 'point-seat');
    const box = await handle(page, 'point-seat').boundingBox();
    // A place between two px may round the box by less than a thousandth.
    expect(box?.width).toBeCloseTo(24, 3);
    expect(box?.height).toBeCloseTo(24, 3);
    for (const [dx, dy] of [
      [-11.5, 0],
      [0, -11.5],
      [-8, -8],
    ] as const) {
      await page.mouse.move(seat.x + dx, seat.y + dy);
      await expect(handle(page, 'point-seat')).toHaveClass(/hovered/);
    }
    await page.mouse.move(seat.x - 9, seat.y - 9);
    await expect(handle(page, 'point-seat')).not.toHaveClass(/hovered/);
  }
});

test('S3: a mark is no longer lit when the mouse has left the side view', async ({ page }) => {
  await openPage(page, 'Topped out');
  const tail = await middleOf(page, 'grip-shockLength');
  await page.mouse.move(tail.x, tail.y);
  await expect(handle(page, 'grip-shockLength')).toHaveClass(/hovered/);
  await page.mouse.move(100, 20);
  await expect(handle(page, 'grip-shockLength')).not.toHaveClass(/hovered/);
});

test('S3: a tap on two points asks which, in full inside the side view, and Escape leaves all as it was', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  await page.mouse.move((await middleOf(page, 'point-pivot')).x, (await middleOf(page, 'point-pivot')).y);
  await page.keyboard.down('Control');
  for (let turn = 0; turn < 5; turn++) await page.mouse.wheel(0, 25);
  await page.keyboard.up('Control');
  const chooser = page.getByRole('group', { name: 'Which one?' });
  const box = await sideView(page).boundingBox();
  if (box === null) throw new Error('no Stand');
  const corners = [
    { x: box.x + box.width / 2, y: box.y + box.height / 2 },
    { x: box.x + box.width - 12, y: box.y + 12 },
    { x: box.x + 12, y: box.y + box.height - 12 },
  ];
  for (const corner of corners) {
    const pivot = await middleOf(page, 'point-pivot');
    const empty = await emptySpot(page);
    await page.mouse.move(empty.x, empty.y);
    await page.mouse.down({ button: 'middle' });
    await page.mouse.move(empty.x + corner.x - pivot.x, empty.y + corner.y - pivot.y);
    await page.mouse.up({ button: 'middle' });
    await drawn(page);
    const at = await middleOf(page, 'point-pivot');
    await page.mouse.click(at.x, at.y);
    await expect(chooser.getByRole('button', { name: 'Swingarm pivot' })).toBeFocused();
    await expect(chooser.getByRole('button', { name: 'Front sprocket' })).toBeVisible();
    const list = await chooser.boundingBox();
    if (list === null) throw new Error('no chooser');
    expect(list.x).toBeGreaterThanOrEqual(box.x);
    expect(list.y).toBeGreaterThanOrEqual(box.y);
    expect(list.x + list.width).toBeLessThanOrEqual(box.x + box.width);
    expect(list.y + list.height).toBeLessThanOrEqual(box.y + box.height);
    await page.keyboard.press('Escape');
    await expect(chooser).toBeHidden();
    await expect(handle(page, 'point-pivot')).toBeFocused();
  }
  const at = await middleOf(page, 'point-pivot');
  await page.mouse.click(at.x, at.y);
  await chooser.getByRole('button', { name: 'Front sprocket' }).click();
  await expect(chooser).toBeHidden();
  await expect(handle(page, 'point-countershaft')).toHaveAttribute('aria-pressed', 'true');
  await expectNoUndo(page);
});

test('S3: the question which point is meant goes away with a change of what a hand does', async ({
  page,
}) => {
  await openPage(page, 'Topped out');
  await chooseMode(page, 'Edit');
  await zoomOutAt(page, 'point-pivot');
  const at = await middleOf(page, 'point-pivot');
  await page.mouse.click(at.x, at.y);
  await expect(page.getByRole('group', { name: 'Which one?' })).toBeVisible();
  await chooseMode(page, 'Adjusters');
  await expect(page.getByRole('group', { name: 'Which one?' })).toBeHidden();
});
