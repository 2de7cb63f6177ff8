/** Words on the side view: whole, apart from one another and clear of the marks to take hold of. */
import { expect, test, type Page } from '@playwright/test';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { readingLine, REAR_HEIGHT, startDemo } from './support/panels.ts';
import { openRide } from './support/ride.ts';
import { chooseMode, drawn, openPage, sideView, type HandMode } from './support/side-view.ts';
import { pictureText, wordBoxes, type WordBox } from './support/side-view-picture.ts';

/** Digits of a picture are rounded; what that may come to, px. */
const ROUNDING_PX = 0.01;

/** The marks that are seen, px of the side view. */
async function marks(page: Page): Promise<WordBox[]> {
  return await sideView(page).evaluate((element) => {
    const { left, top } = element.getBoundingClientRect();
    return [...element.querySelectorAll('[data-handle] .mark')]
      .filter((mark) => getComputedStyle(mark).opacity !== '0')
      .map((mark) => {
        const box = mark.getBoundingClientRect();
        return {
          text: mark.parentElement?.dataset.handle ?? '',
          layer: 'marks',
          left: box.left - left,
          top: box.top - top,
          right: box.right - left,
          bottom: box.bottom - top,
        };
      });
  });
}

function overlap(a: WordBox, b: WordBox): boolean {
  return (
    a.left < b.right - ROUNDING_PX &&
    b.left < a.right - ROUNDING_PX &&
    a.top < b.bottom - ROUNDING_PX &&
    b.top < a.bottom - ROUNDING_PX
  );
}

async function expectWordsApart(page: Page, wanted: readonly string[], when: string): Promise<void> {
  await drawn(page);
  const seen = await marks(page);
  const { widthPx, heightPx, boxes } = await wordBoxes(page.context(), await pictureText(page));
  for (const word of wanted)
    expect(boxes.map(({ text }) => text).join('; '), `${when} names ${word}`).toContain(word);
  for (const [i, box] of boxes.entries()) {
    expect(box.left, `${when}: ${box.text}`).toBeGreaterThanOrEqual(0);
    expect(box.top, `${when}: ${box.text}`).toBeGreaterThanOrEqual(0);
    expect(box.right, `${when}: ${box.text}`).toBeLessThanOrEqual(widthPx);
    expect(box.bottom, `${when}: ${box.text}`).toBeLessThanOrEqual(heightPx);
    const over = [...boxes.slice(i + 1), ...seen].filter((other) => overlap(box, other));
    expect(
      over.map(({ text }) => text),
      `${when}: what lies over ${box.text}`,
    ).toEqual([]);
  }
}

const WIDE = {
  width: 1280,
  height: 720,
  words: ['Trail', 'Rake', 'Squat line, anti-squat', 'Swingarm', 'Wheelbase'],
};
const NARROW = { width: 390, height: 844, words: ['Trail', 'Rake', 'Anti-squat'] };
const CASES: readonly (typeof WIDE & { modes: readonly HandMode[] })[] = [
  { ...WIDE, modes: ['Adjusters', 'Edit'] },
  { ...NARROW, modes: ['Adjusters', 'Measure'] },
];

for (const { width, height, words, modes } of CASES)
  test(`S8: words do not overlap, and none is cut, at ${width} × ${height} on all demonstration bikes, ${modes.join(' and ')}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await openPage(page);
    for (const { bike } of DEMO_BIKES) {
      await startDemo(page, bike.name);
      for (const mode of modes) {
        await chooseMode(page, mode);
        await expectWordsApart(page, words, `${bike.name}, ${mode}`);
      }
    }
  });

test('S8: words keep apart while the view is moved and the adjusters are turned far', async ({ page }) => {
  await openPage(page);
  for (const typed of ['30', '-30']) {
    await page.getByRole('textbox', { name: REAR_HEIGHT }).fill(typed);
    await page.keyboard.press('Enter');
    await expectWordsApart(page, ['Trail', 'Rake'], typed);
  }
  for (const key of ['+', '+', '-', '-', '-', '-']) {
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await page.keyboard.press(key);
    await expectWordsApart(page, [], `after ${key}`);
  }
});

for (const { width, height } of [WIDE, NARROW])
  test(`S8: the names of ghosts overlap nothing, at ${width} × ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openPage(page);
    await openRide(page);
    for (const box of await page.getByRole('checkbox', { name: /^Outline of / }).all()) await box.check();
    const names = [
      // All but the state that is drawn in full.
      'No rider',
      'Accelerating',
      'Throttle closed',
      'Braking',
      'Mid-corner',
      'Topped out',
      'Travel set by hand',
    ];
    await expectWordsApart(page, names, 'all ghosts');
  });

test('S8: words keep apart too where a chosen reading adds its own', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Choose readings' }).click();
  await page.getByRole('button', { name: /^Show all/ }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('group', { name: 'Ride state' }).getByText('Rider on board', { exact: true }).click();
  for (const [label, words] of [
    ['Engine braking, anti-rise', 'Engine-braking line'],
    ['Rear brake, anti-rise', 'Rear-brake line'],
    ['Fork travel left', 'Fork travel left'],
    ['Rear travel left', 'Rear travel left'],
    ['Tyre clearance to lower clamp [bottom yoke], fork bottomed', 'with the fork fully in'],
    ['Fork tube to spare', 'Tube to spare'],
    ['Front wheel load', 'N'],
  ]) {
    await readingLine(page, label).click();
    await expectWordsApart(page, [words, 'Rake'], label);
  }
});
