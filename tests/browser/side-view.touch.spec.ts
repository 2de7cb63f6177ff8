/** Fingers on the side view: taps, drags, pans and pinches on a phone. */
import { expect, test, type Page } from '@playwright/test';
import { PARTS } from '../support/points.ts';
import { savedText } from './support/bike-document.ts';
import { fingersOn, slide } from './support/fingers.ts';
import { expectNoUndo, field, REAR_HEIGHT, undo, undoButton } from './support/panels.ts';
import {
  apart,
  chooseMode,
  drawn,
  handle,
  handLine,
  middleOf,
  openPage,
  sideView,
  type Place,
} from './support/side-view.ts';

const WITHIN_PX = 1;

/** A place of the side view, as parts of its width and height, px of the window. */
async function placeOn(page: Page, right: number, down: number): Promise<Place> {
  const box = await sideView(page).boundingBox();
  if (box === null) throw new Error('the side view is not on the page');
  return { x: box.x + right * box.width, y: box.y + down * box.height };
}

async function expectPageStill(page: Page): Promise<void> {
  const found = await page.evaluate(() => ({
    x: window.scrollX,
    y: window.scrollY,
    zoom: window.visualViewport?.scale,
    left: window.visualViewport?.offsetLeft,
    wide: document.documentElement.scrollWidth,
    tall: document.documentElement.scrollHeight - window.innerHeight,
  }));
  expect(found).toEqual({ x: 0, y: 0, zoom: 1, left: 0, wide: 390, tall: 0 });
}

test('S1: a point moves without a drag: tap it, ask to place it, then tap its place, however near; Cancel leaves it', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const seat = await middleOf(page, 'point-seat');
  await page.touchscreen.tap(seat.x, seat.y);
  await expect(handle(page, 'point-seat')).toHaveAttribute('aria-pressed', 'true');
  const before = await handle(page, 'point-seat').getAttribute('aria-label');
  await page.touchscreen.tap(seat.x - 60, seat.y - 60);
  await expect(handle(page, 'point-seat')).toHaveAttribute('aria-pressed', 'false');
  await expectNoUndo(page);
  await page.touchscreen.tap(seat.x, seat.y);
  await page.getByRole('button', { name: 'Place it' }).tap();
  await expect(handLine(page)).toContainText('Tap where it belongs.');
  await page.getByRole('button', { name: 'Cancel' }).tap();
  await expect(handle(page, 'point-seat')).toHaveAttribute('aria-label', before ?? '');
  await page.getByRole('button', { name: 'Place it' }).tap();
  await page.touchscreen.tap(seat.x - 9, seat.y - 12);
  await expect(handle(page, 'point-seat')).not.toHaveAttribute('aria-label', before ?? '');
  await expect(undoButton(page)).toHaveAccessibleName('Undo: Moved seat mark');
  const now = await middleOf(page, 'point-seat');
  // Snapping takes hold within 3 mm of the bike, which is less than a px here.
  expect(apart(now, { x: seat.x - 9, y: seat.y - 12 })).toBeLessThan(2);
  await undo(page);
  await expectNoUndo(page);
});

/** A place that is not on a whole pixel takes a little from a size by the browser's own rounding, px. */
const ROUNDING_PX = 0.01;

test('S3: every point and grip has a hit area of 44 px for a finger, which takes it 20 px beside its middle', async ({
  page,
}) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const points = await page.locator('[data-handle^="point-"]').all();
  expect(points.length).toBeGreaterThan(PARTS.length);
  for (const point of points) {
    const box = await point.boundingBox();
    expect(box?.width).toBeGreaterThanOrEqual(44 - ROUNDING_PX);
    expect(box?.height).toBeGreaterThanOrEqual(44 - ROUNDING_PX);
  }
  const mark = await middleOf(page, 'point-loadMark');
  await page.touchscreen.tap(mark.x - 14, mark.y - 14);
  await expect(handle(page, 'point-loadMark')).toHaveAttribute('aria-pressed', 'true');
});

test('S3: a tap where points lie close together asks which one is meant', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const pivot = await middleOf(page, 'point-pivot');
  const countershaft = await middleOf(page, 'point-countershaft');
  expect(apart(pivot, countershaft)).toBeLessThan(22);
  await page.touchscreen.tap(pivot.x, pivot.y);
  const chooser = page.getByRole('group', { name: 'Which one?' });
  await chooser.getByRole('button', { name: 'Front sprocket' }).tap();
  await expect(handle(page, 'point-countershaft')).toHaveAttribute('aria-pressed', 'true');
  await expect(chooser).toHaveCount(0);
});

