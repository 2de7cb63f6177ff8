/** Tests of the equilibrium of two unknowns between stops. */
import { describe, expect, it } from 'vitest';
import { solveInBox, type BoxProblem, type BoxSolution, type PushesAt } from './solve-in-box.ts';

type Pushes = BoxProblem<PushesAt>['pushesAt'];

const box = (pushesAt: Pushes, more: Partial<BoxProblem<PushesAt>> = {}): BoxProblem<PushesAt> => ({
  pushesAt,
  lowX: 0,
  highX: 10,
  lowY: 0,
  highY: 10,
  startX: 5,
  startY: 5,
  tolerance: 1e-10,
  ...more,
});

/** Two springs joined by a third, pushed by (p, q). */
const joined =
  (p: number, q: number): Pushes =>
  (x, y) => ({
    pushX: p - 3 * x - (x - y),
    pushY: q - 2 * y - (y - x),
    xPerX: -4,
    xPerY: 1,
    yPerX: 1,
    yPerY: -3,
  });

/** Pushes of which neither depends on the other unknown. */
const apart = (pushX: number, xPerX: number, pushY: number, yPerY: number): PushesAt => ({
  pushX,
  pushY,
  xPerX,
  xPerY: 0,
  yPerX: 0,
  yPerY,
});

/** The pushes left at an answer, which stops when there is none. */
function left(found: BoxSolution<PushesAt>): PushesAt {
  if (found.status !== 'solved') throw new Error(found.status);
  return found.at;
}

describe('the equilibrium of two unknowns between stops', () => {
  it('is found inside the box', () => {
    const found = solveInBox(box(joined(10, 7)));
    expect(found.status).toBe('solved');
    expect(found.x).toBeCloseTo(37 / 11, 9);
    expect(found.y).toBeCloseTo(38 / 11, 9);
    expect(Math.abs(left(found).pushX) + Math.abs(left(found).pushY)).toBeLessThan(1e-9);
    expect(found.rounds).toBeLessThan(5);
  });

  it('rests on a low stop with the push that the stop holds', () => {
    const found = solveInBox(box(joined(-20, 9)));
    expect(found).toMatchObject({ status: 'solved', x: 0 });
    expect(found.y).toBeCloseTo(3, 9);
    expect(left(found).pushX).toBeCloseTo(-17, 8);
  });

  it('rests on a high stop, or on both', () => {
    const high = solveInBox(box(joined(100, 1)));
    expect(high).toMatchObject({ status: 'solved', x: 10 });
    expect(high.y).toBeCloseTo(11 / 3, 9);
    const both = solveInBox(box(joined(100, -100)));
    expect(both).toMatchObject({ status: 'solved', x: 10, y: 0, at: { pushX: 60, pushY: -90 } });
  });

  it('is found across a kink and along a stiffening spring', () => {
    const found = solveInBox(
      box(
        (x, y) => ({
          ...apart(
            30 - x - (x > 6 ? 50 * (x - 6) ** 2.5 : 0),
            -1 - (x > 6 ? 125 * (x - 6) ** 1.5 : 0),
            4 - y - 0.1 * x,
            -1,
          ),
          yPerX: -0.1,
        }),
        { startX: 0.1 },
      ),
    );
    expect(found.status).toBe('solved');
    expect(found.x + 50 * (found.x - 6) ** 2.5).toBeCloseTo(30, 7);
    expect(found.y).toBeCloseTo(4 - 0.1 * found.x, 9);
  });

  it('needs no room: an unknown whose stops meet stays there', () => {
    const found = solveInBox(box(joined(10, 7), { lowX: 2, highX: 2 }));
    expect(found).toMatchObject({ status: 'solved', x: 2 });
    expect(found.y).toBeCloseTo(3, 9);
  });

  it('is refused when there is no value or nothing comes to rest', () => {
    expect(solveInBox(box(() => null)).status).toBe('noValue');
    expect(solveInBox(box(() => apart(NaN, -1, 0, -1))).status).toBe('noValue');
    expect(solveInBox(box((x) => apart(7 - x, NaN, 0, -1))).status).toBe('noValue');
    const jumping: Pushes = (x) => apart(x < 5.3 ? 1 : -1, 0, 0, 0);
    expect(solveInBox(box(jumping)).status).toBe('notConverged');
  });

  it('is not the place of zero push when the stiffness there is negative', () => {
    // Zero at 5, where every move is pushed further: the equilibria are the stops.
    const found = solveInBox(box((x, y) => apart(x - 5, 1, 3 - y, -1), { startX: 5.5 }));
    expect(found).toMatchObject({ status: 'solved', x: 10, stable: true });
  });

  it('is marked when the least nudge would end it', () => {
    const found = solveInBox(box((x, y) => apart(x - 5, 1, 3 - y, -1)));
    expect(found).toMatchObject({ status: 'solved', x: 5, stable: false });
  });
});
