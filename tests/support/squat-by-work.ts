/** The squat line by virtual work: the path of the tyre's lowest point when the engine stands still and the arm swings. */
import type { Circle } from '../../src/core/plane/circle.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { topTangent, type DriveCircles } from './squat-by-lines.ts';

/** Half the swing over which the path is measured, radians: its square and the rounding over it are both below 1e-9. */
const SWING = 1e-5;

/** Angle at which a tangent of two circles leaves them, seen from their centres, radians. */
function leavingAngle(circle: Circle, at: Point): number {
  return Math.atan2(at.y - circle.centre.y, at.x - circle.centre.x);
}

/**
 * Chain from a mark on the standing front sprocket, back over the top to a mark on the rear sprocket; wrapped chain
 * counted along the pitch circles. The angles of the marks are left out: they only add a constant.
 */
function topLength({ rear, front, guide }: DriveCircles): number {
  const spans = guide === null ? [[rear, front]] : [[rear, guide] as const, [guide, front] as const];
  let length = 0;
  for (const [behind, ahead] of spans) {
    const { from, to } = topTangent(behind, ahead);
    const angle = leavingAngle(behind, from);
    length += Math.hypot(to.x - from.x, to.y - from.y) + (ahead.radius - behind.radius) * angle;
  }
  return length;
}

/** The drive with its rear sprocket swung about the pivot, the frame held. */
function swung(circles: DriveCircles, by: number): DriveCircles {
  const { rear, pivot } = circles;
  const dx = rear.centre.x - pivot.x;
  const dy = rear.centre.y - pivot.y;
  const centre = {
    x: pivot.x + Math.cos(by) * dx - Math.sin(by) * dy,
    y: pivot.y + Math.sin(by) * dx + Math.cos(by) * dy,
  };
  return { ...circles, rear: { ...rear, centre } };
}

/**
 * Slope of the ground force that does no work while the frame and the engine are held, the upper run stays tight and
 * the arm swings: square to the path of the tyre's lowest point. Longer chain between the marks must come off the
 * rear sprocket, which turns the wheel the way it rolls.
 */
export function slopeByWork(circles: DriveCircles): number {
  const start = topLength(circles);
  const place = (by: number): Point => {
    const after = swung(circles, by);
    const turn = -(topLength(after) - start) / circles.rear.radius;
    const radius = circles.rear.centre.y;
    return {
      x: after.rear.centre.x + Math.sin(turn) * radius,
      y: after.rear.centre.y - Math.cos(turn) * radius,
    };
  };
  const up = place(-SWING);
  const down = place(SWING);
  return -(down.x - up.x) / (down.y - up.y);
}
