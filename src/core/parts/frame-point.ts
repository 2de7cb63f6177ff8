/** A place on the main frame. */

/**
 * A place fixed to the main frame: mm from the swingarm pivot, x forward, y up, as the frame stood when it was
 * measured. Any steady choice of axes gives the same readings.
 */
export interface FramePoint {
  readonly x: number;
  readonly y: number;
}
