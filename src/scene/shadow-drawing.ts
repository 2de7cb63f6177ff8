/** The baseline's shadow: the outline of the bike as it was, laid behind the bike as it is. */
import type { Bike } from '../core/parts/bike.ts';
import type { Point } from '../core/plane/point.ts';
import type { Stance } from '../core/standing/stance.ts';
import { bodyShapes } from './bike/bodywork-drawing.ts';
import { trailPlaces } from './construction/construction-drawing.ts';
import { pen, segment } from './shapes/outline.ts';
import type { PathShape, PathStep, Role, Shape } from './shapes/shape.ts';
import { squatConstruction } from './construction/squat-construction.ts';
import { zonesEnd } from './construction/zones.ts';

/** The inner edge of a tyre's ring, as a part of its radius. */
const TYRE_PART = 0.8;

/** Which place of both bikes is laid on the same spot. */
export type ShadowAlign = 'rearPatch' | 'frontPatch' | 'pivot';

export const SHADOW_ALIGNS: readonly { readonly key: ShadowAlign; readonly label: string }[] = [
  { key: 'rearPatch', label: 'Rear contact patch' },
  { key: 'frontPatch', label: 'Front contact patch' },
  { key: 'pivot', label: 'Swingarm pivot' },
];

/** The place of a standing bike that is laid on the same spot, ground frame. */
export function alignedAt(standing: Stance, align: ShadowAlign): Point {
  if (align === 'pivot') return standing.pose.pivot;
  return { x: align === 'frontPatch' ? standing.pose.wheelbase : 0, y: 0 };
}

function moved(step: PathStep, by: Point): PathStep {
  switch (step.op) {
    case 'close':
      return step;
    case 'arc':
      return { ...step, cx: step.cx + by.x, cy: step.cy + by.y };
    case 'curve':
      return {
        ...step,
        x: step.x + by.x,
        y: step.y + by.y,
        x1: step.x1 + by.x,
        y1: step.y1 + by.y,
        x2: step.x2 + by.x,
        y2: step.y2 + by.y,
      };
    default:
      return { ...step, x: step.x + by.x, y: step.y + by.y };
  }
}

/** The outlines of a bike: both tyres, the arm, the steering axis and what lies over the frame. */
export function outlineShapes(standing: Stance, bike: Bike, role: Role): PathShape[] {
  const { machine } = standing;
  const { swingarm } = squatConstruction(standing);
  const { axisGround, head } = trailPlaces(standing);
  return [
    pen().circle(standing.rearAxle.x, standing.rearAxle.y, machine.rearRadius).shape(role),
    pen().circle(standing.frontAxle.x, standing.frontAxle.y, machine.frontRadius).shape(role),
    segment(role, swingarm.from, swingarm.to),
    segment(role, head, axisGround),
    ...bodyShapes(standing, bike).flatMap((shape) =>
      shape.kind === 'path' && shape.role === 'bodywork' ? [{ ...shape, role }] : [],
    ),
  ];
}

/** Shapes shifted so that what lies at `there` comes to lie at `here`. */
export function shiftShapes(shapes: readonly PathShape[], there: Point, here: Point): PathShape[] {
  const by = { x: here.x - there.x, y: here.y - there.y };
  return shapes.map(({ kind, role, steps }) => ({ kind, role, steps: steps.map((step) => moved(step, by)) }));
}

/** The baseline's outlines and squat line, shifted so that the chosen place lies where the live bike has it. */
export function shadowShapes(baseline: Stance, bike: Bike, live: Stance, align: ShadowAlign): Shape[] {
  const { squatSlope } = squatConstruction(baseline);
  const end = zonesEnd(baseline);
  const squatLine = segment('shadow', { x: 0, y: 0 }, { x: end, y: squatSlope * end });
  const outlines = outlineShapes(baseline, bike, 'shadow').map(inColour);
  return shiftShapes([...outlines, squatLine], alignedAt(baseline, align), alignedAt(live, align));
}

/** Closed outlines are filled too, so that the baseline looks like a second drawing; of a wheel only the tyre, since one sees through its spokes. */
function inColour(shape: PathShape): PathShape {
  if (!shape.steps.some(({ op }) => op === 'close')) return shape;
  const inner = shape.steps.flatMap((step): PathStep[] => {
    if (step.op !== 'arc') return [];
    const radius = TYRE_PART * step.radius;
    return [{ op: 'move', x: step.cx + radius, y: step.cy }, { ...step, radius }, { op: 'close' }];
  });
  return { ...shape, role: 'shadowBody', steps: [...shape.steps, ...inner] };
}
