/** Sliders under a finger: swipes that scroll past them, their thumbs, and touches that the system takes away. */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { savedText } from './support/bike-document.ts';
import { cursor, curves, openCurves } from './support/curves.ts';
import { fingersOn, slide, type Fingers } from './support/fingers.ts';
import { expectNoUndo, undoButton } from './support/panels.ts';
import { cornerSlider, openRide } from './support/ride.ts';
import { drawn, openPage, type Place } from './support/side-view.ts';
import { choosePanel, trackOf, type Track } from './support/touch.ts';

/** How far a swipe goes that scrolls, and the least way for the whole of a slider's range, px. */
const SWIPE_PX = 160;
const LEAST_RUN_PX = 150;

/** How far everything on the page is scrolled, px. */
const scrolled = (page: Page): Promise<number> =>
  page.evaluate(() =>
    [...document.querySelectorAll('*')].reduce((sum, element) => sum + element.scrollTop, 0),
  );

/** Waits until nothing scrolls on: a swipe throws the page, and a thumb measured meanwhile is gone when the finger comes. */
async function atRest(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const places = (): string =>
      [...document.querySelectorAll('*')].map((element) => element.scrollTop).join();
    let [before, still] = [places(), 0];
    while (still < 4) {
      await new Promise(requestAnimationFrame);
      const now = places();
      still = now === before ? still + 1 : 0;
      before = now;
    }
  });
}

/** In which way the bike is read, in words, whether or not they are in sight. */
const readAs = (page: Page): Locator => page.locator('[data-ride-sentence]');

/** Swipes up and down across a place; true when something scrolled. */
async function swipeAcross(page: Page, fingers: Fingers, from: Place): Promise<boolean> {
  const before = await scrolled(page);
  let moved = false;
  for (const way of [-SWIPE_PX, SWIPE_PX]) {
    // A little sideways, as a thumb of a hand goes.
    await slide(fingers, from, { x: from.x + 12, y: from.y + way }, 6);
    await drawn(page);
    moved ||= (await scrolled(page)) !== before;
    await fingers.lift();
    await atRest(page);
  }
  return moved;
}

/** A place of the track beside the thumb, on its longer side. */
function beside({ thumb, runPx, least, most, value }: Track): Place {
  const isLeft = value - least > most - value;
  return { x: thumb.x + (isLeft ? -0.4 : 0.4) * runPx, y: thumb.y };
}

test('S20: a swipe that scrolls over any adjuster’s slider changes nothing', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Open all adjusters' }).tap();
  const text = await savedText(page);
  const fingers = await fingersOn(page);
  const sliders = page.getByRole('region', { name: 'Adjusters' }).getByRole('slider', { disabled: false });
  const count = await sliders.count();
  expect(count).toBeGreaterThan(20);
  let scrolledAtAll = 0;
  // All sliders are one component; a few of them are enough to meet each kind of number.
  for (let i = 0; i < count; i += 5) {
    const slider = sliders.nth(i);
    const track = await trackOf(slider);
    for (const from of [track.thumb, beside(track)]) {
      if (await swipeAcross(page, fingers, from)) scrolledAtAll += 1;
      await trackOf(slider);
      expect(Number(await slider.inputValue())).toBe(track.value);
    }
  }
  expect(scrolledAtAll).toBeGreaterThan(count / 5);
  await expectNoUndo(page);
  expect(await savedText(page)).toBe(text);
});

test('S20: a tap beside the thumb changes nothing, and neither does one on it', async ({ page }) => {
  await openPage(page);
  const slider = page.getByRole('region', { name: 'Adjusters' }).getByRole('slider').first();
  const track = await trackOf(slider);
  for (const at of [track.thumb, beside(track)]) await page.touchscreen.tap(at.x, at.y);
  await drawn(page);
  expect(Number(await slider.inputValue())).toBe(track.value);
  await expectNoUndo(page);
});

test('S20: a finger on the thumb starts without a jump, spreads the range over its way, and is one undo', async ({
  page,
}) => {
  await openPage(page);
  const slider = page.getByRole('region', { name: 'Adjusters' }).getByRole('slider').first();
  const track = await trackOf(slider);
  expect(track.runPx).toBeGreaterThanOrEqual(LEAST_RUN_PX);
  const perPx = (track.most - track.least) / track.runPx;
  const fingers = await fingersOn(page);
  // Beside the thumb's middle, where a jump would be seen.
  const from = { x: track.thumb.x + 15, y: track.thumb.y };
  await fingers.at(from);
  const values = [track.value];
  for (let px = 4; px <= 80; px += 4) {
    await fingers.at({ x: from.x + px, y: from.y });
    await drawn(page);
    values.push(Number(await slider.inputValue()));
  }
  const steps = values.slice(1).map((value, i) => value - values[i]);
  // No move of 4 px changes more than its own share, and a rounding to the adjuster's step.
  expect(Math.max(...steps)).toBeLessThanOrEqual(4 * perPx + 1);
  expect(Math.min(...steps)).toBeGreaterThanOrEqual(0);
  const whole = values[values.length - 1] - track.value;
  expect(whole).toBeGreaterThan(40 * perPx - 1);
  expect(whole).toBeLessThan(80 * perPx);
  await fingers.lift();
  await expect(undoButton(page)).toBeEnabled();
  expect(Number(await slider.inputValue())).toBe(values[values.length - 1]);
  await undoButton(page).tap();
  await expect(slider).toHaveValue(String(track.value));
  await expectNoUndo(page);
});

