/** The root of one equation between two places where it has opposite signs. */

export interface RootBetween {
  /** `noSignChange`: the values at both ends have the same sign, so there may be no root between them. */
  readonly status: 'solved' | 'noSignChange' | 'notConverged' | 'noValue';
  readonly x: number;
  /** The value left at x. */
  readonly residual: number;
  readonly rounds: number;
}

const MOST_ROUNDS = 200;
/** Rounds after which the interval around the root must have halved. */
const CHECK_EVERY = 3;

/**
 * The place between `low` and `high` at which `value` is zero: the sign changes within `tolerance` of it. Regula
 * falsi with the Illinois change, so that neither end gets stuck; the interval is halved when three rounds have not
 * halved it. Where the value jumps past zero it gives the place of the jump, and the residual shows that. No answer
 * when the ends have the same sign or a value is not a number.
 */
export function solveBetween(
  value: (x: number) => number,
  low: number,
  high: number,
  tolerance: number,
): RootBetween {
  let a = low;
  let b = high;
  let fa = value(a);
  let fb = value(b);
  if (!Number.isFinite(fa + fb)) return { status: 'noValue', x: a, residual: 0, rounds: 0 };
  if (fa === 0) return { status: 'solved', x: a, residual: 0, rounds: 0 };
  if (fb === 0) return { status: 'solved', x: b, residual: 0, rounds: 0 };
  if (fa > 0 === fb > 0) {
    const nearer = Math.abs(fa) < Math.abs(fb);
    return { status: 'noSignChange', x: nearer ? a : b, residual: nearer ? fa : fb, rounds: 0 };
  }
  const signAtLow = fa > 0;
  let kept: 'a' | 'b' | null = null;
  let checked = Math.abs(b - a);
  let x = a;
  let f = fa;
  for (let rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
    let halve = false;
    if (rounds % CHECK_EVERY === 0) {
      halve = Math.abs(b - a) > checked / 2;
      checked = Math.abs(b - a);
    }
    // A step onto the root leaves the far end where it is, so each step goes a little past where it aims.
    const aim = (a * fb - b * fa) / (fb - fa);
    const past = aim + Math.sign((a + b) / 2 - aim) * tolerance * 0.4;
    x = halve || !(past > Math.min(a, b) && past < Math.max(a, b)) ? (a + b) / 2 : past;
    f = value(x);
    if (!Number.isFinite(f)) return { status: 'noValue', x, residual: 0, rounds };
    if (f === 0) return { status: 'solved', x, residual: 0, rounds };
    if (f > 0 === signAtLow) {
      a = x;
      fa = f;
      if (kept === 'b') fb /= 2;
      kept = 'b';
    } else {
      b = x;
      fb = f;
      if (kept === 'a') fa /= 2;
      kept = 'a';
    }
    if (Math.abs(b - a) <= tolerance) return { status: 'solved', x, residual: f, rounds };
  }
  return { status: 'notConverged', x, residual: f, rounds: MOST_ROUNDS };
}
