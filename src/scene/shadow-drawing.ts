/** The baseline's shadow: the outline of the bike as it was, laid behind the bike as it is. */
import type { Bike } from '../core/chassis/bike.ts';
import type { Point } from '../core/plane/point.ts';
import { onGround } from '../core/sketch/points.ts';
import type { Stance } from '../core/springs/stance.ts';
import { bodyShapes } from './bodywork-drawing.ts';
import { trailPlaces } from './construction-drawing.ts';
import { pen, segment } from './outline.ts';
import type { PathStep, Shape } from './shape.ts';
import { squatConstruction } from './squat-construction.ts';
import { zonesEnd } from './zones.ts';

/** Which place of both bikes is laid on the same spot. */
export type ShadowAlign = 'rearPatch' | 'frontPatch' | 'pivot';

export const SHADOW_ALIGNS: readonly { readonly key: ShadowAlign; readonly label: string }[] = [
  { key: 'rearPatch', label: 'Rear contact patch' },
  { key: 'frontPatch', label: 'Front contact patch' },
  { key: 'pivot', label: 'Swingarm pivot' },
];

function anchor(standing: Stance, align: ShadowAlign): Point {
  if (align === 'pivot') return onGround(standing, 0, 0);
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

/** The baseline's outlines, shifted so that the chosen place lies where the live bike has it. */
export function shadowShapes(baseline: Stance, bike: Bike, live: Stance, align: ShadowAlign): Shape[] {
  const here = anchor(live, align);
  const there = anchor(baseline, align);
  const by = { x: here.x - there.x, y: here.y - there.y };
  const { machine } = baseline;
  const { squatSlope, swingarm } = squatConstruction(baseline);
  const { axisGround, head } = trailPlaces(baseline);
  const end = zonesEnd(baseline);
  const shapes = [
    pen().circle(baseline.rearAxleX, baseline.rearAxleY, machine.rearRadius).shape('shadow'),
    pen().circle(baseline.frontAxleX, baseline.frontAxleY, machine.frontRadius).shape('shadow'),
    segment('shadow', swingarm.from, swingarm.to),
    segment('shadow', head, axisGround),
    segment('shadow', { x: 0, y: 0 }, { x: end, y: squatSlope * end }),
    ...bodyShapes(baseline, bike).filter((shape) => shape.kind === 'path' && shape.role === 'bodywork'),
  ].filter((shape) => shape.kind === 'path');
  return shapes.map((shape) => ({
    kind: 'path',
    role: 'shadow',
    steps: shape.steps.map((step) => moved(step, by)),
  }));
}
