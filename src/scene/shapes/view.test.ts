/** Tests of the view between ground and screen. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import {
  fitView,
  LEAST_SCALE,
  MOST_SCALE,
  panView,
  toGround,
  toScreen,
  zoomedAbout,
  type View,
} from './view.ts';

const view = fc.record<View>({
  scale: fc.double({ min: LEAST_SCALE, max: MOST_SCALE, noNaN: true }),
  turn: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  xPx: fc.double({ min: -500, max: 2000, noNaN: true }),
  yPx: fc.double({ min: -500, max: 2000, noNaN: true }),
});
const place = fc.record({
  x: fc.double({ min: -3000, max: 3000, noNaN: true }),
  y: fc.double({ min: -3000, max: 3000, noNaN: true }),
});

describe('the view', () => {
  it('brings every place back from the screen', () => {
    fc.assert(
      fc.property(view, place, (seen, p) => {
        const back = toGround(seen, toScreen(seen, p));
        expect(Math.hypot(back.x - p.x, back.y - p.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('keeps what lies under the cursor there while it zooms', () => {
    fc.assert(
      fc.property(view, place, fc.double({ min: 0.2, max: 5, noNaN: true }), (seen, p, factor) => {
        const at = toScreen(seen, p);
        const after = toScreen(zoomedAbout(seen, at, factor), p);
        expect(Math.hypot(after.x - at.x, after.y - at.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('never zooms beyond its limits', () => {
    const seen: View = { scale: 1, turn: 0, xPx: 0, yPx: 0 };
    expect(zoomedAbout(seen, { x: 5, y: 5 }, 1e9).scale).toBe(MOST_SCALE);
    expect(zoomedAbout(seen, { x: 5, y: 5 }, 1e-9).scale).toBe(LEAST_SCALE);
  });

  it('pans by the px given', () => {
    const seen: View = { scale: 0.5, turn: 0.1, xPx: 10, yPx: 20 };
    const before = toScreen(seen, { x: 100, y: 200 });
    const after = toScreen(panView(seen, 7, -3), { x: 100, y: 200 });
    expect(after.x - before.x).toBeCloseTo(7, 9);
    expect(after.y - before.y).toBeCloseTo(-3, 9);
  });

  it('fits an extent whole within the margins', () => {
    const extent = { left: -400, right: 1900, bottom: -200, top: 1200 };
    const seen = fitView(extent, 700, 400, 14);
    const low = toScreen(seen, { x: extent.left, y: extent.bottom });
    const high = toScreen(seen, { x: extent.right, y: extent.top });
    expect(Math.min(low.x, high.y)).toBeGreaterThanOrEqual(14 - 1e-9);
    expect(high.x).toBeLessThanOrEqual(700 - 14 + 1e-9);
    expect(low.y).toBeLessThanOrEqual(400 - 14 + 1e-9);
  });
});
