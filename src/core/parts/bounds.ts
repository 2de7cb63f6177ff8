/** The widest numbers that a saved bike may hold, far beyond any machine on two wheels; the core decides what geometry allows. */

export interface SavedBounds {
  readonly least: number;
  readonly most: number;
}

/** mm. */
export const LARGEST_LENGTH = 100_000;
/** kg. */
const LARGEST_MASS = 100_000;
/** N. */
const LARGEST_FORCE = 1e5;
/** g; accelerating, engine braking and braking are each counted from none. */
const LARGEST_ACCELERATION = 10;
/** More teeth than any sprocket has, and more links than any chain. */
const MOST_TEETH = 1000;
const MOST_LINKS = 1000;

/** A length to either side, mm. */
export const ANY_PLACE: SavedBounds = { least: -LARGEST_LENGTH, most: LARGEST_LENGTH };
export const ANY_LENGTH: SavedBounds = { least: 0, most: LARGEST_LENGTH };
/** Degrees. */
export const ANY_ANGLE: SavedBounds = { least: -180, most: 180 };
export const ANY_MASS: SavedBounds = { least: 0, most: LARGEST_MASS };
/** N/mm. */
export const ANY_RATE: SavedBounds = { least: 0, most: 100_000 };
export const ANY_FORCE: SavedBounds = { least: 0, most: LARGEST_FORCE };
/** Bar on a gauge; the core refuses what is less than no air at all. */
export const ANY_PRESSURE: SavedBounds = { least: -1000, most: 1000 };
/** ml. */
export const ANY_VOLUME: SavedBounds = { least: 0, most: 100_000 };
export const ANY_ACCELERATION: SavedBounds = { least: 0, most: LARGEST_ACCELERATION };
export const ANY_PERCENTAGE: SavedBounds = { least: 0, most: 100 };
export const ANY_TEETH: SavedBounds = { least: 1, most: MOST_TEETH };
export const ANY_LINKS: SavedBounds = { least: 1, most: MOST_LINKS };
