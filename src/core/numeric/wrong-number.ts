/** Finds a number in a part that nothing can be computed from. */

/** Beyond this no number belongs to a motorcycle, in mm, kg or radians, and far beyond it sums overflow. */
const LARGEST = 1e6;

export type Wrong = 'inputNotANumber' | 'inputTooLarge';

/** Why some number in the part, or in a part of it, cannot be computed with; null when all can. */
export function wrongNumber(part: object): Wrong | null {
  // A sweep makes hundreds of machines; lists of keys and values would cost more than all the rest.
  if (Array.isArray(part)) {
    for (const value of part as readonly unknown[]) {
      const wrong = wrongValue(value);
      if (wrong !== null) return wrong;
    }
    return null;
  }
  for (const key in part) {
    const wrong = wrongValue((part as Readonly<Record<string, unknown>>)[key]);
    if (wrong !== null) return wrong;
  }
  return null;
}

function wrongValue(value: unknown): Wrong | null {
  if (typeof value === 'number') {
    if (Math.abs(value) <= LARGEST) return null;
    return Number.isFinite(value) ? 'inputTooLarge' : 'inputNotANumber';
  }
  return typeof value === 'object' && value !== null ? wrongNumber(value) : null;
}
