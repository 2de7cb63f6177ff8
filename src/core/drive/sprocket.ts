/** Sprockets: the circle on which the chain's pins lie. */

/** Fewest and most teeth accepted; fewer cannot wrap a roller chain, more do not exist on motorcycles. */
export const LEAST_TEETH = 6;
export const MOST_TEETH = 120;

/** Whether a tooth count is a whole number that a roller chain can run on. */
export function teethPossible(teeth: number): boolean {
  return Number.isInteger(teeth) && teeth >= LEAST_TEETH && teeth <= MOST_TEETH;
}

/** Chain pitches accepted, mm: smaller than any roller chain's, larger than any motorcycle's. */
export const LEAST_PITCH = 4;
export const MOST_PITCH = 40;

/** Whether a chain can have this pitch, mm. */
export function pitchPossible(pitch: number): boolean {
  return pitch >= LEAST_PITCH && pitch <= MOST_PITCH;
}

/**
 * Pitch radius of a roller-chain sprocket: half the diameter through the centres of the chain's pins, in the unit of
 * the pitch. r = p / (2·sin(π/N)), from the polygon of N chords of one pitch (ISO 606, short-pitch roller chains and
 * their sprockets; from memory).
 * Example: teeth 15, pitch 15.875 mm → 38.177 mm.
 */
export function pitchRadius(teeth: number, pitch: number): number {
  return pitch / (2 * Math.sin(Math.PI / teeth));
}
