/** Tests of what is drawn over, in squares. */
import { describe, expect, it } from 'vitest';
import { SQUARE, squaresOf } from './covered.ts';
import { pen } from './shapes/outline.ts';

/** One mm of the ground frame is one px, its origin in the lower left corner of a window of 400 × 200. */
const VIEW = { scale: 1, turn: 0, xPx: 0, yPx: 200 };

function squares(...drawn: Partial<Parameters<typeof squaresOf>[0]>[]) {
  return squaresOf(Object.assign({ filled: [], lines: [], kept: [] }, ...drawn), VIEW, 400, 200);
}

describe('squares of the side view', () => {
  it('count the inside of a circle as drawn over, near its area', () => {
    const { covered, columns, rows } = squares({ filled: [pen().circle(200, 100, 80).shape('tyre')] });
    const area = covered(0, 0, columns, rows) * SQUARE ** 2;
    expect(area).toBeGreaterThan(Math.PI * 80 ** 2);
    expect(area).toBeLessThan(Math.PI * 90 ** 2);
    expect(covered(50, 25, 1, 1)).toBe(1);
    expect(covered(0, 0, 10, 10)).toBe(0);
  });

  it('count a line by its stroke alone, and a broad one by its breadth', () => {
    const across = pen().move(0, 100).line(400, 100);
    expect(squares({ lines: [across.shape('squatLine')] }).covered(0, 0, 100, 50)).toBe(100);
    const broad = squares({ filled: [across.shape('rider', { widthMm: 40 })] }).covered(0, 0, 100, 50);
    expect(broad).toBeGreaterThanOrEqual(1000);
    expect(broad).toBeLessThan(1300);
  });

  it('bar whatever touches what must stay free', () => {
    const { covered } = squares({ kept: [{ left: 100, top: 100, right: 140, bottom: 120 }] });
    expect(covered(0, 0, 25, 50)).toBe(0);
    expect(covered(0, 0, 26, 50)).toBe(Infinity);
    expect(covered(0, 0, 100, 25)).toBe(0);
  });
});
