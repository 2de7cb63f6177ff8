/** What a mechanic can change on a rear suspension without moving a mount on the drawing. */

export interface RearAdjusters {
  /** Shock longer (+) or shorter (−) than as delivered, mm, eye to eye; its stroke stays. Longer raises the rear. */
  readonly shockLength: number;
  /**
   * Shim between the bracket and the shock's mount away from the rocker (on the frame, without a rocker), mm:
   * moves that mount along the shock, as drawn, toward the other eye. Thicker raises the rear.
   */
  readonly shockMountShim: number;
  /** Rod longer (+) or shorter (−) than as drawn, mm. */
  readonly linkLength: number;
  /** Eccentric pivot: the swingarm pivot moved in the frame, mm. */
  readonly pivotForward: number;
  readonly pivotUp: number;
  /** Rear axle back from the front end of its slot, mm. */
  readonly axlePosition: number;
}

export const AS_DELIVERED: RearAdjusters = {
  shockLength: 0,
  shockMountShim: 0,
  linkLength: 0,
  pivotForward: 0,
  pivotUp: 0,
  axlePosition: 0,
};
