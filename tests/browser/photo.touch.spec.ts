/** A photo on a phone: a finger presses, the loupe lies clear of it, and the edge of a rim is found. */
import { expect, test } from '@playwright/test';
import { fingersOn } from './support/fingers.ts';
import { chooseTarget, onStage, stage, truePhoto } from './support/photo.ts';
import { openPage } from './support/side-view.ts';
import { openTape, tape } from './support/tape.ts';
import { amissIn, choosePanel } from './support/touch.ts';

/** Less than this from the finger's middle is under the finger, px. */
const FINGER_PX = 40;

test('a rim and a part are clicked with a finger on a photo taken from the left', async ({ page }) => {
  const photo = truePhoto('left');
  await openPage(page);
  await choosePanel(page, 'Why and more');
  await openTape(page);
  const camera = page.waitForEvent('filechooser');
  await tape(page).getByRole('button', { name: 'Take a photo' }).tap();
  const chooser = await camera;
  await expect(chooser.element().getAttribute('capture')).resolves.toBe('environment');
  await chooser.setFiles(photo.file);
  await chooseTarget(page, 'Rear wheel, rim');
  await tape(page).getByText('How it was taken').tap();
  await tape(page).getByRole('group', { name: 'Taken from the' }).getByText('Left', { exact: true }).tap();
  const fingers = await fingersOn(page);
  const press = async (pixel: { x: number; y: number }): Promise<void> => {
    // Mirrored on the screen, as the bike is on the side view.
    const place = await onStage(page, { x: 1600 - pixel.x, y: pixel.y });
    await stage(page).evaluate(
      (element, y) => element.scrollIntoView({ block: y > 200 ? 'end' : 'start' }),
      place.y,
    );
    const box = await stage(page).boundingBox();
    if (box === null) throw new Error('the picture is not in sight');
    const at = { x: box.x + place.x, y: box.y + place.y };
    await fingers.at(at);
    const loupe = await page.locator('.loupe').boundingBox();
    if (loupe === null) throw new Error('there is no loupe');
    const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
    expect(
      Math.min(loupe.x, loupe.y, width - loupe.x - loupe.width, height - loupe.y - loupe.height),
    ).toBeGreaterThanOrEqual(0);
    const [acrossX, acrossY] = [
      Math.abs(at.x - loupe.x - loupe.width / 2),
      Math.abs(at.y - loupe.y - loupe.height / 2),
    ];
    expect(Math.max(acrossX, acrossY) - loupe.width / 2).toBeGreaterThan(FINGER_PX);
    await fingers.lift();
    await expect(page.locator('.loupe')).toHaveCount(0);
  };
  const rim = photo.rim('rearAxle');
  await press(rim[0]);
  await expect(tape(page).getByText('1 of 3.')).toBeVisible();
  // A touch that the system takes away sets nothing.
  const box = await stage(page).boundingBox();
  await fingers.at({ x: (box?.x ?? 0) + 60, y: (box?.y ?? 0) + 60 });
  await fingers.cancel();
  await expect(tape(page).getByText('1 of 3.')).toBeVisible();
  for (const pixel of rim.slice(1)) await press(pixel);
  await tape(page).getByRole('button', { name: 'Take this edge' }).tap();
  await chooseTarget(page, 'Seat mark');
  await press(photo.part('seat'));
  await expect(tape(page).getByText('One more place to click before the photo counts')).toBeVisible();
  await chooseTarget(page, 'Rear sprocket, pins');
  for (const pixel of photo.pins()) await press(pixel);
  await expect(tape(page).getByText(/^The pins make 4\d ± \d teeth\. 42 are set/)).toBeVisible();
  expect(await amissIn(tape(page))).toEqual([]);
});
