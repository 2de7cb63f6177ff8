/** The error function, for integrals of the bell curve. */

/** Beyond this it is 1 to the last digit. */
const FAR = 6;

/**
 * erf(x) = 2/√π · ∫ exp(−t²) dt from 0 to x, to about 1e-15. Source: the series exp(−x²)·Σ 2ⁿ x²ⁿ⁺¹/(1·3·…·(2n+1)),
 * whose terms all have one sign (Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.6; from memory).
 */
export function errorFunction(x: number): number {
  if (Math.abs(x) >= FAR) return Math.sign(x);
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > Math.abs(sum) * Number.EPSILON; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}
