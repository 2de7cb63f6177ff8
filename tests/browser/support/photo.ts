/** Photos of an invented bike in a browser test: painted, written as PNG files, and clicked where its parts are. */
import { expect, type Locator, type Page } from '@playwright/test';
import { onPicture, type Camera, type Pixel } from '../../../src/core/measure/photo/camera.ts';
import { holdBike, postureOf } from '../../../src/core/measure/held/hold-bike.ts';
import type { MeasurePartKey } from '../../../src/core/measure/held/measure-parts.ts';
import { usualDepth } from '../../../src/core/measure/photo/photo-usual.ts';
import { readValues } from '../../../src/core/measure/measured-readings.ts';
import { READINGS } from '../../../src/core/readings/all-readings.ts';
import { FIRST_DEMO } from '../../../src/document/demos/first-demo.ts';
import { normalNumbers, originOn, trueValues } from '../../support/measured-sheet.ts';
import { aimed, CAMERA, DEPTHS, RIM_DEPTH, RIM_RADIUS } from '../../support/pictured-bike.ts';
import { greyPng } from '../../support/png.ts';
import { renderedPhoto } from '../../support/rendered-photo.ts';
import { tape } from './tape.ts';

/** Pixels to a side of CAMERA's, so that painting is quick. */
const SMALLER = 0.4;

/** A bike that differs from the one on the page by up to 10 mm and 10 mrad everywhere, as a camera at 5 m sees it. */
export function truePhoto(side: 'right' | 'left') {
  const origin = originOn(FIRST_DEMO);
  const truth = trueValues(origin, 7, 10);
  const held = holdBike(postureOf(origin, truth), 'onWheels');
  if (held === null) throw new Error('the bike cannot be held so');
  const at = aimed({ ...CAMERA, mirrored: side === 'left' }, 5000);
  const camera: Camera = { ...at, widthPx: 1600, heightPx: 1200, focal: at.focal * SMALLER };
  const values = readValues(origin, truth, READINGS) ?? [];
  const pixel = (part: MeasurePartKey, depth: number, toward: Pixel = { x: 0, y: 0 }): Pixel => {
    const place = held.place(part);
    const found =
      place === null ? null : onPicture(camera, { x: place.x + toward.x, y: place.y + toward.y, z: depth });
    if (found === null) throw new Error(part);
    return found;
  };
  return {
    file: {
      name: 'bike.png',
      mimeType: 'image/png',
      buffer: greyPng(renderedPhoto(origin, truth, camera, normalNumbers(3))),
    },
    reading: (key: string): number => values[READINGS.findIndex((each) => each.key === key)] ?? NaN,
    radii: { front: held.freeRadius.front, rear: held.freeRadius.rear },
    offset: held.offset,
    /** Where a part's nut or bolt is on the upright picture. */
    part: (part: MeasurePartKey): Pixel => pixel(part, DEPTHS.find(([key]) => key === part)?.[1] ?? 0),
    /** Pins of the chain on the back of the rear sprocket, which has as many teeth as on the page. */
    pins: (): readonly Pixel[] =>
      [-1.4, -0.7, 0, 0.7, 1.4].map((turn) => {
        const radius = held.sprockets?.rear ?? NaN;
        return pixel('rearAxle', usualDepth('rearSprocket').value, {
          x: -radius * Math.cos(turn),
          y: radius * Math.sin(turn),
        });
      }),
    /** Three places a few pixels beside a rim's edge. */
    rim: (axle: 'frontAxle' | 'rearAxle'): readonly Pixel[] =>
      [0.5, 2.6, 4.7].map((turn, i) => {
        const reach = RIM_RADIUS + (i % 2 === 0 ? 3 : -3);
        return pixel(axle, RIM_DEPTH, { x: reach * Math.cos(turn), y: reach * Math.sin(turn) });
      }),
  };
}

export function stage(page: Page): Locator {
  return tape(page).getByRole('button', { name: 'Photo of' });
}

/** Opens a file as the photo of the bike. */
export async function openPhoto(
  page: Page,
  file: { name: string; mimeType: string; buffer: Buffer },
): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await tape(page).getByRole('button', { name: 'Open a photo' }).click();
  await (await chooser).setFiles(file);
}

export async function chooseTarget(page: Page, label: string): Promise<void> {
  const menu = tape(page).getByRole('combobox', { name: 'What to click' });
  const option = menu.locator('option').filter({ hasText: new RegExp(`^${label}( \\(|$)`) });
  await menu.selectOption((await option.getAttribute('value')) ?? '');
  await expect(stage(page)).toHaveAccessibleName(new RegExp(label.replace(/, (rim|pins)$/, '')));
}

/** Where a pixel of the upright picture lies on it as shown, px from its corner. */
export async function onStage(page: Page, { x, y }: Pixel): Promise<Pixel> {
  const box = await stage(page).boundingBox();
  if (box === null) throw new Error('the picture is not in sight');
  return { x: (x * box.width) / 1600, y: (y * box.height) / 1200 };
}
