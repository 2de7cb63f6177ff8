/** Where the quiet silhouette hangs on the frame: head, seat, countershaft and tail. */
import type { Bike } from '../../core/parts/bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import type { Placement } from '../shapes/outline.ts';

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
  const { head, axisAngle } = machine.front;
  const tube = bike.frame.headTubeLength;
  return {
    place: { ...pose.pivot, turn: pose.pitch },
    hx: head.x,
    hy: head.y,
    sx: machine.places.seat.x,
    sy: machine.places.seat.y,
    cx: machine.places.countershaft.x,
    cy: machine.places.countershaft.y,
    lx: machine.places.loadMark.x,
    ly: machine.places.loadMark.y,
    fx: head.x + tube * Math.sin(axisAngle),
    fy: head.y - tube * Math.cos(axisAngle),
  };
}
