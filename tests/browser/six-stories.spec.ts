/** What people come for, each from the open page: how many presses it takes, that no way is the wrong one, and that words and figures agree. */
import { expect, test, type Page } from '@playwright/test';
import { adjusterLabel, namedAdjusters } from '../../src/core/adjusters/named-adjusters.ts';
import { shownRise } from '../../src/words/change/height-words.ts';
import { heightPlace, heightsAt } from '../../src/core/effects/height-places.ts';
import { METRIC, metricReading, savedDocument, standing } from './support/bike-document.ts';
import {
  changeText,
  FRONT_HEIGHT,
  openAdjuster,
  plain,
  readingText,
  REAR_HEIGHT,
  typeInto,
  why,
} from './support/panels.ts';
import { drawn, middleOf, openPage, pressAndMove, sideView } from './support/side-view.ts';
import { openSprockets, pairRow, pairsShown, tryButton } from './support/sprockets.ts';

/**
 * What a hand does during a story, as the page gets it: each press, each field that is typed in without one, and each
 * Enter. What the test itself presses to read the bike goes between two parts of the story and does not count.
 */
class Story {
  presses = 0;
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
  }

  async part(done: () => Promise<void>): Promise<void> {
    await this.#page.evaluate(() => {
      const counted = { presses: 0, ended: new AbortController() };
      const { signal } = counted.ended;
      let pressed: EventTarget | null = null;
      const count = (target: EventTarget | null): void => {
        counted.presses += 1;
        pressed = target;
      };
      const told = { capture: true, signal };
      addEventListener('pointerdown', ({ target }) => count(target), told);
      addEventListener('keydown', ({ key, target }) => key === 'Enter' && count(target), told);
      const isText = (target: EventTarget | null) =>
        target instanceof HTMLInputElement && target.type === 'text';
      addEventListener('input', ({ target }) => isText(target) && target !== pressed && count(target), told);
      Object.assign(window, { counted });
    });
    await done();
    this.presses += await this.#page.evaluate(() => {
      const { counted } = window as unknown as { counted: { presses: number; ended: AbortController } };
      counted.ended.abort();
      return counted.presses;
    });
  }
}

const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).first().click();

/** By how much a place rose since the bike was opened, as the core has it, mm. */
async function risen(page: Page, place: 'front' | 'seat'): Promise<number> {
  const document = await savedDocument(page);
  const was = standing({ ...document, setup: document.baseline.setup });
  const { before, after } = heightsAt(heightPlace(place), was, standing(document));
  return shownRise(before, after, METRIC);
}

function effectOf(page: Page, key: string): Promise<string> {
  return page
    .locator(`[data-adjuster="${key}"] .effect`)
    .innerText()
    .then((text) => plain(text));
}

test(
  'the front down 5 mm: five presses on lower, and each way of doing it goes down',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    const story = new Story(page);
    const lower = new RegExp(`^${FRONT_HEIGHT.replace(/[[\]]/g, '\\$&')}: .*lowers the front$`);
    await story.part(async () => {
      for (let i = 0; i < 5; i += 1) await press(page, lower);
    });
    const down = await risen(page, 'front');
    expect(down).toBeLessThan(-4);
    expect(await effectOf(page, 'forkTubes')).toBe(
      `Front end −${Math.abs(down).toFixed(1)} mm, straight above the axle`,
    );
    expect(story.presses).toBe(5);
    expect(await changeText(page, 'Trail')).toMatch(/^▼ −/);
    await expect(why(page).locator('.headline')).toContainText(
      /^The steering turns (hardly any |slightly )?quicker/,
    );

    const from = await middleOf(page, 'grip-forkTubes');
    await pressAndMove(page, from, { x: from.x, y: from.y + 40 });
    await page.mouse.up();
    expect(await risen(page, 'front')).toBeLessThan(down - 3);
  },
);

test(
  'the rear up 10 mm at the seat: the height is typed, and the page finds the shock’s step',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    const story = new Story(page);
    await story.part(async () => {
      await page.getByText('Type a height instead').click();
      await typeInto(page, 'Seat, change of height', '10');
    });
    // The line that opens the form, the field, Enter.
    expect(story.presses).toBe(3);
    const up = await risen(page, 'seat');
    expect(Math.abs(up - 10)).toBeLessThan(0.8);
    expect(await effectOf(page, 'shockLength')).toBe(`Seat +${up.toFixed(1)} mm`);
    await expect(page.getByText(/^Shock length .* gives seat \+/).first()).toBeVisible();
    expect(await changeText(page, 'Swingarm angle')).toMatch(/^▲ \+.* steeper/);

    const from = await middleOf(page, 'grip-shockLength');
    await pressAndMove(page, from, { x: from.x, y: from.y - 10 });
    await drawn(page);
    await page.mouse.up();
    expect(await risen(page, 'seat')).toBeGreaterThan(up);
  },
);

test(
  'both ends: each is told its own part, and the parts add up to the whole change',
  { tag: '@engines' },
  async ({ page }) => {
    await openPage(page);
    const before = metricReading(standing(await savedDocument(page)), 'rake');
    const story = new Story(page);
    await story.part(async () => {
      await typeInto(page, REAR_HEIGHT, '5');
      await typeInto(page, FRONT_HEIGHT, '10');
    });
    expect(story.presses).toBe(4);
    const after = metricReading(standing(await savedDocument(page)), 'rake');
    const text = plain(await why(page).getByRole('listitem').filter({ hasText: /^Rake/ }).innerText());
    const figures = [...text.matchAll(/([+−])(\d+\.\d+)°/g)].map(
      ([, sign, digits]) => (sign === '−' ? -1 : 1) * Number(digits),
    );
    const [whole, ...parts] = figures;
    expect(whole).toBeCloseTo(Number(after.toFixed(2)) - Number(before.toFixed(2)), 6);
    expect(parts).toHaveLength(2);
    expect(parts[0] + parts[1]).toBeCloseTo(whole, 6);
  },
);

