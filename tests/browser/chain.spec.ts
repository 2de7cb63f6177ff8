/** The Chain tab with the mouse: setting an axle by its chain, slack, wear, and the chain that lies on the pivot's guide. */
import { expect, test, type Page } from '@playwright/test';
import { expectNothingSerious, inEveryTheme } from './support/axe.ts';
import { kept } from './support/kept.ts';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { chainForAxle } from '../../src/core/chain/chain-for-axle.ts';
import { axleForChain } from '../../src/core/standing/axle-in-slot.ts';
import { setAxlePosition } from '../../src/core/standing/chain-in-frame.ts';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { savedDocument, standing } from './support/bike-document.ts';
import { chain, chainRow, chooseChainPart, openChain } from './support/chain.ts';
import { openCloseCountershaft, openLowChain } from './support/low-chain.ts';
import {
  expectNoUndo,
  field,
  openAdjuster,
  plain,
  readingText,
  typeInto,
  undo,
  undoButton,
} from './support/panels.ts';
import { cell, count, openSprockets } from './support/sprockets.ts';
import { openPage } from './support/side-view.ts';
import { pictureText, wordsOf } from './support/side-view-picture.ts';

const AXLE = adjusterLabel('axlePosition', 'chain');
const FRONT_TEETH = adjusterLabel('frontTeeth', 'chain');

/** The chain of the bike on the page as the core has it, with so much slack hanging. */
async function chainOf(page: Page, slack: number) {
  const { bike, setup } = await savedDocument(page);
  const { machine } = standing({ bike, setup });
  const loop = chainLoop(setup.frontTeeth, setup.rearTeeth, bike.drive.chainPitch);
  const slot = { slot: bike.swingarm.slot, slack, rearTravel: 0, rule: { halfLink: false } };
  return { machine, loop, slot, axlePosition: setup.axlePosition };
}

/** What the core says of the chain that fits the bike on the page. */
async function askedFor(page: Page, slack: number) {
  const { machine, loop, slot, axlePosition } = await chainOf(page, slack);
  const asked = chainForAxle(machine, loop, slot, axlePosition);
  if (!asked.ok) throw new Error(asked.reason);
  return asked;
}

test('the axle’s place gives a length of chain, and a button puts it where a whole one leaves it, in one undo', async ({
  page,
}) => {
  await openPage(page);
  await openChain(page, 'Axle');
  const asked = await askedFor(page, 30);
  await expect(chain(page)).toContainText(`${asked.exactLinks.toFixed(2)} links fit exactly`);
  const set = chain(page)
    .getByRole('button', { name: /^Set the axle there, for \d+ links$/ })
    .first();
  const links = Number(/\d+/.exec((await set.getAttribute('aria-label')) ?? '')?.[0]);
  const { machine, loop, slot } = await chainOf(page, 30);
  const choice = axleForChain(machine, loop, slot, links);
  if (!choice.ok) throw new Error(choice.reason);
  await openAdjuster(page, AXLE);
  const before = await field(page, AXLE).inputValue();
  await set.click();
  await expect(field(page, AXLE)).not.toHaveValue(before);
  expect((await savedDocument(page)).setup.axlePosition).toBeCloseTo(choice.axlePosition, 5);
  await expect(chain(page)).toContainText(`${choice.links}.00 links fit exactly`);
  await expect(undoButton(page)).toHaveAccessibleName(`Undo: Axle for ${choice.links} links`);
  await undo(page);
  await expect(field(page, AXLE)).toHaveValue(before);
  await expectNoUndo(page);
});

test('the parts are chosen and the axle set by keyboard alone, and the keyboard stays in the list', async ({
  page,
}) => {
  await openPage(page);
  await openChain(page, 'Slack');
  await page.keyboard.press('ArrowLeft');
  await expect(chain(page).getByRole('radio', { name: 'Axle' })).toBeChecked();
  const set = chain(page)
    .getByRole('button', { name: /^Set the axle there/ })
    .first();
  await set.focus();
  await page.keyboard.press('Enter');
  await expect(undoButton(page)).toHaveAccessibleName(/^Undo: Axle for \d+ links$/);
  await expect(chain(page).getByRole('list', { name: 'Whole chains' })).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(chain(page).getByRole('listitem').getByRole('button').first()).toBeFocused();
});

