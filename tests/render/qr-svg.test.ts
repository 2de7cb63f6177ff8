/** Tests of QR codes, read by a decoder that shares nothing with what draws them. */
import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { qrSvg } from '../../src/render/svg/qr-svg.ts';
import { makeLink } from '../../src/storage/link/bike-link.ts';
import { LONGEST_LINK } from '../../src/storage/link/packed-link.ts';

/** Pixels of the picture to each square. */
const SQUARE_PX = 3;
/** The room that a page has for it. */
const WIDEST_MM = 52;

interface Painted {
  readonly sidePx: number;
  readonly sideMm: number;
  readonly squares: number;
  readonly light: Uint8ClampedArray<ArrayBuffer>;
}

/** The picture that the SVG's path paints, black on white. */
function painted(text: string): Painted {
  const svg = qrSvg(text, 'Link', WIDEST_MM) ?? '';
  const squares = Number(/viewBox="0 0 (\d+) \1"/.exec(svg)?.[1]);
  const sideMm = Number(/ width="([\d.]+)mm"/.exec(svg)?.[1]);
  const sidePx = squares * SQUARE_PX;
  const light = new Uint8ClampedArray(4 * sidePx * sidePx).fill(255);
  for (const [, x, y, width] of svg.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
    for (let row = Number(y) * SQUARE_PX; row < (Number(y) + 1) * SQUARE_PX; row++)
      for (let column = Number(x) * SQUARE_PX; column < (Number(x) + Number(width)) * SQUARE_PX; column++)
        light.fill(0, 4 * (row * sidePx + column), 4 * (row * sidePx + column) + 3);
  return { sidePx, sideMm, squares, light };
}

const readBack = ({ light, sidePx }: Painted): string | undefined => jsQR(light, sidePx, sidePx)?.data;

describe('the code of a link', () => {
  it.each(DEMO_BIKES)(
    'to $bike.name is read back by another decoder and fits beside the side view',
    async (demo) => {
      const link = await makeLink(demo, 'https://bikes.example.com/workshop/sidestance/');
      if (!link.ok) throw new Error(link.reason.kind);
      const code = painted(link.value);
      expect(readBack(code)).toBe(link.value);
      expect(code.sideMm).toBeLessThanOrEqual(WIDEST_MM);
      expect(code.sideMm / code.squares).toBeGreaterThanOrEqual(0.33);
    },
  );

  it('is read back at the longest length that a link has', () => {
    const link = `https://bikes.example.com/#bike=1.${'aB3-_'.repeat(LONGEST_LINK)}`.slice(0, LONGEST_LINK);
    expect(readBack(painted(link))).toBe(link);
  });

  it('is left out where its squares would be too small for a phone', () => {
    expect(qrSvg('x'.repeat(2900), 'Link', WIDEST_MM)).toBeNull();
  });

  it('has a white rim of four squares, and a title that no name breaks', () => {
    const address = 'https://bikes.example.com/';
    const svg = qrSvg(address, '"><script>&', WIDEST_MM);
    expect(svg).toContain('<title>&quot;&gt;&lt;script&gt;&amp;</title>');
    const { light, sidePx } = painted(address);
    const rim = 4 * SQUARE_PX;
    const dark = [...light.keys()].filter((i) => i % 4 === 0 && light[i] === 0).map((i) => i / 4);
    expect(dark.length).toBeGreaterThan(0);
    expect(dark.every((i) => i % sidePx >= rim && i % sidePx < sidePx - rim)).toBe(true);
    expect(dark.every((i) => i >= rim * sidePx && i < (sidePx - rim) * sidePx)).toBe(true);
  });
});
