/** Moving about on the side view with wheel, mouse and keys. */
import { expect, test, type Page } from '@playwright/test';
import { PARTS } from '../support/points.ts';
import { savedText } from './support/bike-document.ts';
import { expectNoUndo, REAR_HEIGHT, typeInto } from './support/panels.ts';
import {
  apart,
  chooseMode,
  drawn,
  emptySpot,
  middleOf,
  openPage,
  pressAndMove,
  sideView,
  type Place,
} from './support/side-view.ts';

const IDS = PARTS.map(({ key }) => `point-${key}`);

async function allMiddles(page: Page): Promise<Place[]> {
  await drawn(page);
  return await Promise.all(IDS.map((id) => middleOf(page, id)));
}

async function wheelAt(page: Page, at: Place, dx: number, dy: number, ctrl = false): Promise<void> {
  await page.mouse.move(at.x, at.y);
  if (ctrl) await page.keyboard.down('Control');
  await page.mouse.wheel(dx, dy);
  if (ctrl) await page.keyboard.up('Control');
}

async function expectMovedBy(page: Page, before: readonly Place[], dx: number, dy: number): Promise<void> {
  await expect
    .poll(async () => {
      const now = await allMiddles(page);
      return Math.max(...now.map((at, i) => apart(at, { x: before[i].x + dx, y: before[i].y + dy })));
    })
    .toBeLessThan(0.01);
}

async function expectUnscrolled(page: Page): Promise<void> {
  const found = await page.evaluate(() => ({
    x: window.scrollX,
    y: window.scrollY,
    zoom: window.visualViewport?.scale,
    ratio: window.devicePixelRatio,
    tall: document.documentElement.scrollHeight - window.innerHeight,
  }));
  expect(found).toEqual({ x: 0, y: 0, zoom: 1, ratio: 1, tall: 0 });
}

test('S4: the wheel turned sideways pans the side view, the page never scrolls, and one press brings the bike back', async ({
  page,
}) => {
  await openPage(page);
  const before = await allMiddles(page);
  const back = page.getByRole('button', { name: 'Back to the bike' });
  await expect(back).toHaveCount(0);
  await wheelAt(page, await emptySpot(page), 120, 0);
  await expectMovedBy(page, before, -120, 0);
  await wheelAt(page, await emptySpot(page), -45, -20);
  await expectMovedBy(page, before, -75, 20);
  await expectUnscrolled(page);
  await back.click();
  await expectMovedBy(page, before, 0, 0);
  await expect(back).toHaveCount(0);
});

test('S4: the wheel zooms about the cursor, wherever it is, also at both ends of the scale', async ({
  page,
}) => {
  await openPage(page);
  const box = await sideView(page).boundingBox();
  if (box === null) throw new Error('no Stand');
  const cursors = [
    { x: box.x + 40, y: box.y + 30 },
    { x: box.x + box.width * 0.7, y: box.y + box.height * 0.6 },
    { x: box.x + box.width - 15, y: box.y + box.height - 9 },
  ];
  for (const cursor of cursors)
    for (const dy of [-13, -400, 400]) {
      const before = await allMiddles(page);
      await wheelAt(page, cursor, 0, dy, true);
      await expect.poll(async () => apart((await allMiddles(page))[0], before[0])).toBeGreaterThan(0);
      const after = await allMiddles(page);
      const factor = apart(after[0], after[6]) / apart(before[0], before[6]);
      expect(dy < 0 ? factor : 1 / factor).toBeGreaterThan(1.05);
      // The place under the cursor is where it was: every point has moved away from it by the same factor.
      for (const [i, at] of after.entries()) {
        const wanted = {
          x: cursor.x + (before[i].x - cursor.x) * factor,
          y: cursor.y + (before[i].y - cursor.y) * factor,
        };
        expect(apart(at, wanted)).toBeLessThan(1);
      }
    }
  await page.keyboard.down('Control');
  for (let turn = 0; turn < 15; turn++) await page.mouse.wheel(0, -400);
  await page.keyboard.up('Control');
  const nearest = await allMiddles(page);
  await wheelAt(page, cursors[1], 0, -400, true);
  await expectMovedBy(page, nearest, 0, 0);
  await expectUnscrolled(page);
});

