/** The equilibrium of two unknowns, each of which may rest on a stop: damped Newton on the complementarity problem. */

/** The pushes on two unknowns at one place, and their exact derivatives; a positive push moves its unknown upward. */
export interface PushesAt {
  readonly pushX: number;
  readonly pushY: number;
  /** Change of the push on x per unit of x, and so on. */
  readonly xPerX: number;
  readonly xPerY: number;
  readonly yPerX: number;
  readonly yPerY: number;
}

export interface BoxProblem<At extends PushesAt> {
  /** The pushes at (x, y); null where there is no value, for example where the parts cannot meet. */
  readonly pushesAt: (x: number, y: number) => At | null;
  readonly lowX: number;
  readonly highX: number;
  readonly lowY: number;
  readonly highY: number;
  readonly startX: number;
  readonly startY: number;
  /** How far, in the unknowns' unit, the answer may be from equilibrium. */
  readonly tolerance: number;
}

/** Where the search ended. */
interface BoxEnd {
  readonly x: number;
  readonly y: number;
  /**
   * How far from equilibrium the answer is, in the unknowns' unit: no further than this to the root, to first order.
   */
  readonly miss: number;
  /** False when the unknowns that rest on no stop would leave this equilibrium at the least nudge. */
  readonly stable: boolean;
  readonly rounds: number;
}

export interface BoxRoot<At extends PushesAt> extends BoxEnd {
  readonly status: 'solved';
  /** What `pushesAt` gave there. At a stop its push is what the stop holds, elsewhere it is near zero. */
  readonly at: At;
}

export interface BoxFailure extends BoxEnd {
  /**
   * `notConverged` when the rounds ran out or no step came nearer; `noValue` when the pushes have no value at the
   * start, or are not numbers later.
   */
  readonly status: 'notConverged' | 'noValue';
}

export type BoxSolution<At extends PushesAt> = BoxRoot<At> | BoxFailure;

const MOST_ROUNDS = 40;
/** Steps shorter than this part of Newton's are not tried. */
const SHORTEST_STEP = 1 / 1024;
/** How far an unknown is moved along its push, as a part of the box, where the stiffness is negative. */
const WAY_OUT = 0.2;

function clamp(value: number, low: number, high: number): number {
  return value < low ? low : value > high ? high : value;
}

/** Distance to where a push would move an unknown of this stiffness, the stops considered. */
function gap(at: number, push: number, give: number, low: number, high: number): number {
  return Math.abs(clamp(at + push * give, low, high) - at);
}

/**
 * Finds (x, y) in a box at which each unknown is in equilibrium: its push is zero, or it rests on the low stop and is
 * pushed down, or on the high stop and is pushed up. Semismooth Newton: an unknown that its own step would carry
 * beyond a stop is set on it, the others take Newton's step, halved until the miss shrinks; where the stiffness is
 * negative it follows the push instead. Of several equilibria it gives the one it reaches from the start.
 */
export function solveInBox<At extends PushesAt>(problem: BoxProblem<At>): BoxSolution<At> {
  const { pushesAt, lowX, highX, lowY, highY, tolerance } = problem;
  let x = clamp(problem.startX, lowX, highX);
  let y = clamp(problem.startY, lowY, highY);
  let miss = Infinity;
  let rounds = 0;
  let stable = true;
  const endWith = (status: BoxFailure['status']): BoxFailure => ({ status, x, y, miss, stable, rounds });
  let now = pushesAt(x, y);
  while (rounds++ < MOST_ROUNDS) {
    if (now === null) return endWith('noValue');
    const { pushX, pushY } = now;
    // An unknown without room is held by its stops, whatever pushes it.
    const xx = highX > lowX ? now.xPerX : -1;
    const yx = highX > lowX ? now.yPerX : 0;
    const xy = highY > lowY ? now.xPerY : 0;
    const yy = highY > lowY ? now.yPerY : -1;
    const giveX = xx === 0 ? 1 : 1 / Math.abs(xx);
    const giveY = yy === 0 ? 1 : 1 / Math.abs(yy);
    miss = Math.max(gap(x, pushX, giveX, lowX, highX), gap(y, pushY, giveY, lowY, highY));
    if (!Number.isFinite(miss + xx + xy + yx + yy)) return endWith('noValue');

    const aimX = x + pushX * giveX;
    const aimY = y + pushY * giveY;
    const stopX = aimX <= lowX ? lowX : aimX >= highX ? highX : null;
    const stopY = aimY <= lowY ? lowY : aimY >= highY ? highY : null;
    const determinant = xx * yy - xy * yx;
    const awayX = stopX === null && xx >= 0;
    const awayY = stopY === null && yy >= 0;
    stable = !awayX && !awayY && (stopX !== null || stopY !== null || determinant > 0);
    if (miss <= tolerance) {
      // Within the tolerance of a stop that holds it, an unknown rests on the stop itself.
      const restX = stopX ?? x;
      const restY = stopY ?? y;
      const at = restX === x && restY === y ? now : pushesAt(restX, restY);
      x = restX;
      y = restY;
      return at === null ? endWith('noValue') : { status: 'solved', at, x, y, miss, stable, rounds };
    }

    let dx = stopX !== null ? stopX - x : 0;
    let dy = stopY !== null ? stopY - y : 0;
    if (stable && stopX === null && stopY === null) {
      dx = (xy * pushY - yy * pushX) / determinant;
      dy = (yx * pushX - xx * pushY) / determinant;
    } else if (stable) {
      if (stopX === null) dx = -(pushX + xy * dy) / xx;
      if (stopY === null) dy = -(pushY + yx * dx) / yy;
    } else {
      if (stopX === null) dx = awayX ? Math.sign(pushX) * WAY_OUT * (highX - lowX) : pushX * giveX;
      if (stopY === null) dy = awayY ? Math.sign(pushY) * WAY_OUT * (highY - lowY) : pushY * giveY;
    }

    let nearer: At | null = null;
    for (let part = 1; nearer === null && part >= SHORTEST_STEP; part /= 2) {
      const toX = clamp(x + part * dx, lowX, highX);
      const toY = clamp(y + part * dy, lowY, highY);
      const tried = pushesAt(toX, toY);
      if (tried === null) continue;
      const left = Math.max(
        gap(toX, tried.pushX, giveX, lowX, highX),
        gap(toY, tried.pushY, giveY, lowY, highY),
      );
      if (!Number.isFinite(left) || (stable && !(left < miss))) continue;
      x = toX;
      y = toY;
      miss = left;
      nearer = tried;
    }
    if (nearer === null) return endWith('notConverged');
    now = nearer;
  }
  return endWith('notConverged');
}
