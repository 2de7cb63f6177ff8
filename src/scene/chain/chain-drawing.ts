/** Sprockets with their real tooth counts and the chain as a run of links over them. */
import { outerTangent, type Circle, type Tangent } from '../../core/plane/circle.ts';
import { distance, type Point } from '../../core/plane/point.ts';
import { lowerPull } from '../../core/standing/drive-slopes.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { chainPlates, PLATE_HALF } from './chain-plates.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Pin and root of a tooth, as parts of the pitch from the pitch circle. */
const TOOTH_TIP = 0.3;
const TOOTH_ROOT = 0.32;

/** A stretch of the chain's pitch line: straight, or an arc about a centre walked clockwise or counter-clockwise. */
export type Stretch =
  | { readonly kind: 'run'; readonly from: Point; readonly to: Point }
  | {
      readonly kind: 'wrap';
      readonly centre: Point;
      readonly radius: number;
      readonly from: number;
      readonly sweep: number;
    };

export interface DrivePlaces {
  readonly rear: Circle;
  readonly front: Circle;
  /** The guide the upper run lies on, when it does. */
  readonly guide: Circle | null;
  /** The guide the lower run lies under when it is pulled tight. */
  readonly lowerGuide: Circle | null;
}

export function drivePlaces(standing: Stance): DrivePlaces {
  const { machine } = standing;
  const onGuide = standing.pullLever > standing.upperRunLever && machine.guideRadius !== null;
  return {
    rear: { centre: standing.rearAxle, radius: machine.rearSprocketRadius },
    front: {
      centre: standing.countershaft,
      radius: machine.frontSprocketRadius,
    },
    guide: onGuide ? { centre: standing.pose.pivot, radius: machine.guideRadius ?? 0 } : null,
    lowerGuide: lowerPull(standing).onGuide
      ? { centre: standing.pose.pivot, radius: machine.lowerGuideRadius ?? 0 }
      : null,
  };
}

/** The straight pieces of the upper run from back to front: one, or two when the chain bends over the guide. */
export function upperRun({ rear, front, guide }: DrivePlaces): Tangent[] {
  const pieces =
    guide === null
      ? [outerTangent(rear, front, 'left')]
      : [outerTangent(rear, guide, 'left'), outerTangent(guide, front, 'left')];
  return pieces.filter((piece) => piece !== 'oneInsideOther');
}

/** The straight pieces of the lower run from back to front: one, or two when it bends under the guide. */
export function lowerRun({ rear, front, lowerGuide }: DrivePlaces): Tangent[] {
  const pieces =
    lowerGuide === null
      ? [outerTangent(rear, front, 'right')]
      : [outerTangent(rear, lowerGuide, 'right'), outerTangent(lowerGuide, front, 'right')];
  return pieces.filter((piece) => piece !== 'oneInsideOther');
}

function angleAt(circle: Circle, p: Point): number {
  return Math.atan2(p.y - circle.centre.y, p.x - circle.centre.x);
}

function clockwise(circle: Circle, from: Point, to: Point): Stretch {
  const start = angleAt(circle, from);
  let sweep = angleAt(circle, to) - start;
  while (sweep > 0) sweep -= 2 * Math.PI;
  while (sweep <= -2 * Math.PI) sweep += 2 * Math.PI;
  return { kind: 'wrap', centre: circle.centre, radius: circle.radius, from: start, sweep };
}

/** The whole pitch line once round, clockwise from the back end of the upper run. */
export function pitchLine(places: DrivePlaces): Stretch[] {
  const top = upperRun(places);
  const bottom = lowerRun(places);
  if (top.length === 0 || bottom.length === 0) return [];
  const line: Stretch[] = [];
  top.forEach((piece, i) => {
    if (i > 0 && places.guide) line.push(clockwise(places.guide, top[i - 1].to, piece.from));
    line.push({ kind: 'run', from: piece.from, to: piece.to });
  });
  line.push(clockwise(places.front, top[top.length - 1].to, bottom[bottom.length - 1].to));
  for (let i = bottom.length - 1; i >= 0; i--) {
    const piece = bottom[i];
    line.push({ kind: 'run', from: piece.to, to: piece.from });
    if (i > 0 && places.lowerGuide) line.push(clockwise(places.lowerGuide, piece.from, bottom[i - 1].to));
  }
  line.push(clockwise(places.rear, bottom[0].from, top[0].from));
  return line;
}

function lengthOf(stretch: Stretch): number {
  return stretch.kind === 'run'
    ? distance(stretch.from, stretch.to)
    : Math.abs(stretch.sweep) * stretch.radius;
}

