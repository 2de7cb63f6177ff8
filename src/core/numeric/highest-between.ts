/** The highest value of a function between two places: looked for on a grid, then narrowed. */

export interface Highest {
  /** `noValue`: the function had no number at some place looked at. */
  readonly status: 'found' | 'noValue';
  readonly x: number;
  readonly value: number;
  /** Width of the interval in which the place still lies. */
  readonly within: number;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Relative width at which a smooth top is as flat as rounding. */
const NARROWEST = 1e-9;

/**
 * The highest place between `low` and `high`: the best of `count` even places, then the golden section between its
 * neighbours. Ends count. Finds the top when the function rises and falls only once between three grid places.
 */
export function highestBetween(
  value: (x: number) => number,
  low: number,
  high: number,
  count: number,
): Highest {
  const step = (high - low) / (count - 1);
  let best = { x: low, value: value(low) };
  let valid = Number.isFinite(best.value);
  for (let i = 1; i < count; i++) {
    const x = i === count - 1 ? high : low + i * step;
    const found = value(x);
    valid &&= Number.isFinite(found);
    if (found > best.value) best = { x, value: found };
  }
  if (!valid) return { status: 'noValue', x: low, value: 0, within: high - low };
  let a = Math.max(low, best.x - step);
  let b = Math.min(high, best.x + step);
  let c = b - GOLDEN * (b - a);
  let d = a + GOLDEN * (b - a);
  let [fc, fd] = [value(c), value(d)];
  while (b - a > NARROWEST * (high - low)) {
    if (fc > fd) {
      [b, d, fd] = [d, c, fc];
      c = b - GOLDEN * (b - a);
      fc = value(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + GOLDEN * (b - a);
      fd = value(d);
    }
    if (!Number.isFinite(fc + fd)) return { status: 'noValue', x: best.x, value: best.value, within: b - a };
    if (Math.max(fc, fd) > best.value) best = fc > fd ? { x: c, value: fc } : { x: d, value: fd };
  }
  return { status: 'found', x: best.x, value: best.value, within: b - a };
}
