/** The Adjusters panel with mouse and keyboard: groups that fold and say what is changed, and the chain among the adjusters. */
import { expect, test, type Locator, type Page } from '@playwright/test';
import { expectLookedFor } from './support/bikes.ts';
import { ADJUSTERS, type Adjuster } from '../../src/core/adjusters/all-adjusters.ts';
import { ADJUSTER_GROUPS } from '../../src/core/adjusters/definition/adjuster-groups.ts';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { chainFit, nearestChain } from '../../src/core/chain/chain-fit.ts';
import { savedDocument, savedText } from './support/bike-document.ts';
import {
  chainAdjuster,
  adjusterGroup,
  expectNoUndo,
  field,
  FRONT_HEIGHT,
  openAdjuster,
  plain,
  REAR_HEIGHT,
  typeInto,
  undo,
  undoButton,
} from './support/panels.ts';
import { chooseMode, openPage, pressAndMove, middleOf, sideView } from './support/side-view.ts';

const AXLE = adjusterLabel('axlePosition', 'chain');
const LINKS = 'Links of the chain';

/** The names of the open groups, as the page has them. */
async function openGroups(page: Page): Promise<string[]> {
  const names: string[] = [];
  for (const { label } of ADJUSTER_GROUPS)
    if ((await adjusterGroup(page, label).getAttribute('aria-expanded')) === 'true') names.push(label);
  return names;
}

async function changedOf(heading: Locator): Promise<string> {
  return /\d+ changed$/.exec(plain(await heading.innerText()))?.[0] ?? 'none';
}

test('ride height is open at first, every other group is folded to its name, and each opens by mouse and by key', async ({
  page,
}) => {
  await openPage(page);
  expect(await openGroups(page)).toEqual(['Ride height']);
  for (const { label } of ADJUSTER_GROUPS) await expect(adjusterGroup(page, label)).toBeVisible();
  await adjusterGroup(page, 'Steering head').click();
  await expect(field(page, adjusterLabel('clampOffset', 'chain'))).toBeVisible();
  await adjusterGroup(page, 'Steering head').focus();
  await page.keyboard.press('Enter');
  await expect(field(page, adjusterLabel('clampOffset', 'chain'))).toHaveCount(0);
  await expect(adjusterGroup(page, 'Steering head')).toBeFocused();
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('group', { name: 'Steering head' }).locator(':focus')).toHaveCount(1);
  await expectNoUndo(page);
});

test('a tyre and a chain say at the baseline what a step of them would do, as shock and fork do', async ({
  page,
}) => {
  await openPage(page);
  const effect = (key: string): Locator => page.locator(`[data-adjuster="${key}"] .effect`);
  await page.getByRole('button', { name: 'Open all adjusters' }).click();
  await expect(effect('frontTyre')).toHaveText(
    /^10\smm larger: front end \+[45]\.\d\d\smm, straight above the axle$/,
  );
  await expect(effect('rearTyre')).toHaveText(/^10\smm larger: seat \+\d\.\d\d\smm$/);
  await expect(effect('chainLinks')).toHaveCount(0);
  await chainAdjuster(page).getByText('By the chain').click();
  await expect(effect('chainLinks')).toHaveText(/^Wheelbase ([+−]\d+\.\d|0\.0)\smm$/);
  await page.getByRole('button', { name: 'Set as baseline' }).click();
  await expect(effect('chainLinks')).toHaveText(/^2\slinks (longer|shorter): wheelbase [+−]\d+\.\d\smm$/);
});

test('one button opens every group and folds every group again', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Open all adjusters' }).click();
  expect(await openGroups(page)).toEqual(ADJUSTER_GROUPS.map(({ label }) => label));
  await page.keyboard.press('Enter');
  expect(await openGroups(page)).toEqual([]);
  await expect(page.getByRole('button', { name: 'Open all adjusters' })).toBeFocused();
});

