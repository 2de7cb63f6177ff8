/** Gearing that cannot be, on a phone: each tells why and the nearest that works, keeps what there was, and a tap mends it. */
import { expect, test, type Page } from '@playwright/test';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { savedDocument } from './support/bike-document.ts';
import { chain, chainRow, openChain } from './support/chain.ts';
import { openCloseCountershaft } from './support/low-chain.ts';
import { expectNoUndo, field, openAdjuster, plain, typeInto, undoButton } from './support/panels.ts';
import {
  openFilters,
  openSprockets,
  pairButton,
  pairRow,
  sprockets,
  tryButton,
} from './support/sprockets.ts';
import { openPage } from './support/side-view.ts';
import { choosePanel } from './support/touch.ts';

const [{ bike, setup }] = DEMO_BIKES;
const FRONT = adjusterLabel('frontTeeth', 'chain');
const REAR = adjusterLabel('rearTeeth', 'chain');
const AXLE = adjusterLabel('axlePosition', 'chain');

/** Puts the chain on that is nearest to the axle's present place, and says of how many links it is. */
async function putChainOn(page: Page): Promise<number> {
  await choosePanel(page, 'Why and more');
  await openChain(page, 'Axle');
  const button = chain(page)
    .getByRole('button', { name: /^Use this chain/ })
    .first();
  const links = Number(/\d+/.exec((await button.getAttribute('aria-label')) ?? '')?.[0]);
  await button.tap();
  await expect(chainRow(page, links)).toContainText('On the bike');
  return links;
}

/** The advice over the side view. */
function advice(page: Page) {
  return page.getByRole('application', { name: 'Side view of the bike' }).locator('.advice');
}

test('the pivot inside a sprocket: said among the adjusters, under the side view and in the Chain tab, where a tap fits one that clears it', async ({
  page,
}) => {
  await openPage(page);
  await openCloseCountershaft(page);
  await expect(page.locator('section.side-view > .foot [role="alert"]')).toHaveText(
    /^Front sprocket 16\steeth: reaches over the swingarm pivot\. Fit \d+ teeth\.$/,
  );
  const warning = page.getByRole('complementary', { name: 'Cautions' }).getByRole('alert');
  await expect(warning).toContainText(/16 teeth.* would reach over the swingarm pivot\. \d+ teeth or fewer/);
  await choosePanel(page, 'Why and more');
  await openChain(page, 'Axle');
  const fit = chain(page).getByRole('button', { name: /^Fit \d+ teeth$/ });
  const teeth = /\d+/.exec(await fit.innerText())?.[0] ?? '';
  await fit.tap();
  await expect(fit).toHaveCount(0);
  await choosePanel(page, 'Adjusters');
  await openAdjuster(page, FRONT);
  await expect(field(page, FRONT)).toHaveValue(teeth);
  await expect(warning).not.toContainText('pivot.');
  await undoButton(page).tap();
  await expect(field(page, FRONT)).toHaveValue('16');
  await expect(warning).toContainText('would reach over the swingarm pivot');
  await expectNoUndo(page);
});

test('a chain too short to close: said over the side view with those that fit, the teeth stay as typed, and a tap puts one on', async ({
  page,
}) => {
  await openPage(page);
  const links = await putChainOn(page);
  await choosePanel(page, 'Adjusters');
  await typeInto(page, REAR, '90');
  await expect(advice(page)).toContainText(
    new RegExp(`A chain of ${links} links is too short.*\\. With [\\d, or]+ links it fits\\.`),
  );
  await expect(field(page, REAR)).toHaveValue('90');
  await choosePanel(page, 'Why and more');
  const offered = chain(page)
    .getByRole('button', { name: /^Put on \d+ links$/ })
    .first();
  const fitting = Number(/\d+/.exec(await offered.innerText())?.[0]);
  expect(fitting).toBeGreaterThan(links);
  await offered.tap();
  await expect(advice(page)).toHaveCount(0);
  await expect(chainRow(page, fitting)).toContainText('On the bike');
  expect((await savedDocument(page)).setup).toMatchObject({ rearTeeth: 90, chainLinks: fitting });
  for (let times = 0; times < 3; times++) await undoButton(page).tap();
  await expectNoUndo(page);
  expect((await savedDocument(page)).setup).toEqual(setup);
});

test('an axle out of its slot: refused where it is typed, and shown with its place where the chain would put it there', async ({
  page,
}) => {
  await openPage(page);
  await openAdjuster(page, AXLE);
  const before = await field(page, AXLE).inputValue();
  for (const [typed, why] of [
    [String(bike.swingarm.slot + 8), 'Its slot ends there.'],
    ['-3', 'Its slot begins there.'],
  ]) {
    await typeInto(page, AXLE, typed);
    const adjuster = page.locator('[data-adjuster="axlePosition"]');
    expect(plain(await adjuster.getByRole('alert').innerText())).toBe(
      `This goes from 0.0 mm to ${bike.swingarm.slot}.0 mm. ${why} Kept ${before} mm.`,
    );
    await expect(field(page, AXLE)).toHaveValue(typed);
    await field(page, AXLE).press('Escape');
    await expect(field(page, AXLE)).toHaveValue(before);
  }
  await expectNoUndo(page);
  await putChainOn(page);
  await choosePanel(page, 'Adjusters');
  await typeInto(page, REAR, '32');
  await expect(advice(page)).toContainText(
    /too long: the axle would stand [\d.]+\smm behind its slot\. With [\d, or]+ links it fits\./,
  );
  await choosePanel(page, 'Why and more');
  await chain(page).getByRole('button', { name: 'Set the axle by hand' }).tap();
  await expect(advice(page)).toHaveCount(0);
  await choosePanel(page, 'Adjusters');
  await expect(field(page, REAR)).toHaveValue('32');
});

test('teeth below what the shaft takes: refused in the adjuster with the reason, and in the table with the fewest that go on', async ({
  page,
}) => {
  await openPage(page);
  const least = bike.drive.leastFrontTeeth;
  await typeInto(page, FRONT, String(least - 2));
  const told = page.locator('[data-adjuster="frontTeeth"]').getByRole('alert');
  expect(plain(await told.innerText())).toBe(
    `This goes from ${least} teeth to 40 teeth. A smaller one does not go over the countershaft. Kept ${setup.frontTeeth} teeth.`,
  );
  await field(page, FRONT).press('Escape');
  await expect(field(page, FRONT)).toHaveValue(String(setup.frontTeeth));
  await choosePanel(page, 'Why and more');
  await openSprockets(page);
  await openFilters(page);
  await typeInto(page, 'Front from', String(least - 1));
  await page.getByRole('checkbox', { name: 'Axle within its slot only' }).uncheck();
  const key = `${least - 1}/${setup.rearTeeth}`;
  await expect(pairRow(page, key)).toContainText('too small for the shaft');
  await expect(tryButton(page, key)).toHaveCount(0);
  await pairButton(page, key).tap();
  await expect(sprockets(page).locator('tr.more')).toContainText(
    `A front sprocket of ${least - 1} teeth does not go over the countershaft. It takes ${least} teeth or more.`,
  );
  await expectNoUndo(page);
  expect((await savedDocument(page)).setup).toEqual(setup);
});
