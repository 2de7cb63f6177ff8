/** Tests of cutting lines and areas off at an area's edges. */
import { expect, it } from 'vitest';
import { clipArea, clipLine } from './clip.ts';

const SQUARE = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

it('a line is cut where it leaves the area, and kept whole inside it', () => {
  expect(clipLine({ x: -5, y: 5 }, { x: 15, y: 5 }, SQUARE)).toEqual({
    from: { x: 0, y: 5 },
    to: { x: 10, y: 5 },
  });
  const inner = { from: { x: 1, y: 2 }, to: { x: 8, y: 9 } };
  expect(clipLine(inner.from, inner.to, SQUARE)).toEqual(inner);
});

it('a line that passes the area by leaves nothing', () => {
  expect(clipLine({ x: -5, y: 12 }, { x: 15, y: 12 }, SQUARE)).toBeNull();
  expect(clipLine({ x: 12, y: -9 }, { x: 19, y: 8 }, SQUARE)).toBeNull();
});

it('an area loses what lies outside', () => {
  const cut = clipArea(
    [
      { x: 5, y: 5 },
      { x: 15, y: 5 },
      { x: 15, y: 8 },
      { x: 5, y: 8 },
    ],
    SQUARE,
  );
  expect(Math.max(...cut.map(({ x }) => x))).toBe(10);
  expect(Math.min(...cut.map(({ x }) => x))).toBe(5);
  expect(new Set(cut.map(({ y }) => y))).toEqual(new Set([5, 8]));
  expect(
    clipArea(
      [
        { x: 20, y: 0 },
        { x: 30, y: 0 },
        { x: 30, y: 9 },
      ],
      SQUARE,
    ),
  ).toEqual([]);
});