test('beside every adjuster stands what a step of it does in the ride state shown, or why it does nothing', async ({
  page,
}) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Open all adjusters' }).click();
  const { bike, setup } = await savedDocument(page);
  const numbers = ADJUSTERS.filter(({ holds }) => holds === 'number' || holds === 'wholeNumber').filter(
    ({ applies, key }: Adjuster) => applies?.(bike, setup[key]) ?? true,
  );
  expect(numbers.length).toBeGreaterThan(30);
  for (const state of ['Rider on board', 'Accelerating', 'Braking', 'Topped out']) {
    await page.getByRole('radio', { name: state, exact: true }).check({ force: true });
    for (const { key } of numbers) {
      const adjuster = page.locator(`[data-adjuster="${key}"]`);
      await expect(adjuster.locator('.effect, .elsewhere'), `${key}, ${state}`).toHaveCount(1);
      await expect(adjuster.locator('.effect, .elsewhere')).toHaveText(
        /: [a-z][a-z -]* ([+−]\d|0)|^Changes nothing/,
      );
    }
  }
  await expect(page.locator('[data-adjuster="dragHeight"]')).toContainText(
    'Changes nothing while Drag is zero.',
  );
});

test('which groups are open is remembered for the next visit', async ({ page }) => {
  await openPage(page);
  await adjusterGroup(page, 'Ride height').click();
  await adjusterGroup(page, 'Tyres').click();
  await adjusterGroup(page, 'Riding').click();
  await expect
    .poll(async () => {
      await page.reload();
      await expect(adjusterGroup(page, 'Riding')).toBeVisible();
      await expectLookedFor(page);
      return await openGroups(page);
    })
    .toEqual(['Tyres', 'Riding']);
});

test('a group tells how many of its adjusters are changed, open or folded, whatever changed them', async ({
  page,
}) => {
  await openPage(page);
  const height = adjusterGroup(page, 'Ride height');
  expect(await changedOf(height)).toBe('none');
  await typeInto(page, REAR_HEIGHT, '6');
  expect(await changedOf(height)).toBe('1 changed');
  await typeInto(page, FRONT_HEIGHT, '8');
  expect(await changedOf(height)).toBe('2 changed');
  await height.click();
  expect(await changedOf(height)).toBe('2 changed');
  const axle = await middleOf(page, 'grip-axlePosition');
  await pressAndMove(page, axle, { x: axle.x - 6, y: axle.y });
  await page.mouse.up();
  expect(await changedOf(adjusterGroup(page, 'Gearing and axle'))).toBe('1 changed');
  await expect(field(page, AXLE)).toHaveCount(0);
  await undo(page);
  expect(await changedOf(adjusterGroup(page, 'Gearing and axle'))).toBe('none');
  await page.getByRole('button', { name: 'All to baseline' }).click();
  expect(await changedOf(height)).toBe('none');
});

