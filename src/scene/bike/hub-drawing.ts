/** A hub motor: a finned drum in the rear wheel, and its cable along the swingarm. */
import type { Stance } from '../../core/standing/stance.ts';
import { along, pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Drawn sizes, mm; they carry no measurement. */
const DRUM_OF_RIM = 0.72;
const LARGEST_DRUM = 158;
const RING = 16;
const FINS = 36;
const CABLE = 14;

/** The motor, behind the swingarm; `rimRadius` is that of the wheel it sits in, mm. */
export function hubMotorShapes(standing: Stance, rimRadius: number): Shape[] {
  const { x, y } = standing.rearAxle;
  const drum = Math.min(LARGEST_DRUM, DRUM_OF_RIM * rimRadius);
  const cover = drum - RING;
  const fins = pen();
  for (let i = 0; i < FINS; i++) {
    const at = (2 * Math.PI * i) / FINS;
    const [c, s] = [Math.cos(at), Math.sin(at)];
    fins.move(x + cover * c, y + cover * s).line(x + drum * c, y + drum * s);
  }
  return [
    pen().circle(x, y, drum).shape('sprocket'),
    fins.shape('spoke'),
    pen().circle(x, y, cover).shape('frame'),
    pen()
      .circle(x, y, cover * 0.62)
      .shape('clamp'),
  ];
}

/** The cable from the axle to the frame, on the swingarm. */
export function hubCableShapes(standing: Stance): Shape[] {
  const pivot = standing.pose.pivot;
  const axle = standing.rearAxle;
  const place = along(axle, pivot);
  const arm = standing.machine.rear.arm;
  const line = pen(place)
    .move(14, 0)
    .curve(arm * 0.15, 30, arm * 0.3, 26, arm * 0.55, 22)
    .curve(arm * 0.8, 18, arm * 0.9, 40, arm + 30, 46);
  return [line.shape('tubeEdge', { widthMm: CABLE }), line.shape('tube', { widthMm: CABLE - 5 })];
}