test('S4: a double press brings what lies there to the middle, larger, and one press brings the bike back', async ({
  page,
}) => {
  await openPage(page);
  const box = await sideView(page).boundingBox();
  if (box === null) throw new Error('the side view is not on the page');
  const before = await allMiddles(page);
  const pressed = { x: box.x + 60, y: box.y + 40 };
  await page.mouse.dblclick(pressed.x, pressed.y);
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await expectFarther(page, before, pressed, middle);
  await page.getByRole('button', { name: 'Back to the bike' }).click();
  await expectMovedBy(page, before, 0, 0);
});

/** Every point lies about `middle` as it lay about `pressed`, 2.5 times as far. */
async function expectFarther(
  page: Page,
  before: readonly Place[],
  pressed: Place,
  middle: Place,
): Promise<void> {
  await expect
    .poll(async () => {
      const now = await allMiddles(page);
      return Math.max(
        ...now.map((at, i) =>
          apart(at, {
            x: middle.x + 2.5 * (before[i].x - pressed.x),
            y: middle.y + 2.5 * (before[i].y - pressed.y),
          }),
        ),
      );
    })
    .toBeLessThan(1);
}

test('S4: dragging an empty place or with the middle button pans and changes nothing', async ({ page }) => {
  await openPage(page);
  const text = await savedText(page);
  await chooseMode(page, 'Edit');
  const before = await allMiddles(page);
  const spot = await emptySpot(page);
  await pressAndMove(page, spot, { x: spot.x + 33, y: spot.y + 21 });
  await page.mouse.up();
  await expectMovedBy(page, before, 33, 21);
  const axle = await middleOf(page, 'point-frontAxle');
  await page.mouse.move(axle.x, axle.y);
  await page.mouse.down({ button: 'middle' });
  await page.mouse.move(axle.x - 30, axle.y - 10, { steps: 3 });
  await page.mouse.up({ button: 'middle' });
  await expectMovedBy(page, before, 3, 11);
  expect(await savedText(page)).toBe(text);
  await expectNoUndo(page);
});

test('S4: F and the button fit the whole bike again, as it was fitted on opening', async ({ page }) => {
  await openPage(page);
  const box = await sideView(page).boundingBox();
  if (box === null) throw new Error('no Stand');
  const before = await allMiddles(page);
  for (const at of before) {
    expect(at.x).toBeGreaterThan(box.x);
    expect(at.x).toBeLessThan(box.x + box.width);
    expect(at.y).toBeGreaterThan(box.y);
    expect(at.y).toBeLessThan(box.y + box.height);
  }
  for (const fitting of [
    () => page.keyboard.press('f'),
    () => page.getByRole('button', { name: 'Fit the bike' }).click(),
  ]) {
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await wheelAt(page, await emptySpot(page), 70, 90);
    await expect.poll(async () => apart((await allMiddles(page))[0], before[0])).toBeGreaterThan(20);
    await fitting();
    await expectMovedBy(page, before, 0, 0);
  }
});

test('S4: a turned adjuster leaves the view as it is, and a new size of the window fits the bike', async ({
  page,
}) => {
  await openPage(page);
  const rear = await middleOf(page, 'point-rearPatch');
  await typeInto(page, REAR_HEIGHT, '20');
  await drawn(page);
  expect(apart(await middleOf(page, 'point-rearPatch'), rear)).toBeLessThan(0.01);
  await page.setViewportSize({ width: 1500, height: 900 });
  await expect.poll(async () => apart(await middleOf(page, 'point-rearPatch'), rear)).toBeGreaterThan(10);
  const box = await sideView(page).boundingBox();
  if (box === null) throw new Error('no Stand');
  for (const at of await allMiddles(page)) {
    expect(at.x).toBeGreaterThan(box.x);
    expect(at.x).toBeLessThan(box.x + box.width);
    expect(at.y).toBeGreaterThan(box.y);
    expect(at.y).toBeLessThan(box.y + box.height);
  }
});
