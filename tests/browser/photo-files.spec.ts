/** Odd picture files, in one visit: each is shown upright or refused in words within two seconds, and nothing is lost. */
import { expect, test, type Page } from '@playwright/test';
import { flatJpeg, SQUARE_PX } from '../support/flat-jpeg.ts';
import { clearPng, emptyPng, greyPng, movingPng, type GreyPicture } from '../support/png.ts';
import { undo } from './support/panels.ts';
import { chooseTarget, openPhoto, stage } from './support/photo.ts';
import { openPage } from './support/side-view.ts';
import { openTape, tape } from './support/tape.ts';

/** The words of a refusal are there this soon, ms. */
const REFUSED_WITHIN = 2000;
/** Squares of the upright picture of which each orientation is a file. */
const [ACROSS, DOWN] = [40, 30];
/** Levels of grey of the quarters of that picture, from the upper left one by rows. */
const QUARTERS = [240, 170, 110, 20];
/** A picture held whole has no more pixels than this. */
const HELD_PIXELS = 16_100_000;

/** The upright picture: four quarters, and a middle whose level tells one file from the next. */
function look(x: number, y: number, middle: number): number {
  if (Math.abs(x - ACROSS / 2 + 0.5) < 5 && Math.abs(y - DOWN / 2 + 0.5) < 5) return middle;
  return QUARTERS[(y < DOWN / 2 ? 0 : 2) + (x < ACROSS / 2 ? 0 : 1)];
}

/** Where a stored square is upright, by orientation. Source: EXIF 2.32 (CIPA DC-008), tag 274. */
const UPRIGHT: Readonly<Record<number, (c: number, r: number) => readonly [x: number, y: number]>> = {
  1: (c, r) => [c, r],
  2: (c, r) => [ACROSS - 1 - c, r],
  3: (c, r) => [ACROSS - 1 - c, DOWN - 1 - r],
  4: (c, r) => [c, DOWN - 1 - r],
  5: (c, r) => [r, c],
  6: (c, r) => [ACROSS - 1 - r, c],
  7: (c, r) => [ACROSS - 1 - r, DOWN - 1 - c],
  8: (c, r) => [r, DOWN - 1 - c],
};

function turned(orientation: number): Buffer {
  const [across, down] = orientation < 5 ? [ACROSS, DOWN] : [DOWN, ACROSS];
  return flatJpeg({
    across,
    down,
    orientation,
    level: (c, r) => look(...UPRIGHT[orientation](c, r), 30 + 20 * orientation),
  });
}

interface Given {
  readonly name: string;
  readonly type: string;
  readonly data: Buffer;
}

/** Pastes a file into the page, or drops it on the panel. */
async function give(page: Page, way: 'paste' | 'drop', { name, type, data }: Given): Promise<void> {
  const section = tape(page).getByRole('group', { name: 'Photo', exact: true });
  await section.evaluate(
    (element, given) => {
      const bytes = Uint8Array.from(atob(given.base64), (letter) => letter.charCodeAt(0));
      const files = new DataTransfer();
      files.items.add(new File([bytes], given.name, { type: given.type }));
      const usual = { bubbles: true, cancelable: true };
      element.dispatchEvent(
        given.way === 'paste'
          ? new ClipboardEvent('paste', { ...usual, clipboardData: files })
          : new DragEvent('drop', { ...usual, dataTransfer: files }),
      );
    },
    { way, name, type, base64: data.toString('base64') },
  );
}

/** Levels of grey on the picture as shown: its quarters, by rows, and its middle. */
async function seen(page: Page): Promise<readonly number[]> {
  return stage(page)
    .locator('canvas')
    .evaluate((canvas: HTMLCanvasElement) => {
      const brush = canvas.getContext('2d');
      return [
        [0.2, 0.2],
        [0.8, 0.2],
        [0.2, 0.8],
        [0.8, 0.8],
        [0.5, 0.5],
      ].map(([x, y]) => brush?.getImageData(x * canvas.width, y * canvas.height, 1, 1).data[0] ?? NaN);
    });
}

/** Waits until the picture shows these levels, as near as a browser paints them. */
async function expectSeen(page: Page, levels: readonly number[]): Promise<void> {
  await expect
    .poll(async () => {
      const now = await seen(page);
      return Math.max(...levels.map((level, i) => Math.abs(level - now[i])));
    })
    .toBeLessThan(6);
}

async function expectRefused(page: Page, given: Given, words: RegExp): Promise<void> {
  await give(page, 'drop', given);
  const alert = tape(page).getByRole('alert');
  await expect(alert).toContainText(words, { timeout: REFUSED_WITHIN });
  await expect(alert).toContainText(given.name);
  await alert.getByRole('button').click();
  await expect(alert).toHaveCount(0);
}

const grey = (level: (x: number, y: number) => number): GreyPicture => {
  const [widthPx, heightPx] = [ACROSS * SQUARE_PX, DOWN * SQUARE_PX];
  return {
    widthPx,
    heightPx,
    light: Uint8Array.from({ length: widthPx * heightPx }, (_, i) =>
      level(Math.floor((i % widthPx) / SQUARE_PX), Math.floor(i / widthPx / SQUARE_PX)),
    ),
  };
};