test('S4: one finger on an empty place pans, and the page stays where it is', async ({ page }) => {
  await openPage(page);
  const before = await middleOf(page, 'point-seat');
  const fingers = await fingersOn(page);
  const from = await placeOn(page, 0.08, 0.12);
  await slide(fingers, from, { x: from.x + 60, y: from.y + 45 });
  await fingers.lift();
  await drawn(page);
  expect(apart(await middleOf(page, 'point-seat'), { x: before.x + 60, y: before.y + 45 })).toBeLessThan(
    WITHIN_PX,
  );
  await expectPageStill(page);
  await expectNoUndo(page);
});

test('S4: two fingers zoom about what lies between them, and the page itself does not', async ({ page }) => {
  await openPage(page);
  const fingers = await fingersOn(page);
  const middle = await placeOn(page, 0.5, 0.4);
  const apartBy = (px: number, by: Place = { x: 0, y: 0 }): readonly [Place, Place] => [
    { x: middle.x + by.x - px, y: middle.y + by.y },
    { x: middle.x + by.x + px, y: middle.y + by.y },
  ];
  const pinch = async (fromPx: number, toPx: number, by: Place): Promise<void> => {
    const [first] = apartBy(fromPx);
    await fingers.at(first);
    await fingers.at(...apartBy(fromPx));
    for (let step = 1; step <= 4; step++)
      await fingers.at(
        ...apartBy(fromPx + (step * (toPx - fromPx)) / 4, { x: (by.x * step) / 4, y: (by.y * step) / 4 }),
      );
    await fingers.lift();
    await drawn(page);
  };
  const ids = PARTS.map(({ key }) => `point-${key}`);
  for (const [fromPx, toPx, by] of [
    [40, 80, { x: 0, y: 0 }],
    [80, 50, { x: 12, y: -8 }],
  ] as const) {
    const before = await Promise.all(ids.map((id) => middleOf(page, id)));
    await pinch(fromPx, toPx, by);
    for (const [i, id] of ids.entries()) {
      const factor = toPx / fromPx;
      const expected = {
        x: middle.x + by.x + factor * (before[i].x - middle.x),
        y: middle.y + by.y + factor * (before[i].y - middle.y),
      };
      expect(apart(await middleOf(page, id), expected)).toBeLessThan(WITHIN_PX);
    }
  }
  await expectPageStill(page);
  await expectNoUndo(page);
});

test('S4: a second finger during a drag takes the drag back and pinches', async ({ page }) => {
  await openPage(page);
  const text = await savedText(page);
  await chooseMode(page, 'Edit');
  const seat = await middleOf(page, 'point-seat');
  const words = await handle(page, 'point-seat').getAttribute('aria-label');
  const fingers = await fingersOn(page);
  const to = { x: seat.x - 30, y: seat.y - 40 };
  await slide(fingers, seat, to);
  await expect(handle(page, 'point-seat')).not.toHaveAttribute('aria-label', words ?? '');
  const second = { x: to.x + 100, y: to.y };
  await fingers.at(to, second);
  await expect(handle(page, 'point-seat')).toHaveAttribute('aria-label', words ?? '');
  expect(apart(await middleOf(page, 'point-seat'), seat)).toBeLessThan(WITHIN_PX);
  await fingers.at(to, { x: second.x + 100, y: second.y });
  await drawn(page);
  // Twice the distance about the first finger, which stayed.
  expect(
    apart(await middleOf(page, 'point-seat'), {
      x: to.x + 2 * (seat.x - to.x),
      y: to.y + 2 * (seat.y - to.y),
    }),
  ).toBeLessThan(WITHIN_PX);
  await fingers.lift();
  await expectNoUndo(page);
  expect(await savedText(page)).toBe(text);
});

test('S5: a touch that the system takes away puts the point back', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  const seat = await middleOf(page, 'point-seat');
  const words = await handle(page, 'point-seat').getAttribute('aria-label');
  const fingers = await fingersOn(page);
  await slide(fingers, seat, { x: seat.x - 30, y: seat.y - 40 });
  await fingers.cancel();
  await expect(handle(page, 'point-seat')).toHaveAttribute('aria-label', words ?? '');
  await expectNoUndo(page);
});

test('a finger pulls the tail up by its grip, and the shock length follows as one change', async ({
  page,
}) => {
  await openPage(page);
  const grip = await middleOf(page, 'grip-shockLength');
  const fingers = await fingersOn(page);
  await slide(fingers, { x: grip.x + 8, y: grip.y - 8 }, { x: grip.x + 8, y: grip.y - 38 });
  const field_ = field(page, REAR_HEIGHT);
  await expect(field_).not.toHaveValue('0.0');
  await fingers.lift();
  expect(Number(await field_.inputValue())).toBeGreaterThan(5);
  await expect(undoButton(page)).toHaveAccessibleName(`Undo: ${REAR_HEIGHT}`);
  await undo(page);
  await expect(field_).toHaveValue('0.0');
  await expectNoUndo(page);
  await expectPageStill(page);
});
