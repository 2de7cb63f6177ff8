/** Rounding the parts of a change as they are written, so that they add up to the change as it is written. */

/**
 * Parts, counted in written steps with their fractions, as whole steps that add up to `total`: each is cut to whole
 * steps, and what is left goes to those that lost most (the largest remainder). So each part is less than one step, and
 * with a total that is itself rounded at both ends hardly more, from what it is.
 */
export function sharedSteps(parts: readonly number[], total: number): number[] {
  if (parts.length === 0) return [];
  const whole = parts.map(Math.floor);
  const byLoss = parts
    .map((part, i) => ({ i, lost: part - whole[i] }))
    .filter(({ i }) => parts[i] !== 0)
    .sort((a, b) => b.lost - a.lost);
  const order = byLoss.length === 0 ? parts.map((_, i) => ({ i })) : byLoss;
  let missing = Math.round(total - whole.reduce((sum, steps) => sum + steps, 0));
  for (let turn = 0; missing !== 0; turn++) {
    const { i } = missing > 0 ? order[turn % order.length] : order[order.length - 1 - (turn % order.length)];
    const step = Math.sign(missing);
    whole[i] += step;
    missing -= step;
  }
  return whole;
}