test('more slack needs a longer chain, and odd chains come with a half link only', async ({ page }) => {
  await openPage(page);
  await openChain(page, 'Axle');
  const rows = chain(page).getByRole('listitem');
  for (const row of await rows.allInnerTexts()) expect(Number(/^\d+/.exec(row)?.[0]) % 2).toBe(0);
  await typeInto(page, 'Slack with the wheel hanging', '60');
  await expect(chain(page)).toContainText(
    `${(await askedFor(page, 60)).exactLinks.toFixed(2)} links fit exactly`,
  );
  await chain(page).getByLabel('Half link allowed').check();
  const links = (await rows.allInnerTexts()).map((row) => Number(/^\d+/.exec(row)?.[0]));
  expect(links.some((count) => count % 2 === 1)).toBe(true);
  await typeInto(page, 'Slack with the wheel hanging', '600');
  await expect(chain(page).getByRole('alert')).toContainText('Kept 60.0 mm');
});

/** Puts the first chain on that fits with 30 mm of slack, and gives it with the axle's place. */
async function putOnFirstFitting(page: Page) {
  await openChain(page, 'Axle');
  const choice = (await askedFor(page, 30)).choices.find((each) => each.ok);
  if (!choice?.ok) throw new Error('no chain fits');
  await chainRow(page, choice.links)
    .getByRole('button', { name: /^Use this chain/ })
    .click();
  return choice;
}

test('a chain said to be on the bike takes the axle along, and where it does not fit the ones that do are offered', async ({
  page,
}) => {
  await openPage(page);
  const choice = await putOnFirstFitting(page);
  await expect(chainRow(page, choice.links)).toContainText('On the bike');
  expect((await savedDocument(page)).setup.chainLinks).toBe(choice.links);
  await typeInto(page, adjusterLabel('rearTeeth', 'chain'), '32');
  await expect(chain(page)).toContainText(
    /is too long: the axle would stand [\d.]+\smm behind its slot\. With [\d, or]+ links it fits\./,
  );
  const offered = chain(page).getByRole('button', { name: /^Put on \d+ links$/ });
  const links = Number(/\d+/.exec(await offered.first().innerText())?.[0]);
  await offered.first().click();
  await expect(chainRow(page, links)).toContainText('On the bike');
  // More slack takes the axle forward with the chain.
  const place = async (): Promise<number> =>
    Number(/axle at ([\d.]+)/.exec(await chainRow(page, links).innerText())?.[1]);
  const before = await place();
  await typeInto(page, 'Slack with the wheel hanging', '60');
  await expect.poll(place).toBeLessThan(before);
  await undo(page);
  for (let times = 0; times < 3; times++) await undo(page);
  await expectNoUndo(page);
});

test('the lower run is drawn as it hangs with its dimension, in either unit system, and the slack can be set', async ({
  page,
}) => {
  await openPage(page);
  await page.getByText('Topped out', { exact: true }).click();
  await openChain(page, 'Slack');
  const picture = chain(page).getByRole('img', { name: 'Lower run of the chain' });
  await expect(picture.locator('text').filter({ hasText: /^Hangs \d+\.\d\smm$/ })).toBeVisible();
  await expect(picture.locator('text').filter({ hasText: /^30\.0\smm up and down$/ })).toBeVisible();
  expect(await picture.locator('path').count()).toBeGreaterThan(8);
  await expect(
    chain(page).getByRole('img', {
      name: /^Slack through the rear travel As the rear moves up and down, the chain is tightest /,
    }),
  ).toBeVisible();
  await page.getByRole('combobox', { name: 'Units' }).selectOption('inch');
  await expect(picture.locator('text').filter({ hasText: /^Hangs 0\.\d\d\sin$/ })).toBeVisible();
  await page.getByRole('combobox', { name: 'Units' }).selectOption('metric');

  await typeInto(page, 'Least to keep', '15');
  await chain(page)
    .getByRole('button', { name: /^Set the axle for [\d.]+\smm$/ })
    .click();
  await expect(chain(page)).toContainText(/tightest [\d.]+\smm from hanging: 15\.[01]\smm up and down/);
  await expect(undoButton(page)).toHaveAccessibleName(/^Undo: Axle for [\d.]+\smm of slack$/);
  await undo(page);
  await undo(page);
  await expectNoUndo(page);
});

