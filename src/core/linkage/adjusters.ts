/** What a mechanic can change on a rear suspension without moving a mount on the drawing. */
import type { FramePoint } from '../chassis/frame-point.ts';

export interface RearAdjusters {
  /** Shock longer (+) or shorter (−) than as delivered, mm, eye to eye; its stroke stays. Longer raises the rear. */
  readonly shockLength: number;
  /**
   * Shim between the bracket and the shock's mount away from the rocker (on the frame, without a rocker), mm:
   * moves that mount along the shock, as drawn, toward the other eye. Thicker raises the rear.
   */
  readonly topShim: number;
  /** Rod longer (+) or shorter (−) than as drawn, mm. */
  readonly linkLength: number;
  /** Eccentric pivot: the swingarm pivot moved in the frame, mm, x forward, y up. */
  readonly pivotMove: FramePoint;
  /** Rear axle back from the front end of its slot, mm. */
  readonly axlePosition: number;
}

export const AS_DELIVERED: RearAdjusters = {
  shockLength: 0,
  topShim: 0,
  linkLength: 0,
  pivotMove: { x: 0, y: 0 },
  axlePosition: 0,
};

/**
 * A frame point, stored from the pivot as drawn, seen from the pivot where the eccentric holds it, mm. The origin
 * of frame coordinates goes with the pivot, so every point of the frame moves the other way.
 */
export function fromMovedPivot(point: FramePoint, pivotMove: FramePoint): FramePoint {
  return { x: point.x - pivotMove.x, y: point.y - pivotMove.y };
}

/** The reverse of `fromMovedPivot`: a frame point as it is stored. */
export function fromDrawnPivot(point: FramePoint, pivotMove: FramePoint): FramePoint {
  return { x: point.x + pivotMove.x, y: point.y + pivotMove.y };
}