test('both ends by their heights: the second moves the first, says so, and one press has both', async ({
  page,
}) => {
  await openPage(page);
  const story = new Story(page);
  await story.part(async () => {
    await page.getByText('Type a height instead').click();
    await typeInto(page, 'Front end, change of height', '-5');
  });
  const front = await risen(page, 'front');
  await story.part(() => typeInto(page, 'Seat, change of height', '18'));
  const along = await risen(page, 'front');
  expect(along).toBeLessThan(front);
  const form = page.locator('.wanted');
  const written = (mm: number): string => `${mm < 0 ? '−' : '+'}${Math.abs(mm).toFixed(1)} mm`;
  await expect
    .poll(async () => plain(await form.innerText()))
    .toContain(`Front end ${written(along)} now, ${written(front)} before: it moved along.`);
  await story.part(() => form.getByRole('button', { name: 'Front end back to −5.0 mm' }).click());
  expect(Math.abs((await risen(page, 'front')) + 5)).toBeLessThan(Math.abs(along + 5));
  expect(Math.abs((await risen(page, 'seat')) - 18)).toBeLessThan(0.8);
  expect(story.presses).toBe(6);
});

test('three pairs of sprockets: each is one press from the table, with what it does said there', async ({
  page,
}) => {
  await openPage(page);
  const story = new Story(page);
  await story.part(() => openSprockets(page));
  await openAdjuster(page, adjusterLabel('axlePosition', 'chain'));
  const pairs = (await pairsShown(page)).slice(0, 3);
  const places: { readonly drawn: number; readonly slid: number }[] = [];
  for (const pair of pairs) {
    await expect(pairRow(page, pair)).toBeVisible();
    await story.part(() => tryButton(page, pair).click());
    const { setup } = await savedDocument(page);
    expect(`${setup.frontTeeth}/${setup.rearTeeth}`).toBe(pair);
    const drawn = await pairRow(page, pair).locator('[data-column="axlePosition"] circle').getAttribute('cx');
    const slid = await page.locator('[data-adjuster="axlePosition"] input[type="range"]').inputValue();
    places.push({ drawn: Number(drawn), slid: Number(slid) });
  }
  // The tab, and one for each pair.
  expect(story.presses).toBe(4);
  // The axle's slot in the table and the slider of its place run one way.
  const byDrawing = places.toSorted((a, b) => a.drawn - b.drawn).map(({ slid }) => slid);
  expect(new Set(byDrawing).size).toBe(3);
  expect(byDrawing).toEqual(byDrawing.toSorted((a, b) => a - b));
});

test('a stiffer fork spring changes the bike at once, and topped out the page says where to see it', async ({
  page,
}) => {
  await openPage(page);
  const spring = namedAdjusters('chain').find(({ key }) => key === 'forkSpringRate')?.label ?? '';
  const story = new Story(page);
  const before = await readingText(page, 'Rake');
  await story.part(async () => {
    await openAdjuster(page, spring);
    await press(page, `${spring}: one step more`);
    await press(page, `${spring}: one step more`);
  });
  expect(await risen(page, 'front')).toBeGreaterThan(0.1);
  expect(await effectOf(page, 'forkSpringRate')).toMatch(/^Front end \+\d+\.\d mm, straight above the axle$/);
  expect(await readingText(page, 'Rake')).not.toBe(before);
  // The group of springs, and two steps.
  expect(story.presses).toBe(3);

  await page.getByRole('radio', { name: 'Topped out', exact: true }).check({ force: true });
  const adjuster = page.locator('[data-adjuster="forkSpringRate"]');
  await expect(adjuster.getByText('Changes nothing in this ride state.')).toBeVisible();
  await adjuster.getByRole('button', { name: 'Show Rider on board' }).click();
  await expect(page.getByRole('radio', { name: 'Rider on board', exact: true })).toBeChecked();
  await expect(adjuster.getByText('Changes nothing in this ride state.')).toBeHidden();
});

test('the chain over the pivot: the reading goes below nothing, and the page warns and names what lifts it off', async ({
  page,
}) => {
  await openPage(page);
  await page.getByRole('radio', { name: 'Topped out', exact: true }).check({ force: true });
  const front = namedAdjusters('chain').find(({ key }) => key === 'frontTeeth')?.label ?? '';
  const { bike } = await savedDocument(page);
  const view = await sideView(page).boundingBox();
  const story = new Story(page);
  await story.part(async () => {
    await typeInto(page, front, String(bike.drive.leastFrontTeeth));
    await typeInto(page, REAR_HEIGHT, '22');
  });
  expect(story.presses).toBeLessThanOrEqual(5);
  const gap = metricReading(standing(await savedDocument(page), 'toppedOut'), 'chainSliderClearance');
  expect(gap).toBeLessThan(0);
  expect(await readingText(page, 'Chain clearance to chain slider')).toMatch(/^−/);
  // The line below the side view names both, the worse first.
  const line = page.locator('.foot [role="alert"]');
  await expect(line).toHaveText(
    /^Chain slack .* bar tight\. Do not ride like this\. Chain clearance to chain slider −.* over the pivot\./,
  );
  // However much it says, the drawing keeps its size.
  expect(await sideView(page).boundingBox()).toEqual(view);
  await expect(page.getByRole('complementary', { name: 'Cautions' }).first()).toContainText(
    'The chain lies on the chain slider [rub strip] over the pivot and wears it.',
  );
});
