/** Splitting the change of a result among the inputs that changed, so that the parts add up exactly. */

/**
 * Shares out f(after) − f(before) among the inputs: each input's part is the mean, over every order in which
 * the inputs could have been changed one by one, of the change it made (the Shapley value, L. Shapley 1953).
 * The parts sum to the whole change to rounding, and an input that did not change gets exactly zero.
 * Inputs and result are in the caller's units. For up to about six inputs (2^n evaluations).
 */
export function fairSplit(
  f: (inputs: readonly number[]) => number,
  before: readonly number[],
  after: readonly number[],
): number[] {
  const changed = before.map((_, i) => i).filter((i) => before[i] !== after[i]);
  const n = changed.length;
  const value: number[] = [];
  for (let set = 0; set < 1 << n; set++) {
    const inputs = [...before];
    changed.forEach((input, bit) => {
      if (set & (1 << bit)) inputs[input] = after[input];
    });
    value.push(f(inputs));
  }
  const weight = (size: number) => (factorial(size) * factorial(n - size - 1)) / factorial(n);
  const parts = before.map(() => 0);
  changed.forEach((input, bit) => {
    for (let set = 0; set < 1 << n; set++) {
      if (set & (1 << bit)) continue;
      parts[input] += weight(bitCount(set)) * (value[set | (1 << bit)] - value[set]);
    }
  });
  return parts;
}

function factorial(n: number): number {
  return n <= 1 ? 1 : n * factorial(n - 1);
}

function bitCount(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest >>= 1) count += rest & 1;
  return count;
}
