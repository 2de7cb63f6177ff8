/** The squat line by balance of forces: which way the ground pushes the driven wheel without moving the springs. */

/**
 * Slope (rise per run toward the front) of the line from the rear contact patch along which the ground force may act
 * without loading or unloading the rear spring, in its two parts. The whole slope is their sum.
 */
export interface SquatSlope {
  /** The swingarm's part: the thrust at the patch about the pivot. Positive pushes the rear up. */
  readonly swingarm: number;
  /** The chain's part: its pull about the pivot. Negative, pulling the rear down, when the run passes above. */
  readonly chain: number;
}

/**
 * The swingarm's part of the squat slope. Ground frame, mm from the rear contact patch. Moments about the pivot of
 * arm and wheel as one massless body: a thrust S forward and a load N upward at the patch give
 * N·pivotX = S·pivotY. Defined only while the pivot is ahead of the patch (pivotX > 0).
 * Example: pivotX 570 mm, pivotY 420 mm → 0.7368.
 */
export function swingarmSlope(pivotX: number, pivotY: number): number {
  return pivotY / pivotX;
}

/**
 * The chain's part of the squat slope. The wheel's own balance gives the pull S·wheelRadius / sprocketRadius;
 * it acts on arm and wheel at `lever` mm above the pivot (negative below). No crossing point is divided by, so
 * runs parallel to the arm need no special case.
 * Example: pivotX 570 mm, lever 40 mm, wheelRadius 315 mm, sprocketRadius 113.8 mm → −0.1942.
 */
export function chainSlope(
  pivotX: number,
  lever: number,
  wheelRadius: number,
  sprocketRadius: number,
): number {
  return (-wheelRadius * lever) / (sprocketRadius * pivotX);
}
