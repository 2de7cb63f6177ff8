/** Guards loops in tests: a loop over an empty list checks nothing. */

/** The list itself; a test that would loop over fewer than `least` stops here. */
export function filled<T>(list: readonly T[], least = 1): readonly T[] {
  if (list.length < least) throw new Error(`${list.length} to check, at least ${least} expected`);
  return list;
}
