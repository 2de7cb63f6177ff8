/** Angles of the lines that a gauge is laid along. */
import type { HeldBike } from '../held/held-bike.ts';
import type { MeasurePartKey } from '../held/measure-parts.ts';

/**
 * Angle of a line against the gauge's zero, radians: fork leg from vertical leaning back, swingarm below horizontal,
 * chain runs and frame rail rising forward. Null for a part that is no line, or a run that the bike does not have.
 */
export function lineAngle(held: HeldBike, line: MeasurePartKey): number | null {
  const { rake, legTilt, pitch, rail, slope, place } = held;
  switch (line) {
    case 'forkLeg':
      return rake - legTilt - slope;
    case 'frameRail':
      return rail + pitch - slope;
    case 'swingarm': {
      const pivot = place('pivot');
      const axle = place('rearAxle');
      return pivot === null || axle === null ? null : Math.atan2(pivot.y - axle.y, pivot.x - axle.x) + slope;
    }
    case 'upperRun':
    case 'lowerRun':
      return runAngle(held, line === 'upperRun' ? -1 : 1);
    default:
      return null;
  }
}

function runAngle({ place, sprockets, slope }: HeldBike, side: 1 | -1): number | null {
  const axle = place('rearAxle');
  const front = place('countershaft');
  if (axle === null || front === null || sprockets === null) return null;
  const x = front.x - axle.x;
  const y = front.y - axle.y;
  const sine = (sprockets.rear - sprockets.front) / Math.hypot(x, y);
  return Math.abs(sine) < 1 ? Math.atan2(y, x) + side * Math.asin(sine) - slope : null;
}