function placeOn(stretch: Stretch, at: number): Point {
  if (stretch.kind === 'run') {
    const part = at / Math.max(1e-9, distance(stretch.from, stretch.to));
    return {
      x: stretch.from.x + part * (stretch.to.x - stretch.from.x),
      y: stretch.from.y + part * (stretch.to.y - stretch.from.y),
    };
  }
  const angle = stretch.from + (Math.sign(stretch.sweep) * at) / Math.max(1e-9, stretch.radius);
  return {
    x: stretch.centre.x + stretch.radius * Math.cos(angle),
    y: stretch.centre.y + stretch.radius * Math.sin(angle),
  };
}

/** Pins of the chain, one pitch apart along the pitch line, spread evenly so that the drawn chain closes. */
function pins(line: readonly Stretch[], pitch: number): Point[] {
  const whole = line.reduce((sum, stretch) => sum + lengthOf(stretch), 0);
  const count = Math.max(4, 2 * Math.round(whole / pitch / 2));
  const step = whole / count;
  const found: Point[] = [];
  let stretch = 0;
  let before = 0;
  for (let i = 0; i < count; i++) {
    const at = i * step;
    while (stretch < line.length - 1 && at > before + lengthOf(line[stretch])) {
      before += lengthOf(line[stretch]);
      stretch++;
    }
    found.push(placeOn(line[stretch], at - before));
  }
  return found;
}

function chainShapes(places: DrivePlaces, pitch: number): Shape[] {
  const line = pitchLine(places);
  return line.length === 0 ? [] : [chainPlates(pins(line, pitch), true, pitch)];
}

/** A sprocket with its real teeth about its pitch circle; `holes` bores a hub. */
export function sprocketShapes(
  { centre, radius }: Circle,
  teeth: number,
  pitch: number,
  holes: boolean,
): Shape[] {
  const tip = radius + TOOTH_TIP * pitch;
  const root = radius - TOOTH_ROOT * pitch;
  const draw = pen();
  for (let i = 0; i < teeth; i++) {
    const at = (2 * Math.PI * i) / teeth + Math.PI / 2;
    const quarter = (2 * Math.PI) / teeth / 4;
    const put = (r: number, angle: number, first = false) => {
      const x = centre.x + r * Math.cos(angle);
      const y = centre.y + r * Math.sin(angle);
      if (first) draw.move(x, y);
      else draw.line(x, y);
    };
    put(root, at - 1.4 * quarter, i === 0);
    put(tip, at - 0.35 * quarter);
    put(tip, at + 0.35 * quarter);
    put(root, at + 1.4 * quarter);
  }
  draw.close();
  if (holes) {
    const inner = root - 12;
    draw.circle(centre.x, centre.y, Math.max(HUB_HOLE, inner * 0.62));
  }
  return [draw.shape('sprocket')];
}

/** Radius of the hole in a rear sprocket at its smallest, mm. */
const HUB_HOLE = 30;

/** Sprockets, chain and guide from back to front. */
export function chainDriveShapes(standing: Stance, pitch: number): Shape[] {
  const places = drivePlaces(standing);
  const { machine } = standing;
  return [
    ...sprocketShapes(places.rear, machine.rearTeeth, pitch, true),
    ...sprocketShapes(places.front, machine.frontTeeth, pitch, false),
    pen().circle(places.front.centre.x, places.front.centre.y, 12).shape('axle'),
    ...guideShapes(standing, PLATE_HALF * pitch),
    ...chainShapes(places, pitch),
  ];
}

/**
 * The guide about the pivot, whose face lies `half` mm inside the pitch line; where that under the pivot has another
 * radius, one half each. No shapes without a guide.
 */
export function guideShapes(standing: Stance, half: number): Shape[] {
  const { guideRadius, lowerGuideRadius } = standing.machine;
  const { x, y } = standing.pose.pivot;
  const face = (radius: number): number => Math.max(4, radius - half);
  if (guideRadius !== null && guideRadius === lowerGuideRadius)
    return [pen().circle(x, y, face(guideRadius)).shape('guide')];
  const halves: Shape[] = [];
  if (guideRadius !== null)
    halves.push(pen().arc(x, y, face(guideRadius), Math.PI, 0).close().shape('guide'));
  if (lowerGuideRadius !== null)
    halves.push(pen().arc(x, y, face(lowerGuideRadius), 0, -Math.PI).close().shape('guide'));
  return halves;
}