test('wear is shown against the maker’s limit, refused where it is absurd, and moves the axle of the chain', async ({
  page,
}) => {
  await openPage(page);
  await openChain(page, 'Wear');
  await expect(chain(page)).toContainText('This limit is only a usual one');
  await typeInto(page, 'Their length', '0');
  await expect(chain(page).getByRole('alert')).toContainText('cannot be their length');
  await field(page, 'Their length').press('Escape');
  await typeInto(page, 'Their length', '400');
  await expect(chain(page).getByRole('alert')).toContainText(/would be about 25 links\. Kept 317\.5/);
  await typeInto(page, 'Their length', '322');
  await expect(chain(page)).toContainText(/1\.4\s% longer than new\. Type the limit of the maker’s manual/);
  await typeInto(page, 'Maker’s limit', '1');
  await expect(chain(page)).toContainText('this chain is worn out');
  await typeInto(page, 'Links measured', '50');
  await expect(chain(page)).toContainText('Wear is left out until both agree');
  await expect(field(page, 'Their length')).toHaveValue('322.0');
  await typeInto(page, 'Links measured', '20');
  await chooseChainPart(page, 'Axle');
  const fresh = (await askedFor(page, 30)).exactLinks;
  const worn = Number(/([\d.]+) links fit exactly/.exec(await chain(page).innerText())?.[1]);
  // Longer links: fewer of them are needed.
  expect(fresh - worn).toBeGreaterThan(0.5);
  await chooseChainPart(page, 'Wear');
  await chain(page).getByRole('button', { name: 'Count the chain as new' }).click();
  await chooseChainPart(page, 'Axle');
  await expect(chain(page)).toContainText(`${fresh.toFixed(2)} links fit exactly`);
});

test('wear is kept with the bike: a worn chain that is on takes the axle back, sprocket pairs go by it, and undo takes it off', async ({
  page,
}) => {
  await openPage(page);
  const choice = await putOnFirstFitting(page);
  await chooseChainPart(page, 'Wear');
  await typeInto(page, 'Their length', '319');
  await expect(undoButton(page)).toHaveAccessibleName('Undo: Chain measured');
  await undo(page);
  await expect(chain(page)).toContainText('Counted as new.');
  await typeInto(page, 'Their length', '319');
  await expect(chain(page)).toContainText(/lets the axle stand [\d.]+\smm further back than new/);
  await typeInto(page, 'Maker’s limit', '2');
  await chooseChainPart(page, 'Slack');
  await typeInto(page, 'Least to keep', '12');
  const { drive } = (await savedDocument(page)).bike;
  expect(drive).toMatchObject({ measuredLinks: 20, measuredLength: 319, wearLimit: 2, leastSlack: 12 });
  await expect.poll(async () => (await kept(page))[0]?.text).toContain('"leastSlack": 12');
  await page.reload();
  await openChain(page, 'Wear');
  await expect(field(page, 'Their length')).toHaveValue('319.0');
  await expect(field(page, 'Maker’s limit')).toHaveValue('2.0');
  const { bike, setup } = await savedDocument(page);
  const place = setAxlePosition(standing({ bike, setup }).machine);
  expect(place - choice.axlePosition).toBeGreaterThan(2);
  await openSprockets(page);
  await expect(count(page)).toContainText(/, with the chain as worn, 0\.5\s%/);
  const own = `${setup.frontTeeth}/${setup.rearTeeth}`;
  expect(Number((await cell(page, own, 'axlePosition')).figure)).toBeCloseTo(place, 1);
});

