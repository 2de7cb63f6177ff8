/** A standing bike written as points and constraints, with nothing solved, for solvers that know no motorcycles. */
import { onGround } from '../../src/core/chassis/pose.ts';
import { frontAxle } from '../../src/core/chassis/front-end.ts';
import { distance, type Point } from '../../src/core/plane/point.ts';
import { axisFootInFrame } from '../../src/core/sketch/measure-steering.ts';
import type { Stance } from '../../src/core/standing/stance.ts';
import { driveCircles, instantCentre, topTangent } from './squat-by-lines.ts';

/** The points to be found: frame, wheels, the trail's point on the ground, the upper run, the instant centre. */
export const FREE_POINTS = [
  'pivot',
  'head',
  'foot',
  'frontAxle',
  'countershaft',
  'sprungCentre',
  'trailPoint',
  'runRear',
  'runFront',
  'instantCentre',
] as const;

export type FreePoint = (typeof FREE_POINTS)[number];
/** Given points: the rear axle above the origin and two points of the ground. */
export type AnyPoint = FreePoint | 'rearAxle' | 'groundRear' | 'groundFront';

export type PointConstraint =
  | { readonly kind: 'distance'; readonly a: AnyPoint; readonly b: AnyPoint; readonly length: number }
  | { readonly kind: 'height'; readonly a: AnyPoint; readonly height: number }
  | { readonly kind: 'onLine'; readonly a: AnyPoint; readonly from: AnyPoint; readonly to: AnyPoint }
  /** a–b square to c–d. */
  | {
      readonly kind: 'square';
      readonly a: AnyPoint;
      readonly b: AnyPoint;
      readonly c: AnyPoint;
      readonly d: AnyPoint;
    };

export interface PoseConstraints {
  readonly given: ReadonlyMap<AnyPoint, Point>;
  readonly constraints: readonly PointConstraint[];
}

/** Length of the steering axis between the two points that stand for it, mm. */
const AXIS = 400;

/** What the measures of the parts fix; twenty equations for ten points. */
export function poseConstraints({ machine, arm, travel }: Stance): PoseConstraints {
  const { front, rear } = machine;
  const pivot = { x: 0, y: 0 };
  const rearAxle = { x: -rear.arm * Math.cos(arm.angle), y: -rear.arm * Math.sin(arm.angle) };
  const head = front.head;
  const foot = {
    x: head.x + AXIS * Math.sin(front.axisAngle),
    y: head.y - AXIS * Math.cos(front.axisAngle),
  };
  const axle = frontAxle(front, travel.front);
  const countershaft = machine.places.countershaft;
  const centre = machine.places.sprungCentre;
  const apart = (a: AnyPoint, b: AnyPoint, p: Point, q: Point): PointConstraint => ({
    kind: 'distance',
    a,
    b,
    length: distance(p, q),
  });
  return {
    given: new Map<AnyPoint, Point>([
      ['rearAxle', { x: 0, y: machine.rearRadius }],
      ['groundRear', { x: 0, y: 0 }],
      ['groundFront', { x: 1000, y: 0 }],
    ]),
    constraints: [
      apart('rearAxle', 'pivot', rearAxle, pivot),
      apart('pivot', 'head', pivot, head),
      apart('pivot', 'foot', pivot, foot),
      apart('head', 'foot', head, foot),
      apart('rearAxle', 'head', rearAxle, head),
      apart('head', 'frontAxle', head, axle),
      apart('foot', 'frontAxle', foot, axle),
      { kind: 'height', a: 'frontAxle', height: machine.frontRadius },
      apart('pivot', 'countershaft', pivot, countershaft),
      apart('head', 'countershaft', head, countershaft),
      apart('pivot', 'sprungCentre', pivot, centre),
      apart('head', 'sprungCentre', head, centre),
      { kind: 'onLine', a: 'trailPoint', from: 'head', to: 'foot' },
      { kind: 'onLine', a: 'trailPoint', from: 'groundRear', to: 'groundFront' },
      { kind: 'distance', a: 'rearAxle', b: 'runRear', length: machine.rearSprocketRadius },
      { kind: 'distance', a: 'countershaft', b: 'runFront', length: machine.frontSprocketRadius },
      { kind: 'square', a: 'rearAxle', b: 'runRear', c: 'runRear', d: 'runFront' },
      { kind: 'square', a: 'countershaft', b: 'runFront', c: 'runRear', d: 'runFront' },
      { kind: 'onLine', a: 'instantCentre', from: 'runRear', to: 'runFront' },
      { kind: 'onLine', a: 'instantCentre', from: 'rearAxle', to: 'pivot' },
    ],
  };
}

/** Where the core has those points: the answer to hold solvers against, or, of another stance, where they begin. */
export function posePoints(stance: Stance): Map<FreePoint, Point> {
  const { machine } = stance;
  const { front } = machine;
  const foot = axisFootInFrame(stance, AXIS);
  const circles = driveCircles(stance);
  const run = topTangent(circles.rear, circles.front);
  const centre = instantCentre({ ...circles, guide: null });
  if (centre === 'parallel') throw new Error('The instant centre of this stance is nowhere');
  const reach = (stance.machine.frontRadius * Math.sin(stance.rake) - stance.offset) / Math.cos(stance.rake);
  return new Map<FreePoint, Point>([
    ['pivot', stance.pose.pivot],
    ['head', onGround(stance.pose, front.head)],
    ['foot', onGround(stance.pose, foot)],
    ['frontAxle', stance.frontAxle],
    ['countershaft', stance.countershaft],
    ['sprungCentre', onGround(stance.pose, machine.places.sprungCentre)],
    ['trailPoint', { x: stance.pose.wheelbase + reach, y: 0 }],
    ['runRear', run.from],
    ['runFront', run.to],
    ['instantCentre', centre],
  ]);
}

/** The largest distance between two lists of the same points, mm. */
export function worstDistance(a: ReadonlyMap<FreePoint, Point>, b: ReadonlyMap<FreePoint, Point>): number {
  return Math.max(
    ...FREE_POINTS.map((key) => distance(a.get(key) ?? { x: NaN, y: NaN }, b.get(key) ?? { x: NaN, y: NaN })),
  );
}