test('S20: a touch that the system takes away puts the value back', async ({ page }) => {
  await openPage(page);
  const text = await savedText(page);
  const slider = page.getByRole('region', { name: 'Adjusters' }).getByRole('slider').first();
  const { thumb, value } = await trackOf(slider);
  const fingers = await fingersOn(page);
  await slide(fingers, thumb, { x: thumb.x + 70, y: thumb.y }, 10);
  await expect(slider).not.toHaveValue(String(value));
  await fingers.cancel();
  await expect(slider).toHaveValue(String(value));
  await expectNoUndo(page);
  expect(await savedText(page)).toBe(text);
});

test('S20: swipes over the curves and their slider change nothing, and a touch taken away puts all back', async ({
  page,
}) => {
  await openPage(page);
  const text = await savedText(page);
  await choosePanel(page, 'Why and more');
  await openCurves(page, 'Anti-squat', 'Rear travel');
  const state = (await readAs(page).textContent()) ?? '';
  const value = await cursor(page).inputValue();
  const fingers = await fingersOn(page);
  /** A swipe may have scrolled it out of sight. */
  const track = async (): ReturnType<typeof trackOf> => {
    await cursor(page).scrollIntoViewIfNeeded();
    return await trackOf(cursor(page));
  };
  const line = async (): Promise<Place> => {
    const { thumb } = await track();
    await curves(page)
      .locator('svg[role="img"]')
      .evaluate((chart) => chart.scrollIntoView({ block: 'center' }));
    const box = await curves(page).locator('svg[role="img"]').boundingBox();
    if (box === null) throw new Error('no chart');
    return { x: thumb.x, y: box.y + box.height / 2 };
  };
  const expectSame = async (): Promise<void> => {
    await expect(cursor(page)).toHaveValue(value);
    await expect(readAs(page)).toHaveText(state);
  };
  for (const from of [
    async () => (await track()).thumb,
    async () => beside(await track()),
    line,
    async () => ({ ...(await line()), x: beside(await trackOf(cursor(page))).x }),
  ]) {
    await swipeAcross(page, fingers, await from());
    await expectSame();
  }
  for (const from of [async () => (await track()).thumb, line]) {
    const at = await from();
    await slide(fingers, at, { x: at.x + 70, y: at.y }, 10);
    await expect(cursor(page)).not.toHaveValue(value);
    await expect(readAs(page)).not.toHaveText(state);
    await fingers.cancel();
    await expectSame();
  }
  await expectNoUndo(page);
  expect(await savedText(page)).toBe(text);
});

test('S20: a swipe over the corner sequence leaves the bike in its state, and so does a touch taken away', async ({
  page,
}) => {
  await openPage(page);
  await openRide(page, 'Corner');
  const fingers = await fingersOn(page);
  const slider = cornerSlider(page);
  const state = (await readAs(page).textContent()) ?? '';
  const track = await trackOf(slider);
  for (const from of [track.thumb, beside(track)]) {
    await swipeAcross(page, fingers, from);
    await trackOf(slider);
    await expect(slider).toHaveValue(String(track.value));
    await expect(readAs(page)).toHaveText(state);
  }
  const { thumb } = await trackOf(slider);
  await slide(fingers, thumb, { x: thumb.x + 90, y: thumb.y }, 10);
  await expect(slider).not.toHaveValue(String(track.value));
  await expect(readAs(page)).not.toHaveText(state);
  await fingers.cancel();
  await expect(slider).toHaveValue(String(track.value));
  await expect(readAs(page)).toHaveText(state);
});

test('S20: a swipe over a label or a step button changes nothing', async ({ page }) => {
  await openPage(page);
  const text = await savedText(page);
  const fingers = await fingersOn(page);
  const adjuster = page.getByRole('region', { name: 'Adjusters' }).locator('[data-adjuster]').first();
  for (const target of [adjuster.locator('label'), adjuster.getByRole('button', { name: /one step more/ })]) {
    await target.scrollIntoViewIfNeeded();
    const box = await target.boundingBox();
    if (box === null) throw new Error('no place');
    await swipeAcross(page, fingers, { x: box.x + box.width / 2, y: box.y + box.height / 2 });
  }
  await expectNoUndo(page);
  expect(await savedText(page)).toBe(text);
});
