/** The Chain tab on a phone: every part within the screen, controls for a finger, an axle set by its chain. */
import { expect, test } from '@playwright/test';
import { adjusterLabel } from '../../src/core/adjusters/named-adjusters.ts';
import { chain, chooseChainPart, openChain } from './support/chain.ts';
import { openLowChain } from './support/low-chain.ts';
import { expectNoUndo, field, openAdjuster, undoButton } from './support/panels.ts';
import { openPage } from './support/side-view.ts';
import { pictureText, wordsOf } from './support/side-view-picture.ts';
import { amissIn, choosePanel, tapTheme } from './support/touch.ts';

test('every part fits the screen and the finger, in every theme', async ({ page }) => {
  await openPage(page);
  await openLowChain(page);
  await choosePanel(page, 'Why and more');
  await openChain(page, 'Axle');
  for (const theme of ['paper', 'garage', 'sun'] as const) {
    await tapTheme(page, theme);
    for (const part of ['Axle', 'Slack', 'Wear', 'Over the pivot'] as const) {
      await chooseChainPart(page, part);
      expect({ theme, part, amiss: await amissIn(chain(page)) }).toEqual({ theme, part, amiss: [] });
    }
  }
});

test('a tap sets the axle by its chain and another takes it back', async ({ page }) => {
  await openPage(page);
  const label = adjusterLabel('axlePosition', 'chain');
  await openAdjuster(page, label);
  const axle = field(page, label);
  const before = await axle.inputValue();
  await choosePanel(page, 'Why and more');
  await openChain(page, 'Axle');
  const set = chain(page)
    .getByRole('button', { name: /^Set the axle there/ })
    .first();
  const links = /for (\d+) links/.exec((await set.getAttribute('aria-label')) ?? '')?.[1] ?? '';
  await set.tap();
  await expect(chain(page)).toContainText(`${links}.00 links fit exactly`);
  await choosePanel(page, 'Adjusters');
  await expect(axle).not.toHaveValue(before);
  await undoButton(page).tap();
  await expect(axle).toHaveValue(before);
  await expectNoUndo(page);
});

test('the chain that rubs is marked on the side view, its slack drawn, and a tap lifts it off the guide', async ({
  page,
}) => {
  await openPage(page);
  await openLowChain(page);
  // With the rider on board the chain slider leaves this chain no slack to draw.
  await choosePanel(page, 'Readings');
  await page.getByRole('combobox', { name: 'Ride state' }).selectOption('Topped out');
  expect(wordsOf(await pictureText(page))).toContain('Chain rubs on the chain slider');
  await choosePanel(page, 'Why and more');
  await openChain(page, 'Slack');
  const picture = chain(page).getByRole('img', { name: 'Lower run of the chain' });
  await picture.scrollIntoViewIfNeeded();
  await expect(picture.locator('text').filter({ hasText: /^Hangs \d+\.\d\smm$/ })).toBeVisible();
  await chooseChainPart(page, 'Over the pivot');
  await chain(page)
    .getByRole('button', { name: /^Try \d+ teeth in front$/ })
    .tap();
  await expect(chain(page)).toContainText('The upper run stays clear');
});
