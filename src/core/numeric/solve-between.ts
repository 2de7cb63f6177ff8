/** The root of one equation between two places where it has opposite signs. */

export interface RootBetween {
  /** `noSignChange`: the values at both ends have one sign, so nothing tells of a root between them. */
  readonly status: 'solved' | 'noSignChange' | 'notConverged' | 'noValue';
  readonly x: number;
  /** The value left at x. */
  readonly residual: number;
  readonly rounds: number;
}

const MOST_ROUNDS = 100;

/**
 * The place between `low` and `high` at which `value` is zero: found when it is held between two places, or two
 * rounds in turn gave places, no further than `tolerance` apart. Regula falsi with the Illinois change, which
 * keeps one end from staying for ever. No answer when the ends have one sign or a value is no number.
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
  let before = NaN;
  let kept: 'a' | 'b' | null = null;
  for (let rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
    let x = (a * fb - b * fa) / (fb - fa);
    if (!(x > Math.min(a, b) && x < Math.max(a, b))) x = (a + b) / 2;
    const f = value(x);
    if (!Number.isFinite(f)) return { status: 'noValue', x, residual: 0, rounds };
    if (f === 0 || Math.abs(x - before) <= tolerance || Math.abs(b - a) <= tolerance)
      return { status: 'solved', x, residual: f, rounds };
    before = x;
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
  }
  return { status: 'notConverged', x: before, residual: value(before), rounds: MOST_ROUNDS };
}
