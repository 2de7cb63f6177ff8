/** A bike measured on one photo, from an empty page: rims, a part by mouse and by keys, known sizes, and taking it over. */
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import type { Pixel } from '../../src/core/measure/photo/camera.ts';
import { metricReading, savedDocument, standing } from './support/bike-document.ts';
import { kept } from './support/kept.ts';
import { plain, undo } from './support/panels.ts';
import { chooseTarget, onStage, openPhoto, stage, truePhoto } from './support/photo.ts';
import { openPage } from './support/side-view.ts';
import { fillIn, openTape, tape } from './support/tape.ts';

async function clickOn(page: Page, pixel: Pixel): Promise<void> {
  await stage(page).hover({ position: await onStage(page, pixel) });
  await page.mouse.down();
  await expect(page.locator('.loupe')).toBeVisible();
  await page.mouse.up();
  await expect(page.locator('.loupe')).toHaveCount(0);
}

/** Moves the cross by keys from the middle of the picture and sets it. */
async function keyOn(page: Page, { x, y }: Pixel): Promise<void> {
  await stage(page).focus();
  for (const [away, less, more] of [
    [Math.round(x) - 800, 'ArrowLeft', 'ArrowRight'],
    [Math.round(y) - 600, 'ArrowUp', 'ArrowDown'],
  ] as const) {
    const key = away < 0 ? less : more;
    const size = Math.abs(away);
    for (const [by, held] of [
      [Math.floor(size / 100), 'Shift+'],
      [Math.floor((size % 100) / 10), ''],
      [size % 10, 'Alt+'],
    ] as const)
      for (let i = 0; i < by; i++) await page.keyboard.press(`${held}${key}`);
  }
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
}

test('one photo and a few known sizes make the bike, which one edit takes over and undo gives back', async ({
  page,
}) => {
  const photo = truePhoto('right');
  await openPage(page);
  await openTape(page);
  await openPhoto(page, { name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') });
  await expect(tape(page).getByRole('alert')).toContainText('this browser cannot show it as a picture');
  await openPhoto(page, photo.file);
  await expect(tape(page).getByText('Three places to click before the photo counts')).toBeVisible();

  for (const [label, axle] of [
    ['Front wheel, rim', 'frontAxle'],
    ['Rear wheel, rim', 'rearAxle'],
  ] as const) {
    await chooseTarget(page, label);
    for (const pixel of photo.rim(axle)) await clickOn(page, pixel);
    await tape(page).getByRole('button', { name: 'Take this edge' }).click();
    await chooseTarget(page, label);
    await fillIn(page, `Across the edge, ${label.slice(0, -', rim'.length)}`, '444');
  }
  await chooseTarget(page, 'Swingarm pivot');
  await keyOn(page, photo.part('pivot'));
  await expect(tape(page).getByText(/The camera stood/)).toBeVisible();
  // The picture now lies under the side view as it was taken, whatever the theme, and goes when it is not wanted.
  const under = page.locator('.side-view canvas').first();
  await expect(page.locator('.side-view canvas')).toHaveCount(2);
  await expect(under).toHaveCSS('filter', 'contrast(1)');
  await expect(under).toHaveCSS('transform', /^matrix/);
  await tape(page).getByText('Picture', { exact: true }).click();
  await tape(page).getByRole('checkbox', { name: 'Under the side view too' }).uncheck();
  await expect(page.locator('.side-view canvas')).toHaveCount(1);
  await tape(page).getByRole('checkbox', { name: 'Under the side view too' }).check();
  await expect(page.locator('.side-view canvas')).toHaveCount(2);
  await stage(page).focus();
  await page.keyboard.press('Backspace');
  await expect(tape(page).getByText('One more place to click before the photo counts')).toBeVisible();
  await keyOn(page, photo.part('pivot'));
  for (const [label, part] of [
    ['Steering head', 'steeringHead'],
    ['Steering axis, lower end', 'axisFoot'],
    ['Front sprocket', 'countershaft'],
  ] as const) {
    await chooseTarget(page, label);
    await clickOn(page, photo.part(part));
  }

  for (const [size, figure] of [
    ['Axle height, front wheel', photo.radii.front],
    ['Axle height, rear wheel', photo.radii.rear],
    ['Offset of the front axle', photo.offset],
  ] as const) {
    await tape(page).getByRole('button', { name: size, exact: true }).click();
    await fillIn(page, 'Figure', String(figure));
  }
  const main = tape(page).locator('p.main');
  await expect.poll(async () => plain(await main.innerText())).toMatch(/Wheelbase 1\d{3}(\.\d)? ± \d/);
  expect((await new AxeBuilder({ page }).include('section.tape').analyze()).violations).toEqual([]);

  const apply = tape(page).getByRole('button', { name: 'Apply to the bike' });
  await apply.click();
  await expect(apply).toBeDisabled();
  const on = standing(await savedDocument(page), 'noRider');
  expect(Math.abs(metricReading(on, 'wheelbase') - photo.reading('wheelbase'))).toBeLessThan(15);
  expect(Math.abs(metricReading(on, 'rake') - photo.reading('rake'))).toBeLessThan(0.6);
  await undo(page);
  await expect(apply).toBeEnabled();
});

test('opened again, picture and clicks are there, and go on', async ({ page }) => {
  const photo = truePhoto('right');
  await openPage(page);
  await openTape(page);
  await openPhoto(page, photo.file);
  await chooseTarget(page, 'Swingarm pivot');
  await clickOn(page, photo.part('pivot'));
  // The click too, and not the photo alone, which is kept before it.
  await expect.poll(async () => /"clicks":\s*\[\s*\{/u.test((await kept(page))[0]?.text ?? '')).toBe(true);
  await page.reload();
  await openTape(page);
  await expect(stage(page).locator('canvas')).toBeVisible();
  await expect(tape(page).getByText('Two more places to click before the photo counts')).toBeVisible();
  await chooseTarget(page, 'Seat mark');
  await clickOn(page, photo.part('seat'));
  await expect(tape(page).getByRole('combobox', { name: 'What to click' })).toContainText('(1)');
  await expect(stage(page).locator('canvas')).toBeVisible();
});
