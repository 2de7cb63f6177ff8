/** Laying one outline of the scene on the screen, with its arrowheads. */
import type { Point } from '../../core/plane/point.ts';
import type { Paint, Plotter } from './plotter.ts';
import type { PathShape, PathStep } from '../shapes/shape.ts';
import type { RoleStyle } from '../shapes/theme.ts';
import { toScreen, type View } from '../shapes/view.ts';

/** An arrowhead's length beyond its line's width, and half its width as a part of its length, px. */
const ARROW_LENGTH = 8;
const ARROW_PER_WIDTH = 2;
const ARROW_HALF = 0.36;

export function plotPath(shape: PathShape, style: RoleStyle, view: View, plotter: Plotter): void {
  const widthPx = shape.widthMm === undefined ? style.widthPx : shape.widthMm * view.scale;
  const heads = shape.arrows === undefined ? [] : arrowheads(shape, widthPx, view);
  // A broad line would stick out to the sides of its arrow's point, so it ends inside the arrowhead.
  const cut = new Map(heads.map((head) => [head.step, head.neck]));
  plotter.begin();
  plotSteps(shape.steps, cut, view, plotter);
  plotter.paint({
    fill: style.fill,
    fillRule: isPierced(shape.steps) ? 'evenOdd' : 'nonZero',
    stroke: style.stroke,
    widthPx,
    dashPx: style.dashPx,
    ends: shape.widthMm === undefined ? 'flat' : 'round',
  });
  if (style.stroke === null) return;
  for (const head of heads) plotArrowhead(head, style.stroke, plotter);
}

/** A full circle after another outline is a hole in it: a rim's bed in a tyre, a hub in a sprocket. */
function isPierced(steps: readonly PathStep[]): boolean {
  let outlines = 0;
  for (const step of steps) {
    if (step.op === 'move') outlines++;
    else if (step.op === 'arc' && outlines > 1 && isFullCircle(step.to - step.from)) return true;
  }
  return false;
}

/** Rounding of angles that were turned with their part, radians. */
const ANGLE_ROUNDING = 1e-9;

function isFullCircle(sweep: number): boolean {
  return Math.abs(sweep) >= 2 * Math.PI - ANGLE_ROUNDING;
}

function plotSteps(
  steps: readonly PathStep[],
  cut: ReadonlyMap<PathStep, Point>,
  view: View,
  plotter: Plotter,
): void {
  const { xPx, yPx, scale, turn } = view;
  const c = Math.cos(turn) * scale;
  const s = Math.sin(turn) * scale;
  for (const step of steps) {
    switch (step.op) {
      case 'close':
        plotter.close();
        break;
      case 'arc':
        plotter.arc(
          xPx + c * step.cx - s * step.cy,
          yPx - s * step.cx - c * step.cy,
          step.radius * scale,
          -(step.from + turn),
          -(step.to + turn),
        );
        break;
      case 'curve':
        plotter.curve(
          xPx + c * step.x1 - s * step.y1,
          yPx - s * step.x1 - c * step.y1,
          xPx + c * step.x2 - s * step.y2,
          yPx - s * step.x2 - c * step.y2,
          xPx + c * step.x - s * step.y,
          yPx - s * step.x - c * step.y,
        );
        break;
      default: {
        const neck = cut.size > 0 ? cut.get(step) : undefined;
        const x = neck?.x ?? xPx + c * step.x - s * step.y;
        const y = neck?.y ?? yPx - s * step.x - c * step.y;
        if (step.op === 'move') plotter.move(x, y);
        else plotter.line(x, y);
      }
    }
  }
}

/** An arrowhead, screen, px. `neck` is where the line's stroke ends inside it, at the step `step`. */
interface Arrowhead {
  readonly step: PathStep;
  readonly tip: Point;
  readonly neck: Point;
  readonly lengthPx: number;
}

/** The arrowheads of a line whose first and last pieces are straight; other outlines have none. */
function arrowheads({ steps, arrows }: PathShape, widthPx: number, view: View): Arrowhead[] {
  const [start, next] = steps;
  const end = steps.at(-1);
  const before = steps.at(-2);
  const heads: Arrowhead[] = [];
  const put = (at: PathStep | undefined, from: PathStep | undefined) => {
    if (at === undefined || from === undefined || !('x' in at) || !('x' in from)) return;
    const head = arrowhead(at, toScreen(view, at), toScreen(view, from), widthPx, arrows === 'both' ? 2 : 1);
    if (head !== null) heads.push(head);
  };
  if (end?.op === 'line') put(end, before);
  if (arrows === 'both' && start?.op === 'move' && next?.op === 'line') put(start, next);
  return heads;
}

/** None on a line without length. Two on one short line share its length. */
function arrowhead(
  step: PathStep,
  tip: Point,
  from: Point,
  widthPx: number,
  shared: number,
): Arrowhead | null {
  const along = Math.hypot(tip.x - from.x, tip.y - from.y);
  if (!(along > 0)) return null;
  const lengthPx = Math.min(ARROW_LENGTH + ARROW_PER_WIDTH * widthPx, along / shared);
  const part = (0.7 * lengthPx) / along;
  const neck = { x: tip.x + part * (from.x - tip.x), y: tip.y + part * (from.y - tip.y) };
  return { step, tip, neck, lengthPx };
}

function plotArrowhead({ tip, neck, lengthPx }: Arrowhead, colour: string, plotter: Plotter): void {
  const toNeck = Math.hypot(neck.x - tip.x, neck.y - tip.y);
  const ux = (neck.x - tip.x) / toNeck;
  const uy = (neck.y - tip.y) / toNeck;
  const half = ARROW_HALF * lengthPx;
  const baseX = tip.x + lengthPx * ux;
  const baseY = tip.y + lengthPx * uy;
  plotter.begin();
  plotter.move(tip.x, tip.y);
  plotter.line(baseX - half * uy, baseY + half * ux);
  plotter.line(baseX + half * uy, baseY - half * ux);
  plotter.close();
  plotter.paint(solid(colour));
}

/** A fill without an edge. */
export function solid(colour: string): Paint {
  return { fill: colour, fillRule: 'nonZero', stroke: null, widthPx: 0, dashPx: [], ends: 'flat' };
}
