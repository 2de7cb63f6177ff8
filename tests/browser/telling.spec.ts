/** What is told of a change, to the eye and to those who listen. */
import { expect, test, type Page } from '@playwright/test';
import { waysTold } from '../../src/words/change/ways-told.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { metricReading, savedDocument, standing } from './support/bike-document.ts';
import {
  changeText,
  field,
  liveRegion,
  readingLine,
  readings,
  REAR_HEIGHT,
  typeInto,
  undo,
} from './support/panels.ts';
import { chooseMode, handle, middleOf, openPage } from './support/side-view.ts';

interface Told {
  readonly atMs: number;
  readonly text: string;
}

/** Notes every message of the live region with the page's own time. */
async function listen(page: Page): Promise<void> {
  await liveRegion(page).evaluate((element) => {
    const told: Told[] = [];
    Object.assign(window, { told });
    new MutationObserver(() => told.push({ atMs: performance.now(), text: element.textContent })).observe(
      element,
      {
        childList: true,
        characterData: true,
        subtree: true,
      },
    );
  });
}

async function toldSoFar(page: Page): Promise<Told[]> {
  return await page.evaluate(() => (window as unknown as { told: Told[] }).told);
}

for (const { mode, id, by } of [
  { mode: 'Adjusters', id: 'grip-shockLength', by: { x: 0, y: -0.5 } },
  { mode: 'Edit', id: 'point-frontAxle', by: { x: 0.7, y: 0.2 } },
] as const)
  test(`S10: a drag of three seconds is read aloud at most twice a second and once at its end, ${id}`, async ({
    page,
  }) => {
    await page.clock.install();
    await openPage(page);
    await chooseMode(page, mode);
    const from = await middleOf(page, id);
    // From here on time passes only as the test lets it.
    await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);
    await listen(page);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    for (let step = 1; step <= 30; step++) {
      await page.mouse.move(from.x + 4 + by.x * step, from.y - 4 + by.y * step);
      await page.clock.runFor(100);
    }
    const during = await toldSoFar(page);
    // Nobody hears a last message that comes while the one before it is still being read.
    expect(during.length).toBeGreaterThanOrEqual(4);
    for (const [i, { atMs }] of during.entries()) {
      const within = during.slice(i).filter((other) => other.atMs < atMs + 999);
      expect(within.length).toBeLessThanOrEqual(2);
    }
    await page.mouse.up();
    await page.clock.runFor(2000);
    const after = (await toldSoFar(page)).slice(during.length);
    expect(after.length).toBeLessThanOrEqual(1);
    const last = (await toldSoFar(page)).at(-1)?.text ?? '';
    const named = READINGS.find(({ label }) => last.includes(`: ${label} `));
    expect(named, last).toBeDefined();
  });

test('S10: the message at the end says what changed most, its value now and a word for the change', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '10');
  await expect(liveRegion(page)).toHaveText(/^[A-Z].* −?[\d.]+.*, \p{L}+/u);
  const text = await liveRegion(page).innerText();
  const told = READINGS.find(({ label }) => text.startsWith(`${REAR_HEIGHT}: ${label} `));
  if (told === undefined) throw new Error(`no reading in "${text}"`);
  expect([told.more, told.less]).toContain(text.split(', ').slice(1).join(', '));
  await undo(page);
  // The way back is the other way.
  await expect(liveRegion(page)).toContainText(text.endsWith(told.more) ? told.less : told.more);
});

test('S10: a key that moves a point is read aloud at once', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await handle(page, 'point-frontAxle').press('Shift+ArrowUp');
  await expect(liveRegion(page)).toHaveText(/, \p{L}+/u);
});

test('S10: a bike that cannot stand is read aloud', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await page.getByText('Fork', { exact: true }).click();
  await typeInto(page, 'Fork length', '10');
  await expect(liveRegion(page)).toHaveText('Fork length: The bike cannot stand like this.');
});

test('S11: every changed reading is signed, with an arrow and a word, the right way round', async ({
  page,
}) => {
  await openPage(page);
  const before = standing(await savedDocument(page));
  await typeInto(page, REAR_HEIGHT, '-9');
  const after = standing(await savedDocument(page));
  let changed = 0;
  let worded = 0;
  const lines = await readings(page).locator('li .name').allInnerTexts();
  for (const reading of READINGS.filter(({ label }) => lines.includes(label))) {
    const text = await changeText(page, reading.label);
    const by = metricReading(after, reading.key) - metricReading(before, reading.key);
    if (text === 'same') continue;
    changed += 1;
    // A change that nobody notices has its figure only.
    const ways = waysTold(reading, metricReading(before, reading.key), metricReading(after, reading.key));
    const word = by > 0 ? ways.more : ways.less;
    expect(text.startsWith(by > 0 ? '▲ +' : '▼ −'), `${reading.label}: ${text}`).toBe(true);
    expect(text.endsWith(word === '' ? '' : ` ${word}`), `${reading.label}: ${text}`).toBe(true);
    if (word !== '') worded += 1;
  }
  expect(changed).toBeGreaterThan(8);
  expect(worded).toBeGreaterThan(5);
});

test('S11: a turned adjuster tells its own change from the baseline in sign, arrow and word', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '-3');
  await expect(field(page, REAR_HEIGHT)).toHaveAccessibleDescription(/−3\.0\smm.*shorter/);
  await expect(page.locator('.adjuster').first()).toContainText('▼');
  await expect(readingLine(page, 'Rake').locator('.change [aria-hidden]')).toHaveText('▲');
});
