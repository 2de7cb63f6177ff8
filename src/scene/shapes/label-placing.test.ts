/** Tests of keeping labels apart. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../../tests/support/cases.ts';
import { labelBox, placeLabels, type Box, type WantedLabel } from './label-placing.ts';
import { toScreen, type View } from './view.ts';

const seen: View = { scale: 0.3, turn: 0, xPx: 100, yPx: 400 };
const WIDTH = 700;
const HEIGHT = 440;

const wanted = fc.array(
  fc.record<WantedLabel>({
    role: fc.constantFrom('trailLine', 'squatLine', 'steeringAxis'),
    text: fc.string({ minLength: 3, maxLength: 30 }),
    at: fc.record({ x: fc.integer({ min: -200, max: 1900 }), y: fc.integer({ min: -100, max: 1200 }) }),
    spot: fc.constantFrom('left', 'right', 'above', 'below', 'centre'),
    sizePx: fc.constantFrom(11, 13, 17),
  }),
  { maxLength: 12 },
);

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

describe('labels on the side view', () => {
  it('S8: never lie over one another, over what is taken, or past the window’s edge', () => {
    const taken: Box[] = [{ left: 300, top: 200, right: 340, bottom: 240 }];
    fc.assert(
      fc.property(wanted, (labels) => {
        const boxes = placeLabels(labels, seen, WIDTH, HEIGHT, taken).map((label) =>
          labelBox(label.text, label.sizePx, label.spot, toScreen(seen, label.at), label.shiftPx),
        );
        for (const [i, box] of boxes.entries()) {
          expect(box.left >= 0 && box.top >= 0 && box.right <= WIDTH && box.bottom <= HEIGHT).toBe(true);
          for (const other of [...boxes.slice(i + 1), ...taken]) expect(overlap(box, other)).toBe(false);
        }
      }),
    );
  });

  const label: WantedLabel = {
    role: 'trailLine',
    text: 'Trail',
    at: { x: 500, y: 500 },
    spot: 'right',
    sizePx: 13,
  };

  it('stay where they were wanted when nothing is in the way', () => {
    expect(placeLabels([label], seen, WIDTH, HEIGHT)).toMatchObject([
      { shiftPx: { x: 0, y: 0 }, leader: false },
    ]);
  });

  it('give way to the more important ones', () => {
    const [first, second] = placeLabels([label, { ...label, text: 'Other' }], seen, WIDTH, HEIGHT);
    expect(first.shiftPx).toEqual({ x: 0, y: 0 });
    expect(second.shiftPx).not.toEqual({ x: 0, y: 0 });
  });

  it('of areas move along them, and are left out where no spot is free there', () => {
    const name: WantedLabel = { ...label, along: 0.5 };
    const [, moved] = placeLabels([label, name], seen, WIDTH, HEIGHT);
    expect(moved.shiftPx.x).not.toBe(0);
    expect(moved.shiftPx.y).toBeCloseTo(-0.5 * moved.shiftPx.x, 9);
    expect(moved.leader).toBe(false);
    expect(
      placeLabels([label, name], seen, WIDTH, HEIGHT, [{ left: 0, top: 0, right: WIDTH, bottom: HEIGHT }]),
    ).toEqual([]);
  });

  it('keep off what is avoided while there is room near, and lie over it otherwise', () => {
    const { x, y } = toScreen(seen, label.at);
    const avoid = (half: number): Box => ({
      left: x - half,
      top: y - half,
      right: x + half,
      bottom: y + half,
    });
    const boxOver = (half: number) => {
      const [placed] = placeLabels([label], seen, WIDTH, HEIGHT, [], [avoid(half)]);
      return labelBox(placed.text, placed.sizePx, placed.spot, { x, y }, placed.shiftPx);
    };
    expect(overlap(boxOver(40), avoid(40))).toBe(false);
    expect(overlap(boxOver(400), avoid(400))).toBe(true);
  });

  it('of places outside the window are left out', () => {
    expect(placeLabels([{ ...label, at: { x: 9000, y: 0 } }], seen, WIDTH, HEIGHT)).toEqual([]);
  });
});
