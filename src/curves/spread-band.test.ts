/** Tests of the band about a curve. */
import { expect, it } from 'vitest';
import { BAND_REACH } from '../words/measure/spread-words.ts';
import { bandEdges } from './spread-band.ts';

const curve = { x: [0, 5, 10, 15, 20], y: [1, 2, 3, 4, 5] };

it('a band lies as far to both sides as a ± reaches, between its places in proportion', () => {
  const [stretch] = bandEdges(curve, { x: [0, 10, 20], u: [1, 2, 2] });
  expect(stretch.map(({ high, low }) => (high - low) / (2 * BAND_REACH))).toEqual(
    [1, 1.5, 2, 2, 2].map((u) => expect.closeTo(u, 9) as number),
  );
  expect(stretch[1].high).toBeCloseTo(2 + BAND_REACH * 1.5, 9);
});

it('a band ends where its curve is not fixed, and goes on behind it', () => {
  expect(
    bandEdges(curve, { x: [0, 5, 10, 15, 20], u: [1, 1, null, 1, 1] }).map((each) => each.map(({ x }) => x)),
  ).toEqual([
    [0, 5],
    [15, 20],
  ]);
  expect(bandEdges(curve, { x: [0, 20], u: [null, null] })).toEqual([]);
});
