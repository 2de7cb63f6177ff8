/** The lower run between two sprockets: where it touches, taut, and how much chain the wraps give up as it leaves them. */
import type { Point } from '../plane/point.ts';
import type { ChainLoop } from './chain-loop.ts';

/**
 * A lower run with the sprocket centres at their places, mm; x toward the front, y up. Angles are those of the
 * chain's way forward above the x axis, radians.
 */
export interface LowerRun {
  readonly loop: ChainLoop;
  readonly rear: Point;
  readonly front: Point;
  /** Angle and length between the touching points when taut. */
  readonly angle: number;
  readonly length: number;
}

/** The taut lower run: the lower outer tangent of both pitch circles; null when the sprockets overlap. */
export function lowerRun(loop: ChainLoop, rear: Point, front: Point): LowerRun | null {
  const dx = front.x - rear.x;
  const dy = front.y - rear.y;
  const centres = Math.hypot(dx, dy);
  const difference = loop.rearRadius - loop.frontRadius;
  if (!(centres > loop.rearRadius + loop.frontRadius)) return null;
  return {
    loop,
    rear,
    front,
    angle: Math.atan2(dy, dx) + Math.asin(difference / centres),
    length: Math.sqrt(centres * centres - difference * difference),
  };
}

/** Where a chain that runs forward at `angle` leaves the rear sprocket, on its lower side. */
export function rearTouch(run: LowerRun, angle: number): Point {
  const { loop, rear } = run;
  return { x: rear.x + loop.rearRadius * Math.sin(angle), y: rear.y - loop.rearRadius * Math.cos(angle) };
}

/** Where a chain that runs forward at `angle` meets the front sprocket, on its lower side. */
export function frontTouch(run: LowerRun, angle: number): Point {
  const { loop, front } = run;
  return { x: front.x + loop.frontRadius * Math.sin(angle), y: front.y - loop.frontRadius * Math.cos(angle) };
}

/**
 * Chain beyond the taut length, mm, that a run of `length` mm needs which leaves the rear sprocket at `rearAngle`
 * and meets the front one at `frontAngle`. What it takes off the wraps is counted in teeth.
 */
export function spareOf(run: LowerRun, length: number, rearAngle: number, frontAngle: number): number {
  const { pitch, rearTeeth, frontTeeth } = run.loop;
  const offWraps =
    (rearTeeth * (run.angle - rearAngle) + frontTeeth * (frontAngle - run.angle)) / (2 * Math.PI);
  return length - run.length - pitch * offWraps;
}

/** The middle of the taut run, where slack is measured. */
export function runMiddle(run: LowerRun): Point {
  const from = rearTouch(run, run.angle);
  const to = frontTouch(run, run.angle);
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
}
