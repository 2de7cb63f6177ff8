/** A made-up thing of each kind, one file and one row in a copy of the source, shows on the page that is built from it. */
import { expect, test } from '@playwright/test';
import { serve } from '../../src/commands/serve.js';
import { builtPage } from '../support/built-page.ts';
import { MADE_UP, MADE_UP_THINGS } from '../support/made-up-things.ts';
import { copySource } from '../support/source-copy.ts';
import { field, readingLine, typeInto } from './support/panels.ts';
import { chooseState } from './support/ride.ts';
import { chooseMode, handle, openPage } from './support/side-view.ts';

const { adjuster, measuredPoint, point, quantity, reading, state, tab } = MADE_UP;

test('R16: a made-up thing of each kind, one file and one row, shows on the page', async ({ page }) => {
  const copy = copySource(MADE_UP_THINGS);
  const built = await builtPage(copy.folder);
  const server = await serve(built.folder, 0);
  try {
    await openPage(page, undefined, `http://127.0.0.1:${server.portTaken}/`);
    const set = field(page, adjuster.label);
    await expect(set, 'The adjuster shows on the page').toBeVisible();
    await expect(set, 'The adjuster shows its default').toHaveValue(`${adjuster.value}.0`);
    await typeInto(page, adjuster.label, `${adjuster.value + 1} ${quantity.typed}`);
    await expect(set, 'The field understands the quantity’s unit').toHaveValue(`${adjuster.value + 1}.0`);
    await page.getByRole('button', { name: 'Choose readings' }).click();
    await page.getByRole('checkbox', { name: reading.label }).check();
    await page.getByRole('button', { name: 'Done' }).click();
    await expect(readingLine(page, reading.label), 'The reading shows on the page').toBeVisible();
    await chooseState(page, state.label);
    await chooseMode(page, 'Edit');
    for (const { key, label } of [point, measuredPoint]) {
      await expect(handle(page, `point-${key}`), `The point shows on the side view: ${label}`).toBeVisible();
      await page.getByRole('combobox', { name: 'Point', exact: true }).selectOption({ label });
    }
    await page
      .getByRole('group', { name: 'Below the side view' })
      .getByText(tab.label, { exact: true })
      .click();
    await expect(page.getByText(tab.words), 'The tab shows its panel').toBeVisible();
  } finally {
    server.close();
    built.remove();
    copy.remove();
  }
});
