/** The root of one equation whose slope is known, between two places where it has opposite signs. */

export interface ValueAndSlope {
  readonly value: number;
  readonly slope: number;
}

export interface NewtonRoot {
  /** `noSignChange`: the values at both ends have the same sign, so there may be no root between them. */
  readonly status: 'solved' | 'noSignChange' | 'notConverged' | 'noValue';
  readonly x: number;
  /** The value left at x. */
  readonly residual: number;
  readonly rounds: number;
}

/** Halving alone takes about 60 rounds from one radian to the rounding of the numbers. */
const MOST_ROUNDS = 200;

/**
 * The place between `low` and `high` at which the value is zero, found when the value is no more than `tolerance` or
 * no number lies between the two places around it. Newton's step where it stays between them and at least halves the
 * step before last; halving otherwise. No answer when the ends have the same sign or a value is not a number.
 */
export function newtonBetween(
  at: (x: number) => ValueAndSlope | null,
  low: number,
  high: number,
  tolerance: number,
): NewtonRoot {
  const endWith = (
    status: NewtonRoot['status'],
    x: number,
    residual: number,
    rounds: number,
  ): NewtonRoot => ({
    status,
    x,
    residual,
    rounds,
  });
  const first = at(low);
  const last = at(high);
  if (first === null || last === null || !Number.isFinite(first.value + last.value))
    return endWith('noValue', low, 0, 0);
  if (Math.abs(first.value) <= tolerance) return endWith('solved', low, first.value, 0);
  if (Math.abs(last.value) <= tolerance) return endWith('solved', high, last.value, 0);
  if (first.value > 0 === last.value > 0) return endWith('noSignChange', low, first.value, 0);
  // `below` is where the value is under zero, on whichever side that lies.
  let below = first.value < 0 ? low : high;
  let above = first.value < 0 ? high : low;
  let x = low + (high - low) / 2;
  let step = Math.abs(high - low);
  let stepBefore = step;
  for (let rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
    const now = at(x);
    if (now === null || !Number.isFinite(now.value)) return endWith('noValue', x, 0, rounds);
    if (Math.abs(now.value) <= tolerance) return endWith('solved', x, now.value, rounds);
    if (now.value < 0) below = x;
    else above = x;
    const newton = x - now.value / now.slope;
    // The step is below the rounding of x: no number is nearer.
    if (newton === x && Number.isFinite(now.slope)) return endWith('solved', x, now.value, rounds);
    const inside = newton > Math.min(below, above) && newton < Math.max(below, above);
    const next = inside && Math.abs(newton - x) <= stepBefore / 2 ? newton : below + (above - below) / 2;
    if (next === below || next === above) return endWith('solved', x, now.value, rounds);
    stepBefore = step;
    step = Math.abs(next - x);
    x = next;
  }
  return endWith('notConverged', x, at(x)?.value ?? 0, MOST_ROUNDS);
}
