/** Real rear links on a phone: each layout from the table by finger, a bolt tapped and dragged, figures typed. */
import { expect, test } from '@playwright/test';
import { savedDocument } from './support/bike-document.ts';
import { expectNoUndo, field, readingText, startDemo, typeInto, undo, undoButton } from './support/panels.ts';
import { fingersOn, slide } from './support/fingers.ts';
import { chooseMode, handle, middleOf, openPage } from './support/side-view.ts';
import { choosePanel } from './support/touch.ts';

for (const { label, bolt, figure } of [
  { label: 'Straight shock, or two', bolt: 'shockOnFrame', figure: 'Shock on frame, above the pivot' },
  {
    label: 'Rocker on the frame, rod to the swingarm',
    bolt: 'shockFarEnd',
    figure: 'Rocker pivot, forward of the pivot',
  },
  {
    label: 'Rocker on the swingarm, rod to the frame',
    bolt: 'shockFarEnd',
    figure: 'Rod on frame, above the pivot',
  },
])
  test(`${label}: chosen, a bolt tapped and dragged and another typed, by finger`, async ({ page }) => {
    await openPage(page);
    await startDemo(page, 'Long-travel off-road');
    await chooseMode(page, 'Edit');
    await page.getByText('Rear suspension', { exact: true }).tap();
    const layout = page.getByRole('combobox', { name: 'Layout' });
    await layout.selectOption({ label: 'Travel table' });
    await layout.selectOption({ label });
    await expect(
      page.getByText(/^The links have .* left when the shock is closed: .* Below hanging/),
    ).toBeVisible();
    const before = await savedDocument(page);
    await handle(page, `point-${bolt}`).focus();
    const from = await middleOf(page, `point-${bolt}`);
    await page.touchscreen.tap(from.x, from.y);
    const chooser = page.getByRole('group', { name: 'Which one?' });
    const name = bolt === 'shockFarEnd' ? 'Shock, other end' : 'Shock on frame';
    if (await chooser.isVisible()) await chooser.getByRole('button', { name, exact: true }).tap();
    await expect(handle(page, `point-${bolt}`)).toHaveAttribute('aria-pressed', 'true');
    // The bolt chosen is the one that a finger takes along, however near the others are.
    const fingers = await fingersOn(page);
    await slide(fingers, from, { x: from.x + 8, y: from.y - 14 });
    await fingers.lift();
    await expect(undoButton(page)).toHaveAccessibleName(`Undo: Moved ${name.toLowerCase()}`);
    const moved = await savedDocument(page);
    expect(moved.bike.swingarm.links?.shock.fullLength).not.toBe(
      before.bike.swingarm.links?.shock.fullLength,
    );
    const was = Number((await field(page, figure).inputValue()).replace('\u2212', '-'));
    await typeInto(page, figure, String(was + 1));
    expect((await savedDocument(page)).bike.swingarm.links).not.toEqual(moved.bike.swingarm.links);
    for (let times = 0; times < 4; times++) await undo(page);
    await expectNoUndo(page);
    await choosePanel(page, 'Readings');
    expect(await readingText(page, 'Swingarm angle')).toMatch(/^[\d.]+°$/);
  });
