/** Real rear links entered on the page: each layout from the table, its bolts typed, and what cannot close refused. */
import { expect, test, type Page } from '@playwright/test';
import { savedDocument } from './support/bike-document.ts';
import { expectNoUndo, field, readingText, startDemo, typeInto, undo } from './support/panels.ts';
import { chooseMode, openPage } from './support/stand.ts';

async function openLinks(page: Page): Promise<void> {
  await openPage(page);
  await startDemo(page, 'Twin-shock roadster');
  await chooseMode(page, 'Edit');
  await page.getByText('Rear suspension', { exact: true }).click();
}

for (const { label, kind, bolt } of [
  { label: 'Straight shock, or two', kind: 'direct', bolt: 'Shock on frame, above the pivot' },
  {
    label: 'Rocker on the frame, rod to the swingarm',
    kind: 'rockerOnFrame',
    bolt: 'Rocker pivot, forward of the pivot',
  },
  {
    label: 'Rocker on the swingarm, rod to the frame',
    kind: 'rockerOnArm',
    bolt: 'Rod on frame, above the pivot',
  },
])
  test(`${label}: begun from the table it stands at once, a bolt is typed, and undo takes it back`, async ({
    page,
  }) => {
    await openLinks(page);
    const layout = page.getByRole('combobox', { name: 'Layout' });
    await layout.selectOption({ label: 'Travel table' });
    const swingarm = await readingText(page, 'Swingarm angle');
    await layout.selectOption({ label });
    expect((await savedDocument(page)).bike.swingarm.links?.kind).toBe(kind);
    expect(await readingText(page, 'Swingarm angle')).toBe(swingarm);
    const told = page.getByText(/^Wheel travel .* leverage .* to 1 hanging/);
    await expect(told).toBeVisible();
    const words = await told.innerText();
    const before = Number((await field(page, bolt).inputValue()).replace('\u2212', '-'));
    await typeInto(page, bolt, String(before + 2));
    await expect(told).not.toHaveText(words);
    await undo(page);
    await undo(page);
    await undo(page);
    await expectNoUndo(page);
  });

test('a shock that the links cannot hold is told on the Stand, and the last bike is kept', async ({
  page,
}) => {
  await openLinks(page);
  await page
    .getByRole('combobox', { name: 'Layout' })
    .selectOption({ label: 'Rocker on the swingarm, rod to the frame' });
  const rake = await readingText(page, 'Rake');
  await typeInto(page, 'Shock fully extended, eye to eye', '900');
  await expect(page.getByRole('alert').first()).toContainText('the shock is longer than the links allow');
  expect(await readingText(page, 'Rake')).toBe(rake);
});

test('the shock’s other end changes hands and stays where it was', async ({ page }) => {
  await openLinks(page);
  await page
    .getByRole('combobox', { name: 'Layout' })
    .selectOption({ label: 'Rocker on the frame, rod to the swingarm' });
  const swingarm = await readingText(page, 'Swingarm angle');
  await page.getByRole('combobox', { name: 'Shock’s other end' }).selectOption({ label: 'On the swingarm' });
  const { links } = (await savedDocument(page)).bike.swingarm;
  expect(links !== null && links.kind !== 'direct' && links.shockFarEnd.on).toBe('arm');
  expect(await readingText(page, 'Swingarm angle')).toBe(swingarm);
});
