/** The side view in a browser test: where its points and grips are, and taking hold of them with the mouse. */
import { expect, type Locator, type Page } from '@playwright/test';
import { expectLookedFor } from './bikes.ts';

export interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * Opens the page and waits until what was kept has been looked for and the bike is fitted into its window. `state` chooses
 * a ride state: one in which the springs do not carry the bike, where a test says by how much a point moves.
 */
export async function openPage(page: Page, state?: 'Topped out', address = '/'): Promise<void> {
  await page.goto(address);
  await expectLookedFor(page);
  await expect(handle(page, 'point-pivot')).toBeAttached();
  await expect(sideView(page)).toBeVisible();
  if (state === undefined) return;
  await page.getByRole('radio', { name: state, exact: true }).check({ force: true });
  await drawn(page);
}

export function sideView(page: Page): Locator {
  return page.getByRole('application', { name: 'Side view of the bike' });
}

/** The line below the side view, once what follows the hand is there. */
export function handLine(page: Page): Locator {
  return page.locator('section.side-view > .foot');
}

/** A point such as `point-pivot` or a grip such as `grip-shockLength`. */
export function handle(page: Page, id: string): Locator {
  return page.locator(`[data-handle="${id}"]`);
}

/** Where a handle's middle is, px of the window, unrounded. */
export async function middleOf(page: Page, id: string): Promise<Place> {
  return await handle(page, id).evaluate((element: HTMLElement) => {
    const { left, top } = (element.offsetParent as HTMLElement).getBoundingClientRect();
    const { e, f } = new DOMMatrix(element.style.transform);
    return { x: left + e, y: top + f };
  });
}

export function apart(a: Place, b: Place): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Waits for the page to have drawn what it was told. */
export async function drawn(page: Page): Promise<void> {
  await page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(null)))),
  );
}

export type HandMode = 'Adjusters' | 'Edit' | 'Measure';

export async function chooseMode(page: Page, mode: HandMode): Promise<void> {
  const group = page.getByRole('group', { name: 'A hand on the side view' });
  await group.getByText(mode, { exact: true }).click();
  await expect(group.getByRole('radio', { name: mode })).toBeChecked();
}

/** Presses at `from`, moves in steps to `to` and keeps the button down. */
export async function pressAndMove(page: Page, from: Place, to: Place, steps = 5): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps });
}

/** Drags a handle by px from its middle, with snapping off, and lets go. */
export async function dragHandle(page: Page, id: string, dx: number, dy: number): Promise<void> {
  const from = await middleOf(page, id);
  await page.keyboard.down('Control');
  await pressAndMove(page, from, { x: from.x + dx, y: from.y + dy });
  await page.mouse.up();
  await page.keyboard.up('Control');
  await drawn(page);
}

/** A spot of the side view that no handle is near, px of the window: a little inside its upper left corner. */
export async function emptySpot(page: Page): Promise<Place> {
  const box = await sideView(page).boundingBox();
  if (box === null) throw new Error('the side view is not on the page');
  return { x: box.x + 24, y: box.y + 24 };
}

/** px of the screen per mm, from the two contact patches, `wheelbase` mm apart. */
export async function pxPerMm(page: Page, wheelbase: number): Promise<number> {
  const rear = await middleOf(page, 'point-rearPatch');
  const front = await middleOf(page, 'point-frontPatch');
  return (front.x - rear.x) / wheelbase;
}

/** Zooms out about a handle so far that others lie on the same spot. */
export async function zoomOutAt(page: Page, id: string): Promise<void> {
  const at = await middleOf(page, id);
  await page.mouse.move(at.x, at.y);
  await page.keyboard.down('Control');
  for (let turn = 0; turn < 5; turn++) await page.mouse.wheel(0, 25);
  await page.keyboard.up('Control');
  await drawn(page);
}
