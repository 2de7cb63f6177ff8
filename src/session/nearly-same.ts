/** Whether two bikes are the same for every workshop: what a fit finds again differs in its last digits. */

/** Below what anyone can measure, mm, degrees, kg. */
const TOLERANCE = 1e-3;

export function nearlySame(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= TOLERANCE;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const right = new Map<string, unknown>(Object.entries(b));
  const left = Object.entries(a);
  return (
    left.length === right.size &&
    left.every(([key, value]) => right.has(key) && nearlySame(value, right.get(key)))
  );
}
