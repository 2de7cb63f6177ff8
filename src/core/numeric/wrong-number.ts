/** Whether the numbers of a part can be reckoned with at all. */

/** Beyond this no number belongs to a motorcycle, in mm, kg or radians, and far beyond it sums overflow. */
const LARGEST = 1e6;

/** Why some number in the part, or in a part of it, cannot be reckoned with; null when all can. */
export function wrongNumber(part: object): 'inputNotANumber' | 'inputTooLarge' | null {
  // A sweep makes hundreds of machines, and a list of the values of each part would be much of what that costs.
  for (const key in part) {
    const value = (part as Readonly<Record<string, unknown>>)[key];
    if (typeof value === 'number') {
      if (!Number.isFinite(value)) return 'inputNotANumber';
      if (Math.abs(value) > LARGEST) return 'inputTooLarge';
    } else if (typeof value === 'object' && value !== null) {
      const wrong = wrongNumber(value);
      if (wrong !== null) return wrong;
    }
  }
  return null;
}
