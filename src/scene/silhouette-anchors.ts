/** Where the quiet silhouette hangs on the frame: head, seat, countershaft and tail. */
import type { Bike } from '../core/parts/bike.ts';
import type { Stance } from '../core/standing/stance.ts';
import type { Placement } from './outline.ts';

/** The places in frame coordinates, mm from the pivot, that the silhouette hangs on. */
export interface Anchors {
  readonly place: Placement;
  readonly hx: number;
  readonly hy: number;
  readonly sx: number;
  readonly sy: number;
  readonly cx: number;
  readonly cy: number;
  readonly lx: number;
  readonly ly: number;
  /** Lower end of the head tube. */
  readonly fx: number;
  readonly fy: number;
}

/** The places that the silhouette hangs on, for one standing bike. */
export function anchors(standing: Stance, bike: Bike): Anchors {
  const { machine, pose } = standing;
  const { headX, headY, axisAngle } = machine.front;
  const tube = bike.frame.headTubeLength;
  return {
    place: { x: pose.originX, y: pose.originY, turn: pose.pitch },
    hx: headX,
    hy: headY,
    sx: machine.seatX,
    sy: machine.seatY,
    cx: machine.countershaftX,
    cy: machine.countershaftY,
    lx: machine.loadX,
    ly: machine.loadY,
    fx: headX + tube * Math.sin(axisAngle),
    fy: headY - tube * Math.cos(axisAngle),
  };
}
