/** How often chance alone makes a sum of squares at least as large. */

/** Terms of the series and the fraction beyond which nothing changes any more. */
const MOST_TERMS = 1000;
const ENOUGH = 1e-15;

/**
 * Probability that a sum of `count` squared standard normal numbers is `sum` or more; 1 without any. Source: the
 * incomplete gamma function by its series and its continued fraction (Abramowitz and Stegun 6.5.29 and 6.5.31, from
 * memory). Example: sum 3.841459, count 1 → 0.05.
 */
export function chanceOfSquares(sum: number, count: number): number {
  if (!(count > 0) || !(sum > 0)) return 1;
  const a = count / 2;
  const x = sum / 2;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  return x < a + 1 ? 1 - front * lowerSeries(a, x) : front * upperFraction(a, x);
}

function lowerSeries(a: number, x: number): number {
  let term = 1 / a;
  let total = term;
  for (let k = 1; k < MOST_TERMS && term > total * ENOUGH; k++) {
    term *= x / (a + k);
    total += term;
  }
  return total;
}

function upperFraction(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let value = d;
  for (let k = 1; k < MOST_TERMS; k++) {
    const over = -k * (k - a);
    b += 2;
    d = over * d + b;
    if (Math.abs(d) < tiny) d = tiny;
    c = b + over / c;
    if (Math.abs(c) < tiny) c = tiny;
    d = 1 / d;
    const factor = d * c;
    value *= factor;
    if (Math.abs(factor - 1) < ENOUGH) break;
  }
  return value;
}

/** Logarithm of the gamma function of a positive number: Stirling's series beyond 10, brought there step by step. */
function logGamma(at: number): number {
  let z = at;
  let product = 1;
  while (z < 10) {
    product *= z;
    z++;
  }
  const inverse = 1 / (z * z);
  const series =
    (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse / 1188)))) / z;
  return (z - 0.5) * Math.log(z) - z + Math.log(2 * Math.PI) / 2 + series - Math.log(product);
}
