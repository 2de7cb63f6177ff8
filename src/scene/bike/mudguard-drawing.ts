/** Mudguards: those that ride close to a wheel. */
import { onGround } from '../../core/chassis/pose.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Clearance and thickness of a guard about the tyre, mm, and where it begins and ends, radians from forward. */
const GAP = 12;
const THICK = 12;

function band(x: number, y: number, radius: number, from: number, to: number): Shape {
  return pen()
    .move(x + radius * Math.cos(from), y + radius * Math.sin(from))
    .arc(x, y, radius, from, to)
    .line(x + (radius + THICK) * Math.cos(to), y + (radius + THICK) * Math.sin(to))
    .arc(x, y, radius + THICK, to, from)
    .close()
    .shape('bodywork');
}

export function mudguardShapes(standing: Stance, bike: Bike): Shape[] {
  if (bike.bodywork === 'offRoad') {
    // High front guard under the lower clamp, fixed to the steering.
    const { pose, machine } = standing;
    const { head, axisAngle } = machine.front;
    const top = onGround(pose, head);
    const turn = axisAngle + pose.pitch;
    const tube = bike.frame.headTubeLength + 60;
    const x = top.x + tube * Math.sin(turn);
    const y = top.y - tube * Math.cos(turn);
    return [
      pen({ x, y, turn: turn * 0.2 })
        .move(-110, -8)
        .curve(0, 44, 120, 60, 330, -30)
        .curve(160, 20, 20, 6, -110, -34)
        .close()
        .shape('bodywork'),
    ];
  }
  const front = standing.machine.frontRadius + GAP;
  const rear = standing.machine.rearRadius + GAP;
  const faired = bike.bodywork === 'faired';
  const guards = [
    band(standing.frontAxle.x, standing.frontAxle.y, front, faired ? 0.75 : 0.6, faired ? 2.5 : 2.7),
  ];
  if (!faired) guards.push(band(standing.rearAxle.x, standing.rearAxle.y, rear + 46, 1.1, 2.6));
  return guards;
}
