/** Bounds that fields share: what belongs to no machine on two wheels, and how names are kept. */

/** A length beyond this belongs to no machine on two wheels, mm; what geometry allows the core decides. */
export const LARGEST_LENGTH = 100_000;
/** A mass beyond this belongs to no machine on two wheels, kg. */
const LARGEST_MASS = 100_000;
export const LONGEST_NAME = 200;
export const LONGEST_ABOUT = 20_000;
/** More rows than anyone measures; keeps a damaged file from filling the form. */
export const MOST_TRAVEL_ROWS = 200;

export const placed = { least: -LARGEST_LENGTH, most: LARGEST_LENGTH, quantity: 'length' } as const;
export const length = { least: 0, most: LARGEST_LENGTH, quantity: 'length' } as const;
export const angle = { least: -180, most: 180, quantity: 'angle' } as const;
export const mass = { least: 0, most: LARGEST_MASS, quantity: 'mass' } as const;

/** A thread finer than this belongs to no adjuster, mm a turn; zero would give its adjuster no step. */
const FINEST_THREAD = 0.1;
export const thread = { ...length, least: FINEST_THREAD } as const;
export const rate = { least: 0, most: LARGEST_LENGTH, quantity: 'rate' } as const;