test('pictures of every orientation, size and kind are shown upright, or refused with what to do', async ({
  page,
}) => {
  await openPage(page);
  await openTape(page);
  await openPhoto(page, { name: 'orientation-1.jpg', mimeType: 'image/jpeg', buffer: turned(1) });
  await expectSeen(page, [...QUARTERS, 50]);
  for (const orientation of [2, 3, 4, 5, 6, 7, 8]) {
    const name = `orientation-${orientation}.jpg`;
    await give(page, 'paste', { name, type: 'image/jpeg', data: turned(orientation) });
    await expectSeen(page, [...QUARTERS, 30 + 20 * orientation]);
    await expect(stage(page).locator('svg')).toHaveAttribute('viewBox', '0 0 320 240');
  }

  // Whatever is refused takes neither the picture nor a click.
  await chooseTarget(page, 'Seat mark');
  await stage(page).click();
  const target = tape(page).getByRole('combobox', { name: 'What to click' });
  await expect(target).toContainText('Seat mark (1)');
  const jpeg = turned(1);
  const refused: readonly (readonly [Given, RegExp])[] = [
    [{ name: 'one.png', type: 'image/png', data: emptyPng(1, 1) }, /less than 200 pixels.*larger picture/],
    [
      { name: 'vast.png', type: 'image/png', data: emptyPng(20_000, 20_000) },
      /more than 120 million.*smaller/,
    ],
    [{ name: 'empty.png', type: 'image/png', data: emptyPng(800, 600) }, /cannot show it.*JPEG/],
    [{ name: 'cut.jpg', type: 'image/jpeg', data: jpeg.subarray(0, 60) }, /cannot show it.*JPEG/],
    [
      {
        name: 'phone.heic',
        type: 'image/heic',
        data: Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'),
      },
      /cannot show it.*JPEG/,
    ],
    [{ name: 'nothing.jpg', type: 'image/jpeg', data: Buffer.alloc(0) }, /cannot show it.*JPEG/],
  ];
  for (const [given, words] of refused) await expectRefused(page, given, words);
  await expectSeen(page, [...QUARTERS, 190]);
  await expect(target).toContainText('Seat mark (1)');

  // Another picture begins anew; the one before and its click are one undo away.
  const upright = (x: number, y: number): number => look(x, y, 60);
  const clear: Given = { name: 'clear.png', type: 'image/png', data: clearPng(grey(upright)) };
  await give(page, 'drop', clear);
  await expectSeen(
    page,
    [...QUARTERS, 60].map((level) => (level + 255) / 2),
  );
  await expect(tape(page).getByText('Parts of this picture are see-through')).toBeVisible();
  await undo(page);
  await expectSeen(page, [...QUARTERS, 190]);
  await chooseTarget(page, 'Seat mark');
  await expect(target).toContainText('Seat mark (1)');
  const moving = movingPng(
    grey(upright),
    grey(() => 0),
  );
  await give(page, 'drop', { name: 'moves.png', type: 'image/png', data: moving });
  await expectSeen(page, [...QUARTERS, 60]);
  await expect(tape(page).getByText('only its first image counts')).toBeVisible();
  await give(page, 'drop', {
    name: 'plain.png',
    type: 'image/png',
    data: greyPng(grey((x, y) => look(x, y, 80))),
  });
  await expectSeen(page, [...QUARTERS, 80]);
  await expect(tape(page).getByText('only its first image counts')).toHaveCount(0);

  // 48 megapixels, taken upright: clicks count in its pixels, and no copy of all of them is held.
  const sizes = await page.evaluateHandle(() => {
    const make = createImageBitmap;
    const all: number[] = [];
    Object.assign(window, {
      createImageBitmap: async (...given: Parameters<typeof make>) => {
        const bitmap = await make(...given);
        all.push(bitmap.width * bitmap.height);
        return bitmap;
      },
    });
    return all;
  });
  const large = flatJpeg({
    across: 1000,
    down: 750,
    orientation: 6,
    level: (c, r) => look(Math.floor((ACROSS * (749 - r)) / 750), Math.floor((DOWN * c) / 1000), 200),
  });
  await give(page, 'drop', { name: 'large.jpg', type: 'image/jpeg', data: large });
  await expectSeen(page, [...QUARTERS, 200]);
  await expect(stage(page).locator('svg')).toHaveAttribute('viewBox', '0 0 6000 8000');
  const held = await sizes.evaluate((all) => all);
  expect(held).toHaveLength(1);
  expect(held[0]).toBeLessThan(HELD_PIXELS);
  // The edge of the middle square is where it is clicked, in the loupe too.
  await stage(page).scrollIntoViewIfNeeded();
  await page.mouse.move(0, 0);
  await stage(page).hover({ position: { x: 60, y: 60 } });
  await page.mouse.down();
  const lens = page.locator('.loupe canvas');
  await expect(lens).toBeVisible();
  await expect
    .poll(() =>
      lens.evaluate(
        (canvas: HTMLCanvasElement) => canvas.getContext('2d')?.getImageData(72, 72, 1, 1).data[0],
      ),
    )
    .toBe(QUARTERS[0]);
  await page.keyboard.press('Escape');
  await page.mouse.up();
});
