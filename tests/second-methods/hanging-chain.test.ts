/** The slack lower run against a hanging chain integrated step by step. */
import { describe, expect, it } from 'vitest';
import { lowerRun, runMiddle, type LowerRun } from '../../src/core/drive/lower-run.ts';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { hangingPoints, hangingRun, type HangingRun } from '../../src/core/drive/hanging-run.ts';
import { chainBySteps } from '../support/chain-by-steps.ts';

const PLACES = [
  { name: 'a road bike', teeth: [15, 45], front: { x: 650, y: 115 } },
  { name: 'a long-travel bike hanging', teeth: [13, 50], front: { x: 600, y: 260 } },
  { name: 'a level run', teeth: [20, 20], front: { x: 500, y: 0 } },
  { name: 'a countershaft below the axle', teeth: [17, 42], front: { x: 560, y: -80 } },
] as const;

function hung(
  teeth: readonly [number, number],
  front: { x: number; y: number },
  spare: number,
): [LowerRun, HangingRun] {
  const run = lowerRun(chainLoop(...teeth, 15.875), { x: 0, y: 0 }, front);
  if (run === null) throw new Error('The sprockets overlap');
  const found = hangingRun(run, spare);
  if (!found.ok) throw new Error(found.reason);
  return [run, found];
}

describe('the hanging lower run', () => {
  it.each(PLACES)('of $name drops as a chain integrated step by step does', ({ teeth, front }) => {
    for (const spare of [0.2, 1, 3, 10, 40]) {
      const [run, hanging] = hung(teeth, front, spare);
      const places = chainBySteps({ rear: run.rear, front: run.front, ...run.loop }, spare);
      const middle = runMiddle(run);
      const [cos, sin] = [Math.cos(run.angle), Math.sin(run.angle)];
      const along = places.map((p) => (p.x - middle.x) * cos + (p.y - middle.y) * sin);
      const below = places.map((p) => (p.x - middle.x) * sin - (p.y - middle.y) * cos);
      const i = along.findIndex((a) => a > 0);
      // Through the three nearest places, whose drop between changes by the square only.
      const at = (k: number): number =>
        [i - 1, i, i + 1].reduce(
          (part, m) => (m === k ? part : (part * (0 - along[m])) / (along[k] - along[m])),
          below[k],
        );
      expect(Math.abs(at(i - 1) + at(i) + at(i + 1) - hanging.drop)).toBeLessThan(1e-4);
      expect(Math.abs(hanging.residual)).toBeLessThan(1e-9);
    }
  });

  it.each(PLACES)('of $name is drawn where the chain integrated step by step lies', ({ teeth, front }) => {
    const [run, hanging] = hung(teeth, front, 8);
    const places = chainBySteps({ rear: run.rear, front: run.front, ...run.loop }, 8);
    const drawn = hangingPoints(hanging, places.length);
    places.forEach((p, k) => expect(Math.hypot(p.x - drawn[k].x, p.y - drawn[k].y)).toBeLessThan(1e-5));
  });

  it('is about a parabola’s √(3/8·length·spare) while it is nearly taut', () => {
    for (const { teeth, front } of PLACES) {
      const [run, hanging] = hung(teeth, front, 0.5);
      expect(hanging.drop / Math.sqrt((3 / 8) * run.length * 0.5)).toBeCloseTo(1, 1);
    }
  });
});
