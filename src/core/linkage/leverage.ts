/** Motion ratio, wheel force and wheel rate of a rear suspension at one place of its travel. */

/**
 * How the shock answers to the arm at one place: `lever` is the shock's stroke per radian the arm swings up, mm (the
 * shock's distance from the pivot, as the links magnify it), and `leverSlope` its change per radian of arm angle,
 * which counts downward.
 */
export interface ShockLever {
  readonly lever: number;
  readonly leverSlope: number;
}

/** The spring of all shocks together as a function of their stroke: N and N/mm. */
export interface StrokeSpring {
  readonly force: (stroke: number) => number;
  readonly rate: (stroke: number) => number;
}

/**
 * Shock stroke per axle rise, square to the ground with the frame held (about 0.3 to 0.9). `arm` is pivot to axle, mm,
 * `angle` the arm's below the ground's horizontal, radians. The rise per radian is arm · cos(angle).
 * Example: lever 228 mm, arm 580 mm, angle 10° → 0.3992.
 */
export function motionRatio({ lever }: ShockLever, arm: number, angle: number): number {
  return lever / (arm * Math.cos(angle));
}

/** Change of the motion ratio per mm of axle rise, 1/mm: above zero where the suspension is progressive. */
export function motionRatioSlope({ lever, leverSlope }: ShockLever, arm: number, angle: number): number {
  const run = arm * Math.cos(angle);
  return -(leverSlope + lever * Math.tan(angle)) / (run * run);
}

/** Below this motion ratio the shock all but stands still and the leverage says nothing. */
const LEAST_RATIO = 1e-3;

/**
 * The workshop's inverse of the motion ratio, "2.6 to 1"; null at a dead point of the shock, where it has no bound.
 * Example: ratio 0.4 → 2.5.
 */
export function leverage(ratio: number): number | null {
  return Math.abs(ratio) < LEAST_RATIO ? null : 1 / ratio;
}

/**
 * Force at the axle, square to the ground, that holds the spring's force, N: by virtual work F · dstroke = W · drise.
 * Example: springForce 3000 N, ratio 0.4 → 1200 N.
 */
export function wheelForce(springForce: number, ratio: number): number {
  return springForce * ratio;
}

/**
 * Change of the wheel force per mm of axle rise, N/mm: spring rate · ratio², and the spring's force times the change of
 * the ratio, which the workshop's short form leaves out.
 * Example: springRate 100 N/mm, springForce 3000 N, ratio 0.4, ratioSlope 0.001 → 19 N/mm.
 */
export function wheelRate(
  springRate: number,
  springForce: number,
  ratio: number,
  ratioSlope: number,
): number {
  return springRate * ratio * ratio + springForce * ratioSlope;
}
