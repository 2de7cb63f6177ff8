/** Two balances in two unknowns that may each come to rest on a stop: damped Newton on the complementarity problem. */

/**
 * The pushes on two unknowns at (x, y), written into `into`; positive pushes its unknown upward. Returns false
 * where there is no value, for example where the parts cannot meet.
 */
export type Pushes = (x: number, y: number, into: Float64Array) => boolean;

export interface BoxProblem {
  readonly pushes: Pushes;
  readonly lowX: number;
  readonly highX: number;
  readonly lowY: number;
  readonly highY: number;
  readonly startX: number;
  readonly startY: number;
  /** How far, in the unknowns' unit, the answer may be from balance. */
  readonly tolerance: number;
}

export interface BoxSolution {
  /**
   * `solved`; `notConverged` when the rounds ran out or no step came nearer; `noValue` when the pushes have no
   * value at the start or on a number's way.
   */
  readonly status: 'solved' | 'notConverged' | 'noValue';
  readonly x: number;
  readonly y: number;
  /** The pushes left over; at a stop this is what the stop holds, elsewhere it is near zero. */
  readonly pushX: number;
  readonly pushY: number;
  /** How far from balance the answer is, in the unknowns' unit: no further than this to the root, to first order. */
  readonly miss: number;
  /** False when the unknowns that rest on no stop would leave this balance at the least nudge. */
  readonly stable: boolean;
  readonly rounds: number;
}

const MOST_ROUNDS = 40;
/** Steps shorter than this part of Newton's are not tried. */
const SHORTEST_STEP = 1 / 1024;
/** Step of the differences as a part of the box: truncation and rounding both stay below 1e-6 of the derivative. */
const DIFFERENCE = 1e-6;
/** How far an unknown is moved along its push, as a part of the box, where stiffness pushes away from balance. */
const WAY_OUT = 0.2;

function clamp(value: number, low: number, high: number): number {
  return value < low ? low : value > high ? high : value;
}

/** Distance to where a push would move an unknown of this stiffness, the stops considered. */
function gap(at: number, push: number, give: number, low: number, high: number): number {
  return Math.abs(clamp(at + push * give, low, high) - at);
}

/**
 * Finds (x, y) in a box at which each unknown is in balance: its push is zero, or it rests on the low stop and is
 * pushed down, or on the high stop and is pushed up. Semismooth Newton: unknowns that a step of their own would
 * carry beyond a stop are set on it, the others take Newton's step with differenced derivatives, halved until the
 * miss shrinks; where the stiffness pushes away from balance it follows the push instead. Where several balances
 * exist it gives the one it reaches from the start.
 */
export function solveInBox(problem: BoxProblem): BoxSolution {
  const { pushes, lowX, highX, lowY, highY, tolerance } = problem;
  const now = new Float64Array(2);
  const probe = new Float64Array(2);
  const tried = new Float64Array(2);
  let x = clamp(problem.startX, lowX, highX);
  let y = clamp(problem.startY, lowY, highY);
  let miss = Infinity;
  let rounds = 0;
  let stable = true;
  const ended = (status: BoxSolution['status']): BoxSolution => ({
    status,
    x,
    y,
    pushX: now[0],
    pushY: now[1],
    miss,
    stable,
    rounds,
  });
  if (!pushes(x, y, now) || !Number.isFinite(now[0] + now[1])) return ended('noValue');
  const stepX = (highX - lowX) * DIFFERENCE;
  const stepY = (highY - lowY) * DIFFERENCE;
  while (rounds++ < MOST_ROUNDS) {
    let xx = -1;
    let yx = 0;
    if (stepX > 0) {
      const h = x + stepX <= highX ? stepX : -stepX;
      if (!pushes(x + h, y, probe)) return ended('noValue');
      xx = (probe[0] - now[0]) / h;
      yx = (probe[1] - now[1]) / h;
    }
    let xy = 0;
    let yy = -1;
    if (stepY > 0) {
      const h = y + stepY <= highY ? stepY : -stepY;
      if (!pushes(x, y + h, probe)) return ended('noValue');
      xy = (probe[0] - now[0]) / h;
      yy = (probe[1] - now[1]) / h;
    }
    const giveX = xx === 0 ? 1 : 1 / Math.abs(xx);
    const giveY = yy === 0 ? 1 : 1 / Math.abs(yy);
    miss = Math.max(gap(x, now[0], giveX, lowX, highX), gap(y, now[1], giveY, lowY, highY));
    if (!Number.isFinite(miss)) return ended('noValue');

    const aimX = x + now[0] * giveX;
    const aimY = y + now[1] * giveY;
    const stopX = aimX <= lowX ? lowX : aimX >= highX ? highX : null;
    const stopY = aimY <= lowY ? lowY : aimY >= highY ? highY : null;
    const determinant = xx * yy - xy * yx;
    const awayX = stopX === null && xx >= 0;
    const awayY = stopY === null && yy >= 0;
    stable = !awayX && !awayY && (stopX !== null || stopY !== null || determinant > 0);
    if (miss <= tolerance) {
      // Within the tolerance of a stop that holds it, an unknown rests on the stop itself.
      x = stopX ?? x;
      y = stopY ?? y;
      return ended(pushes(x, y, now) ? 'solved' : 'noValue');
    }

    let dx = stopX !== null ? stopX - x : 0;
    let dy = stopY !== null ? stopY - y : 0;
    if (stable && stopX === null && stopY === null) {
      dx = (xy * now[1] - yy * now[0]) / determinant;
      dy = (yx * now[0] - xx * now[1]) / determinant;
    } else if (stable) {
      if (stopX === null) dx = -(now[0] + xy * dy) / xx;
      if (stopY === null) dy = -(now[1] + yx * dx) / yy;
    } else {
      if (stopX === null) dx = awayX ? Math.sign(now[0]) * WAY_OUT * (highX - lowX) : now[0] * giveX;
      if (stopY === null) dy = awayY ? Math.sign(now[1]) * WAY_OUT * (highY - lowY) : now[1] * giveY;
    }

    let nearer = false;
    for (let part = 1; part >= SHORTEST_STEP; part /= 2) {
      const toX = clamp(x + part * dx, lowX, highX);
      const toY = clamp(y + part * dy, lowY, highY);
      if (!pushes(toX, toY, tried)) continue;
      const left = Math.max(gap(toX, tried[0], giveX, lowX, highX), gap(toY, tried[1], giveY, lowY, highY));
      if (!Number.isFinite(left) || (stable && !(left < miss))) continue;
      x = toX;
      y = toY;
      now[0] = tried[0];
      now[1] = tried[1];
      miss = left;
      nearer = true;
      break;
    }
    if (!nearer) return ended('notConverged');
  }
  return ended('notConverged');
}
