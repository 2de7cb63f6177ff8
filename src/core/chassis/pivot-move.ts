/** Frame points as seen from the swingarm pivot where an eccentric holds it. */
import type { FramePoint } from '../parts/frame-point.ts';
import type { PivotMove } from '../adjusters/machine-part-adjusters.ts';

/**
 * A frame point, stored from the pivot as drawn, seen from the pivot as the adjusters hold it, mm. The origin of frame
 * coordinates goes with the pivot, so every point of the frame moves the other way.
 */
export function fromPivot({ x, y }: FramePoint, { pivotForward, pivotUp }: PivotMove): FramePoint {
  return { x: x - pivotForward, y: y - pivotUp };
}

/** The reverse: a frame point as it is stored. */
export function asStored({ x, y }: FramePoint, { pivotForward, pivotUp }: PivotMove): FramePoint {
  return { x: x + pivotForward, y: y + pivotUp };
}
