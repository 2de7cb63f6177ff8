/** The squat line drawn with ruler and compass: tight run, swingarm line, their crossing, without any forces. */
import { outerTangent, type Circle, type Tangent } from '../../src/core/plane/circle.ts';
import { crossing } from '../../src/core/plane/line.ts';
import type { Point } from '../../src/core/plane/point.ts';
import type { Stance } from '../../src/core/standing/stance.ts';

/** The circles of the drive on the ground frame, mm. */
export interface DriveCircles {
  readonly rear: Circle;
  readonly front: Circle;
  readonly pivot: Point;
  /** The guide over which the upper run bends; null when it runs free. */
  readonly guide: Circle | null;
}

export function driveCircles(stance: Stance): DriveCircles {
  const { machine, pose } = stance;
  const pivot = pose.pivot;
  const bends = machine.guideRadius !== null && stance.upperRunLever < machine.guideRadius;
  return {
    rear: { centre: { x: 0, y: machine.rearRadius }, radius: machine.rearSprocketRadius },
    front: {
      centre: stance.countershaft,
      radius: machine.frontSprocketRadius,
    },
    pivot,
    guide: bends ? { centre: pivot, radius: machine.guideRadius ?? 0 } : null,
  };
}

export function topTangent(rear: Circle, front: Circle): Tangent {
  const tangent = outerTangent(rear, front, 'left');
  if (tangent === 'oneInsideOther') throw new Error('The sprockets overlap');
  return tangent;
}

/** The instant centre: where the pull on the rear sprocket meets the line through pivot and rear axle. */
export function instantCentre({ rear, front, pivot, guide }: DriveCircles): Point | 'parallel' {
  return crossing(topTangent(rear, guide ?? front), { from: rear.centre, to: pivot });
}

/** Slope of the squat line, patch to instant centre; along the swingarm when the two lines are parallel. */
export function slopeByLines(circles: DriveCircles): number {
  const centre = instantCentre(circles);
  if (centre !== 'parallel') return centre.y / centre.x;
  const { rear, pivot } = circles;
  return (pivot.y - rear.centre.y) / (pivot.x - rear.centre.x);
}
