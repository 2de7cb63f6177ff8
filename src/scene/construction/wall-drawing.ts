/** The wall test on the drawing: the wall, both pushes, how the wheel loads change, and the two lines that decide. */
import type { AgainstWall } from '../../core/riding/equilibrium/against-wall.ts';
import type { Point } from '../../core/plane/point.ts';
import { writeChange, writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { segment } from '../shapes/outline.ts';
import type { LabelShape, LabelSpot, SceneLayer } from '../shapes/shape.ts';

/** Length of an arrow, mm for each N; and the least at which it is still an arrow, mm. */
const MM_PER_N = 0.6;
const LEAST_LENGTH = 60;
/** How far the wall reaches above the front axle, in radii of the wheel. */
const WALL_HEIGHT = 1.6;

/** Over the drawing of the bike as it is pressed, with words of that size in px. */
export function wallLayer(
  { from, pressed, squatSlope }: AgainstWall,
  style: NumberStyle,
  sizePx: number,
): SceneLayer {
  const { machine, pose } = pressed.stance;
  const { wheelbase } = pose;
  const { frontRadius } = machine;
  const { wallThrust: thrust = 0 } = pressed.forces;
  const rear = pressed.rear.wheelLoad - from.rear.wheelLoad;
  const front = pressed.front.wheelLoad - from.front.wheelLoad;
  const reach = (force: number): number =>
    Math.sign(force) * Math.max(LEAST_LENGTH, Math.abs(force) * MM_PER_N);
  const axle = { x: wheelbase, y: frontRadius };
  const wall = { x: wheelbase + frontRadius, y: 0 };
  const arrow = { arrows: 'end' } as const;
  const push = reach(thrust);
  const words = (text: string, at: Point, spot: LabelSpot): LabelShape => ({
    kind: 'label',
    role: 'dimension',
    text,
    at,
    spot,
    shiftPx: { x: 0, y: 0 },
    sizePx,
    backed: true,
    leader: false,
  });
  const force = (value: number): string => writeNumber(value, 'force', style).text;
  const change = (value: number): string => writeChange(value, 'force', style).text;
  return {
    name: 'construction',
    ink: 1,
    shapes: [
      segment('axisLine', wall, { x: wall.x, y: frontRadius * (1 + WALL_HEIGHT) }),
      segment('loadTransferLine', { x: 0, y: 0 }, axle),
      segment('squatLine', { x: 0, y: 0 }, { x: wheelbase, y: wheelbase * squatSlope }),
      segment('brakeLine', { x: 0, y: 0 }, { x: push, y: 0 }, arrow),
      segment('brakeLine', axle, { x: axle.x - push, y: axle.y }, arrow),
      segment('dimension', { x: 0, y: 0 }, { x: 0, y: reach(rear) }, arrow),
      segment('dimension', { x: wheelbase, y: 0 }, { x: wheelbase, y: reach(front) }, arrow),
      words('Squat line', { x: wheelbase, y: wheelbase * squatSlope }, 'right'),
      words('Line to the front axle', { x: wheelbase / 2, y: axle.y / 2 }, 'below'),
      words(`Tyre pushes ${force(thrust)}`, { x: push, y: 0 }, 'below'),
      words(`Wall pushes back ${force(thrust)}`, { x: axle.x - push, y: axle.y }, 'above'),
      words(`Rear load ${change(rear)}`, { x: 0, y: reach(rear) }, 'above'),
      words(`Front load ${change(front)}`, { x: wheelbase, y: reach(front) }, 'below'),
    ],
  };
}
