/** Standing the bike on the ground: the pitch and height of the frame at which both tyres touch. */
import { refuse } from '../numeric/refusal.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import type { Point } from '../plane/point.ts';
import type { NoPose } from './no-pose.ts';

/**
 * Where the frame stands. Ground frame: seen from the right side, x forward, y up, origin at the rear contact
 * patch.
 */
export interface Pose {
  readonly ok: true;
  /** Nose-up turn of the frame's axes against the ground, radians. */
  readonly pitch: number;
  readonly cos: number;
  readonly sin: number;
  /** The swingarm pivot on the ground frame, mm: the origin of frame coordinates. */
  readonly pivot: Point;
  /** Rear to front contact patch along the ground, mm. */
  readonly wheelbase: number;
}

/** A point of the frame (frame coordinates, mm from the pivot) on the ground frame, mm. */
export function onGround({ pivot, cos, sin }: Pose, { x, y }: FramePoint): Point {
  return { x: pivot.x + cos * x - sin * y, y: pivot.y + sin * x + cos * y };
}

/** A point of the ground frame, mm, in frame coordinates, mm from the pivot. */
export function inFrame({ pivot, cos, sin }: Pose, { x, y }: Point): FramePoint {
  const dx = x - pivot.x;
  const dy = y - pivot.y;
  return { x: cos * dx + sin * dy, y: -sin * dx + cos * dy };
}

/** A frame turned further than this from the axes it was described in stands on its head, radians. */
const STEEPEST_PITCH = 1.2;

/**
 * Pose of a bike whose axles lie at given frame coordinates (mm) on wheels of given outside radii (mm).
 * The ground is the common lower tangent of the two tyres: with D the axle distance,
 * wheelbase = √(D² − (front − rear radius)²), exact, without iteration.
 * Refused when the axles are closer than the radii differ, or the frame would stand on its head.
 */
export function poseOnGround(
  rearX: number,
  rearY: number,
  frontX: number,
  frontY: number,
  rearRadius: number,
  frontRadius: number,
): Pose | NoPose {
  const dx = frontX - rearX;
  const dy = frontY - rearY;
  const rise = frontRadius - rearRadius;
  const apart = dx * dx + dy * dy;
  const square = apart - rise * rise;
  if (!(square > 0)) return refuse('axlesTooClose', { found: Math.hypot(dx, dy), limit: Math.abs(rise) });
  const wheelbase = Math.sqrt(square);
  // The line of the axles as it stands, less as it lies in the frame: by the two vectors, which is quicker than by angles.
  const cos = (wheelbase * dx + rise * dy) / apart;
  const sin = (rise * dx - wheelbase * dy) / apart;
  const pitch = Math.atan2(sin, cos);
  if (!(Math.abs(pitch) < STEEPEST_PITCH)) return refuse('upsideDown');
  return {
    ok: true,
    pitch,
    cos,
    sin,
    pivot: { x: -(cos * rearX - sin * rearY), y: rearRadius - (sin * rearX + cos * rearY) },
    wheelbase,
  };
}
