/** What the first bytes of a picture file say, from files written by hand. */
import { describe, expect, it } from 'vitest';
import { flatJpeg } from '../support/flat-jpeg.ts';
import { clearPng, emptyPng, greyPng, movingPng, readGreyPng } from '../support/png.ts';
import { pictureFacts } from '../../src/core/measure/photo/picture-facts.ts';

const grey = { widthPx: 24, heightPx: 16, light: Uint8Array.from({ length: 384 }, (_, i) => (i * 7) % 256) };

describe('a JPEG', () => {
  it.each([
    [undefined, false],
    [1, false],
    [3, false],
    [4, false],
    [5, true],
    [6, true],
    [8, true],
  ])(
    'of orientation %s says its size as stored, and whether it lies on its side',
    (orientation, sideways) => {
      const file = flatJpeg({ across: 5, down: 3, level: (column) => 40 * column, orientation });
      expect(pictureFacts(file)).toEqual({
        size: { widthPx: 40, heightPx: 24 },
        focal35: null,
        resized: false,
        sideways,
        animated: false,
      });
    },
  );

  it('that ends early says what it can', () => {
    const file = flatJpeg({ across: 5, down: 3, level: () => 0, orientation: 6 });
    for (let length = 0; length < file.length; length++)
      expect([null, 40]).toContain(pictureFacts(file.subarray(0, length)).size?.widthPx ?? null);
  });
});

describe('a PNG', () => {
  it('says its size, also where it holds nothing else', () => {
    expect(pictureFacts(emptyPng(20_000, 20_000)).size).toEqual({ widthPx: 20_000, heightPx: 20_000 });
    expect(pictureFacts(clearPng(grey))).toMatchObject({ size: { widthPx: 24 }, animated: false });
    expect(readGreyPng(greyPng(grey))).toEqual(grey);
  });

  it('says whether it moves', () => {
    expect(pictureFacts(greyPng(grey)).animated).toBe(false);
    expect(pictureFacts(movingPng(grey, grey)).animated).toBe(true);
  });
});

it('a GIF and a WebP say whether they move, by their headers', () => {
  const gif = Buffer.concat([
    Buffer.from('GIF89a', 'latin1'),
    Buffer.from([44, 1, 200, 0, 0x80, 0, 0, 0, 0, 0, 255, 255, 255, 0x21, 0xff, 11]),
  ]);
  expect(pictureFacts(gif)).toMatchObject({ size: { widthPx: 300, heightPx: 200 }, animated: false });
  const moving = Buffer.concat([gif, Buffer.from('NETSCAPE2.0', 'latin1')]);
  expect(pictureFacts(moving)).toMatchObject({ size: { widthPx: 300, heightPx: 200 }, animated: true });
  const webp = (flags: number): Buffer =>
    Buffer.concat([
      Buffer.from('RIFF\0\0\0\0WEBPVP8X\x0a\0\0\0', 'latin1'),
      Buffer.from([flags, 0, 0, 0, 43, 1, 0, 199, 0, 0]),
    ]);
  expect(pictureFacts(webp(0))).toMatchObject({ size: { widthPx: 300, heightPx: 200 }, animated: false });
  expect(pictureFacts(webp(2)).animated).toBe(true);
});

it('anything else says nothing', () => {
  expect(pictureFacts(Buffer.from('Tape on the fridge, 12 mm'))).toMatchObject({
    size: null,
    animated: false,
  });
});
