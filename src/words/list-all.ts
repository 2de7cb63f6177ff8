/** Several names in one sentence. */

const ALL = new Intl.ListFormat('en-GB', { type: 'conjunction' });
const ANY = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** "a", "a and b", "a, b and c". */
export function listAll(items: readonly string[]): string {
  return ALL.format(items);
}

/** "a", "a or b", "a, b or c". */
export function listAny(items: readonly string[]): string {
  return ANY.format(items);
}
