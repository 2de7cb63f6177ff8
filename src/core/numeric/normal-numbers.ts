/** Normal numbers that come in the same order from the same seed. */

/** Even numbers from 0 to below 1 from a seed. Source: mulberry32, public domain, from memory. */
function evenNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Numbers with mean 0 and standard deviation 1, without units. Source: Box and Muller 1958, from memory. */
export function normalNumbers(seed: number): () => number {
  const next = evenNumbers(seed);
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}
