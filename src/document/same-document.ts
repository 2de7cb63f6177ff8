/** Whether two documents, or two parts of them, say the same. */

/** True when both hold the same values in the same places; the order of fields does not matter. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (a === 0 && b === 0) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  const left = new Map(Object.entries(a));
  const right = new Map(Object.entries(b));
  return keys.every((key) => right.has(key) && sameValue(left.get(key), right.get(key)));
}
