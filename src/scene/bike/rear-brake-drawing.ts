/** The rear brake's caliper, with its bracket and stay when the swingarm does not hold it. */
import type { Line } from '../../core/plane/line.ts';
import type { Point } from '../../core/plane/point.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { stayLine } from '../construction/braking-lines.ts';
import { along, pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Drawn sizes, mm; they carry no measurement. */
const STAY_HALF = 9;
const EYE = 15;
const BRACKET_HALF = 15;
const CALIPER_IN = 62;
const CALIPER_OUT = 122;
const CALIPER_HALF = 34;
/** How far ahead of the bracket's arm, or above the swingarm, the caliper sits, radians. */
const CALIPER_AHEAD = 0.5;

/** Caliper on the swingarm; or bracket, stay and caliper about the axle. */
export function rearBrakeShapes(standing: Stance): Shape[] {
  const axle = standing.rearAxle;
  const stay = stayLine(standing);
  const pivot = standing.pose.pivot;
  if (stay === null) {
    const arm = along(axle, pivot);
    return [caliper(axle.x, axle.y, arm.turn + CALIPER_AHEAD)];
  }
  const below = stay.from.y < axle.y ? 1 : -1;
  const { turn } = along(axle, stay.from);
  return [caliper(axle.x, axle.y, turn + below * CALIPER_AHEAD), ...bracketShapes(axle, stay)];
}

/** A bracket about the axle with the rod that holds it on the frame. */
export function bracketShapes(axle: Point, stay: Line): Shape[] {
  const bracket = along(axle, stay.from);
  const reach = Math.hypot(stay.from.x - axle.x, stay.from.y - axle.y);
  const rod = along(stay.from, stay.to);
  const length = Math.hypot(stay.to.x - stay.from.x, stay.to.y - stay.from.y);
  return [
    pen(bracket)
      .move(0, -BRACKET_HALF)
      .line(reach, -BRACKET_HALF * 0.7, reach, BRACKET_HALF * 0.7, 0, BRACKET_HALF)
      .close()
      .shape('stay'),
    pen(rod)
      .move(0, -STAY_HALF)
      .line(length, -STAY_HALF, length, STAY_HALF, 0, STAY_HALF)
      .close()
      .shape('stay'),
    ...[stay.from, stay.to].flatMap(({ x, y }) => [
      pen().circle(x, y, EYE).shape('clamp'),
      pen().circle(x, y, 6).shape('axle'),
    ]),
  ];
}

/** A caliper over the disc, its middle at an angle about the axle. */
function caliper(x: number, y: number, turn: number): Shape {
  return pen({ x, y, turn })
    .move(CALIPER_IN, -CALIPER_HALF)
    .line(CALIPER_OUT - 12, -CALIPER_HALF)
    .curve(CALIPER_OUT, -CALIPER_HALF, CALIPER_OUT, -CALIPER_HALF, CALIPER_OUT, -CALIPER_HALF + 14)
    .line(CALIPER_OUT, CALIPER_HALF - 14)
    .curve(CALIPER_OUT, CALIPER_HALF, CALIPER_OUT, CALIPER_HALF, CALIPER_OUT - 12, CALIPER_HALF)
    .line(CALIPER_IN, CALIPER_HALF)
    .close()
    .shape('clamp');
}
