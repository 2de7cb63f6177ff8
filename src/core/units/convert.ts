/** Exact conversions between the core's units and the units of the workshop. */

/** Millimetres in an inch, exact (international inch, 1959). */
export const MM_PER_INCH = 25.4;
/** Kilometres in a mile, exact. */
export const KM_PER_MILE = 1.609344;
/** Kilograms in a pound, exact (international pound, 1959). */
export const KG_PER_POUND = 0.45359237;
/** Newtons in a pound-force, exact: one pound under standard gravity. */
export const NEWTON_PER_POUND_FORCE = 4.4482216152605;
/** N/mm² in a bar, exact. */
export const NEWTON_A_SQUARE_MM_PER_BAR = 0.1;
/** Standard gravity in m/s², exact (3rd CGPM, 1901). */
export const STANDARD_GRAVITY = 9.80665;

export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