test('a chain so worn that it puts the axle out of its slot says so, and can be counted as new again', async ({
  page,
}) => {
  await openPage(page);
  await openChain(page, 'Axle');
  const put = chain(page)
    .getByRole('button', { name: /^Use this chain/ })
    .last();
  await put.click();
  await chooseChainPart(page, 'Wear');
  await typeInto(page, 'Their length', '327');
  await expect(chain(page)).toContainText(/is too long: the axle would stand [\d.]+\smm behind its slot/);
  await chain(page).getByRole('button', { name: 'Count the chain as new' }).click();
  await expect(chain(page)).toContainText('Counted as new.');
  await undo(page);
  await undo(page);
  await expect(chain(page)).toContainText('Counted as new.');
});

test('a chain on the pivot’s guide is marked on the side view and in words, and a bigger sprocket lifts it off', async ({
  page,
}) => {
  await openPage(page);
  await openLowChain(page);
  await page.getByText('Topped out', { exact: true }).click();
  expect(wordsOf(await pictureText(page))).toContain('Chain rubs on the chain slider');
  await openChain(page, 'Over the pivot');
  const told = plain(await chain(page).innerText());
  expect(told).toMatch(
    /The chain lies on the chain slider \[rub strip\] from hanging to [\d.]+ mm of rear travel\./,
  );
  expect(told).toMatch(
    /when the tyre drives with 1000 N, the chain presses on its slider with \d+ N, and both wear/,
  );
  const gap = await readingText(page, 'Chain clearance to chain slider');
  expect(told).toContain(`${gap.replace('−', '')} below its surface with the wheel hanging`);
  const teeth = /smallest front sprocket that keeps the chain clear has (\d+) teeth/.exec(told)?.[1] ?? '';
  await chain(page)
    .getByRole('button', { name: `Try ${teeth} teeth in front` })
    .click();
  await openAdjuster(page, FRONT_TEETH);
  await expect(field(page, FRONT_TEETH)).toHaveValue(teeth);
  await expect(chain(page)).toContainText('The upper run stays clear');
  expect(wordsOf(await pictureText(page))).not.toContain('Chain rubs on the chain slider');
  await undo(page);
  await expect(field(page, FRONT_TEETH)).toHaveValue('13');
});

test('a bike that cannot stand has no chain laid on it, and says why', async ({ page }) => {
  await openPage(page);
  await openChain(page, 'Axle');
  await page.getByText('Edit', { exact: true }).click();
  await page.getByText('Frame', { exact: true }).click();
  await typeInto(page, 'Chain slider radius over the pivot', '120');
  await expect(chain(page)).toContainText('no chain can be laid on it');
  await undo(page);
  await expect(chain(page)).toContainText('links fit exactly');
});

test('sprockets that reach over the pivot are refused in words, and the nearest that clear it offered', async ({
  page,
}) => {
  await openPage(page);
  await openCloseCountershaft(page);
  await openChain(page, 'Axle');
  await expect(chain(page).getByRole('alert')).toContainText(
    'With 16 teeth the front sprocket would reach over the swingarm pivot.',
  );
  const fit = chain(page).getByRole('button', { name: /^Fit \d+ teeth$/ });
  const teeth = Number(/\d+/.exec(await fit.innerText())?.[0]);
  await fit.click();
  await expect(fit).toHaveCount(0);
  expect((await savedDocument(page)).setup.frontTeeth).toBe(teeth);
  await undo(page);
  await expect(fit).toBeVisible();
});

test('S19: nothing serious on any part of the Chain tab, in any theme', async ({ page }) => {
  await openPage(page);
  await openLowChain(page);
  await openChain(page, 'Wear');
  await typeInto(page, 'Their length', '330');
  for (const part of ['Axle', 'Slack', 'Wear', 'Over the pivot'] as const) {
    await chooseChainPart(page, part);
    await inEveryTheme(page, (rule) => expectNothingSerious(page, '.below', rule));
  }
});
