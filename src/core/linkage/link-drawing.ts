/** A link layout in the posture it was drawn in: every point with the part that carries it. */
import type { FramePoint } from '../parts/frame-point.ts';
import { rotate, type Point } from '../plane/point.ts';
import type { ArmPoint, LinkLayout, ShockFarEnd } from '../parts/rear-layout.ts';

/** The part a point is bolted to. */
export type LinkPart = 'frame' | 'arm' | 'rocker';

/** Every point a layout can have, in the words of the layout. */
export type LinkPointKey =
  | 'shockOnFrame'
  | 'shockOnArm'
  | 'rockerPivot'
  | 'rodOnRocker'
  | 'shockOnRocker'
  | 'rodOnArm'
  | 'rodOnFrame'
  | 'shockFarEnd';

export interface LinkPoint {
  readonly key: LinkPointKey;
  readonly part: LinkPart;
  /** Frame coordinates, mm. */
  readonly place: Point;
}

/**
 * An arm point with the arm lying along the frame's −x axis (angle zero). Turned by the arm's angle, which counts
 * below the frame's x axis and so is counter-clockwise, it gives frame coordinates.
 */
export function levelArm(point: ArmPoint): Point {
  return { x: -point.along, y: point.above };
}

/** An arm point in frame coordinates, with the arm at `angle` radians below the frame's x axis. */
export function armPointInFrame(point: ArmPoint, angle: number): FramePoint {
  return rotate(levelArm(point), angle);
}

/** The reverse of `armPointInFrame`. */
export function framePointOnArm(point: FramePoint, angle: number): ArmPoint {
  const level = rotate(point, -angle);
  return { along: -level.x, above: level.y };
}

/** The shock's end away from the rocker, frame coordinates, with the arm at an angle. */
export function farEndInFrame(far: ShockFarEnd, angle: number): FramePoint {
  return far.on === 'frame' ? far.at : armPointInFrame(far.at, angle);
}

/** Every point of the layout in frame coordinates, as drawn. `angle` is the drawn angle, radians. */
export function drawnPoints(layout: LinkLayout, angle: number): readonly LinkPoint[] {
  switch (layout.kind) {
    case 'direct':
      return [
        { key: 'shockOnFrame', part: 'frame', place: layout.shockOnFrame },
        { key: 'shockOnArm', part: 'arm', place: armPointInFrame(layout.shockOnArm, angle) },
      ];
    case 'rockerOnFrame':
      return [
        { key: 'rockerPivot', part: 'frame', place: layout.rockerPivot },
        { key: 'rodOnRocker', part: 'rocker', place: layout.rodOnRocker },
        { key: 'shockOnRocker', part: 'rocker', place: layout.shockOnRocker },
        { key: 'rodOnArm', part: 'arm', place: armPointInFrame(layout.rodOnArm, angle) },
        {
          key: 'shockFarEnd',
          part: layout.shockFarEnd.on,
          place: farEndInFrame(layout.shockFarEnd, angle),
        },
      ];
    case 'rockerOnArm':
      return [
        { key: 'rockerPivot', part: 'arm', place: armPointInFrame(layout.rockerPivot, angle) },
        { key: 'rodOnRocker', part: 'rocker', place: armPointInFrame(layout.rodOnRocker, angle) },
        { key: 'shockOnRocker', part: 'rocker', place: armPointInFrame(layout.shockOnRocker, angle) },
        { key: 'rodOnFrame', part: 'frame', place: layout.rodOnFrame },
        {
          key: 'shockFarEnd',
          part: layout.shockFarEnd.on,
          place: farEndInFrame(layout.shockFarEnd, angle),
        },
      ];
  }
}