test('a bike from a file counts no adjuster as changed that stands on its own baseline', async ({ page }) => {
  await openPage(page);
  await typeInto(page, REAR_HEIGHT, '6');
  const saved = JSON.parse(await savedText(page)) as { bike: { name: string } };
  // A file of the bike on the page would show that bike.
  saved.bike.name = 'Another bike';
  const text = JSON.stringify(saved);
  await page.locator('[data-bike-file]').setInputFiles({
    name: 'kept.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await expectNoUndo(page);
  for (const { label } of ADJUSTER_GROUPS)
    expect(`${label}: ${await changedOf(adjusterGroup(page, label))}`).toBe(
      `${label}: ${label === 'Ride height' ? '1 changed' : 'none'}`,
    );
});

test('a folded group opens for an adjuster that is asked for, again too, and stays folded when only the mode changes', async ({
  page,
}) => {
  await openPage(page);
  await typeInto(page, adjusterLabel('forkSpringRate', 'chain'), '0');
  await adjusterGroup(page, 'Springs').click();
  const rideState = page.getByRole('group', { name: 'Ride state' });
  const way = sideView(page).getByRole('button', { name: 'Go to Fork spring rate' });
  for (const mode of ['Edit', 'Adjusters'] as const) {
    await chooseMode(page, mode);
    // In Edit the bike hangs until a state is chosen.
    await rideState.getByText('Rider on board', { exact: true }).click();
    await way.click();
    await expect(field(page, 'Fork spring rate')).toBeFocused();
    await expect(field(page, 'Fork spring rate')).toBeInViewport({ ratio: 1 });
    expect(await openGroups(page)).toEqual(['Ride height', 'Springs']);
    await adjusterGroup(page, 'Springs').click();
  }
  await chooseMode(page, 'Edit');
  await chooseMode(page, 'Adjusters');
  expect(await openGroups(page)).toEqual(['Ride height']);
});

test('the chain adjuster puts on the nearest chain, steps to the next one that fits, and each is one undo', async ({
  page,
}) => {
  await openPage(page);
  await openAdjuster(page, AXLE);
  const asSet = await field(page, AXLE).inputValue();
  const { bike, setup } = await savedDocument(page);
  const nearest = nearestChain(bike, setup, setup.axlePosition);
  if (!nearest.ok) throw new Error(nearest.reason);
  const place = async (): Promise<number> => Number(await field(page, AXLE).inputValue());
  const placeWith = (links: number): number => {
    const fit = chainFit(bike, setup, links);
    if (!fit.ok) throw new Error(fit.reason);
    return fit.axlePosition;
  };

  await expect(field(page, LINKS)).toHaveCount(0);
  await chainAdjuster(page).getByText('By the chain').click();
  await expect(field(page, LINKS)).toHaveValue(String(nearest.links));
  expect(await place()).toBeCloseTo(placeWith(nearest.links), 1);
  await expect(field(page, AXLE)).toHaveAccessibleDescription(
    new RegExp(
      `Follows the chain of ${nearest.links} links\\. When you set it here, the axle no longer follows the chain\\.`,
    ),
  );
  expect(await changedOf(adjusterGroup(page, 'Gearing and axle'))).toBe('1 changed');
  await expect(undoButton(page)).toHaveAccessibleName(`Undo: Chain of ${nearest.links} links`);

  const longer = chainAdjuster(page).getByRole('button', { name: 'Chain length: the next longer chain' });
  await longer.focus();
  await page.keyboard.press('Enter');
  await expect(field(page, LINKS)).toHaveValue(String(nearest.links + 2));
  expect(await place()).toBeCloseTo(placeWith(nearest.links + 2), 1);
  expect((await savedDocument(page)).setup.chainLinks).toBe(nearest.links + 2);
  await undo(page);
  await expect(field(page, LINKS)).toHaveValue(String(nearest.links));
  await undo(page);
  await expect(field(page, LINKS)).toHaveCount(0);
  await expect(field(page, AXLE)).toHaveValue(asSet);
  await expectNoUndo(page);
});

test('links that do not fit are refused in words with those that do, and nothing is lost', async ({
  page,
}) => {
  await openPage(page);
  await openAdjuster(page, AXLE);
  await chainAdjuster(page).getByText('By the chain').click();
  const before = await field(page, LINKS).inputValue();
  const alert = chainAdjuster(page).getByRole('alert');
  for (const [typed, words] of [
    ['90', /A chain of 90 links is too short.* With [\d, or]+ links it fits\. Kept/],
    ['150', /A chain of 150 links is too long.* With [\d, or]+ links it fits\. Kept/],
    ['111', /A chain of 111 links cannot be joined; an odd number needs a half link\. With/],
    ['111.5', /Links are counted whole; type a whole number\. Kept/],
  ] as const) {
    await typeInto(page, LINKS, typed);
    await expect(alert).toContainText(words);
    await expect(alert).toContainText(`Kept ${before}`);
    await field(page, LINKS).press('Escape');
    await expect(field(page, LINKS)).toHaveValue(before);
  }
  expect((await savedDocument(page)).setup.chainLinks).toBe(Number(before));
  // A sprocket too small leaves the chain on the bike too long: the side view leads here, and one step down fits.
  await typeInto(page, adjusterLabel('rearTeeth', 'chain'), '32');
  await expect(alert).toContainText(`A chain of ${before} links is too long`);
  await adjusterGroup(page, 'Gearing and axle').click();
  await sideView(page).getByRole('button', { name: 'Go to Chain length' }).click();
  await expect(chainAdjuster(page).getByRole('radio', { name: 'By the chain' })).toBeFocused();
  await expect(chainAdjuster(page)).toBeInViewport();
  await chainAdjuster(page).getByRole('button', { name: 'Chain length: the next shorter chain' }).click();
  await expect(alert).toBeHidden();
  await expect(sideView(page).getByRole('alert')).toBeHidden();
  const { bike, setup } = await savedDocument(page);
  expect(setup.chainLinks).toBeLessThan(Number(before));
  expect(chainFit(bike, setup, setup.chainLinks ?? 0).ok).toBe(true);
});

test('a half link lets the chain step by one link', async ({ page }) => {
  await openPage(page);
  await chooseMode(page, 'Edit');
  await page.locator('.bike').getByText('Drive', { exact: true }).click();
  await page.getByRole('checkbox', { name: 'A half link may be put in' }).check();
  await chooseMode(page, 'Adjusters');
  await openAdjuster(page, AXLE);
  await chainAdjuster(page).getByText('By the chain').click();
  const links = Number(await field(page, LINKS).inputValue());
  await field(page, LINKS).press('ArrowUp');
  await expect(field(page, LINKS)).toHaveValue(String(links + 1));
});

test('typing the axle’s place takes the chain off, and so does the choice, which leaves the axle where it stood', async ({
  page,
}) => {
  await openPage(page);
  await openAdjuster(page, AXLE);
  await chainAdjuster(page).getByText('By the chain').click();
  const stood = await field(page, AXLE).inputValue();
  await chainAdjuster(page).getByText('Axle set by hand', { exact: true }).click();
  await expect(field(page, LINKS)).toHaveCount(0);
  await expect(field(page, AXLE)).toHaveValue(stood);
  await undo(page);
  await expect(field(page, LINKS)).toBeVisible();
  await typeInto(page, AXLE, '9');
  await expect(field(page, LINKS)).toHaveCount(0);
  await expect(field(page, AXLE)).toHaveValue('9.0');
  await expect(chainAdjuster(page).getByRole('radio', { name: 'Axle set by hand' })).toBeChecked();
  await undo(page);
  await expect(field(page, AXLE)).toHaveValue(stood);
  await expect(field(page, LINKS)).toBeVisible();
});

test('where no chain fits, asking for one says so, and the axle stays by its adjuster', async ({ page }) => {
  await openPage(page);
  const file = JSON.parse(await savedText(page)) as {
    bike: { swingarm: { slot: number } };
    setup: { axlePosition: number };
  };
  file.bike.swingarm.slot = 0.5;
  file.setup.axlePosition = 0;
  await page.locator('[data-bike-file]').setInputFiles({
    name: 'short-slot.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(file)),
  });
  await openAdjuster(page, AXLE);
  await chainAdjuster(page).getByText('By the chain').click();
  await expect(chainAdjuster(page).getByRole('alert')).toContainText(
    'No whole chain puts the axle into its slot with these sprockets.',
  );
  await expectNoUndo(page);
  await chainAdjuster(page).getByText('Axle set by hand', { exact: true }).click();
  await expect(chainAdjuster(page).getByRole('alert')).toHaveCount(0);
  await expectNoUndo(page);
});
