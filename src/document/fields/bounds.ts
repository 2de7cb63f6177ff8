/** Bounds that saved fields share, each with what it counts, and how long a text may be. */
import { ANY_ANGLE, ANY_LENGTH, ANY_MASS, ANY_PLACE, ANY_RATE } from '../../core/parts/bounds.ts';

export const LONGEST_NAME = 200;
export const LONGEST_ABOUT = 20_000;
/** More rows than anyone measures; keeps a damaged file from filling the form. */
export const MOST_TRAVEL_ROWS = 200;

export const placed = { ...ANY_PLACE, quantity: 'length' } as const;
export const length = { ...ANY_LENGTH, quantity: 'length' } as const;
export const angle = { ...ANY_ANGLE, quantity: 'angle' } as const;
export const mass = { ...ANY_MASS, quantity: 'mass' } as const;
export const rate = { ...ANY_RATE, quantity: 'rate' } as const;

/** A thread finer than this belongs to no adjuster, mm a turn; zero would give its adjuster no step. */
const FINEST_THREAD = 0.1;
export const thread = { ...length, least: FINEST_THREAD } as const;
