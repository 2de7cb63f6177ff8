/** Where on a bike the tape, the gauge or the scale of one measurement is held. */
import { measureKindOf } from '../core/measure/kinds/all-kinds.ts';
import { MEASURE_PARTS, type MeasurePartKey } from '../core/measure/held/measure-parts.ts';
import type { MeasureRow } from '../core/measure/sheet.ts';
import type { Bike } from '../core/parts/bike.ts';
import { onLegs } from '../core/chassis/front-end.ts';
import { onGround } from '../core/chassis/pose.ts';
import type { Point } from '../core/plane/point.ts';
import { POINTS } from '../core/sketch/points.ts';
import { chainRun } from '../core/standing/chain-run.ts';
import type { Stance } from '../core/standing/stance.ts';
import type { Hold } from './measure-drawing.ts';
import { trailPlaces } from './construction/construction-drawing.ts';

/** How far along the legs from the top clamp the tube is in sight on most forks, as parts of the leg's length. */
const SIGHT_FROM = 0.35;
const SIGHT_TO = 0.6;

interface OnBike {
  readonly stance: Stance;
  readonly bike: Bike;
}

function onLeg({ machine, pose, travel }: Stance, part: number): Point {
  const { front } = machine;
  const { x, y } = onLegs(front, part * (front.legLength - travel.front), 0);
  return onGround(pose, { x, y });
}

/** A mark is any place that a person chooses; it is drawn where one is easily made. */
function markPlace(stance: Stance, key: MeasurePartKey): Point {
  const { places, front } = stance.machine;
  const at = key === 'markA' ? places.loadMark : key === 'markB' ? places.seat : front.head;
  return onGround(stance.pose, at);
}

function placeOf({ stance, bike }: OnBike, key: MeasurePartKey): Point | null {
  if (Object.hasOwn(POINTS, key)) return POINTS[key as keyof typeof POINTS].place(stance, bike);
  if (MEASURE_PARTS[key].shape === 'mark') return markPlace(stance, key);
  switch (key) {
    case 'frontWheel':
      return stance.frontAxle;
    case 'rearWheel':
    case 'rearSprocket':
      return stance.rearAxle;
    case 'frontSprocket':
      return stance.countershaft;
    default:
      return null;
  }
}

/** Both ends of a line that a gauge is laid along, the one where the reference is drawn first. */
function lineEnds(on: OnBike, key: MeasurePartKey): readonly [Point, Point] | null {
  const { stance } = on;
  const { machine, rearAxle, countershaft, pose } = stance;
  const beside = (centre: Point, radius: number, way: Point, side: 1 | -1): Point => ({
    x: centre.x - side * radius * way.y,
    y: centre.y + side * radius * way.x,
  });
  const run = (way: Point, side: 1 | -1): readonly [Point, Point] => [
    beside(rearAxle, machine.rearSprocketRadius, way, side),
    beside(countershaft, machine.frontSprocketRadius, way, side),
  ];
  switch (key) {
    case 'forkLeg':
      return [onLeg(stance, 1), onLeg(stance, 0)];
    case 'swingarm':
      return [pose.pivot, rearAxle];
    case 'upperRun':
      return run(chainRun(stance, 'upper').way, 1);
    case 'lowerRun':
      return run(chainRun(stance, 'lower').way, -1);
    case 'frameRail':
      return [pose.pivot, onGround(pose, machine.front.head)];
    default:
      return null;
  }
}

function roundOf(on: OnBike, key: MeasurePartKey): Hold | null {
  const centre = placeOf(on, key);
  const { machine } = on.stance;
  const radius: Partial<Readonly<Record<MeasurePartKey, number>>> = {
    frontWheel: machine.frontRadius,
    rearWheel: machine.rearRadius,
    frontSprocket: machine.frontSprocketRadius,
    rearSprocket: machine.rearSprocketRadius,
  };
  const size = radius[key];
  return centre === null || size === undefined ? null : { tool: 'round', centre, radius: size };
}

function tape(from: Point | null, to: Point | null, along: 'straight' | 'level' | 'upright'): Hold | null {
  return from === null || to === null ? null : { tool: 'tape', from, to, along };
}

const onFloor = (at: Point | null): Point | null => (at === null ? null : { x: at.x, y: 0 });

/** Null for a part that the bike does not have. Ground frame of the stance. */
export function holdOf({ kind, parts }: Pick<MeasureRow, 'kind' | 'parts'>, on: OnBike): Hold | null {
  const { stance } = on;
  const [first, second] = parts;
  const at = (key: MeasurePartKey | undefined): Point | null => (key === undefined ? null : placeOf(on, key));
  switch (measureKindOf(kind).drawnAs) {
    case 'tape':
      return tape(at(first), at(second), 'straight');
    case 'levelTape':
      return tape(at(first), at(second), 'level');
    case 'uprightTape':
      return tape(at(first), at(second), 'upright');
    case 'tapeFromFloor':
      return tape(onFloor(at(first)), at(first), 'straight');
    case 'trail': {
      const { patch, axisGround } = trailPlaces(stance);
      return tape(patch, axisGround, 'straight');
    }
    case 'wheelbase':
      return tape({ x: 0, y: 0 }, { x: stance.pose.wheelbase, y: 0 }, 'straight');
    case 'steeringAxis': {
      const { axisGround, head } = trailPlaces(stance);
      return { tool: 'gauge', from: axisGround, to: head, against: 'upright' };
    }
    case 'gauge': {
      const ends = first === undefined ? null : lineEnds(on, first);
      if (ends === null) return null;
      const [from, to] = ends;
      return { tool: 'gauge', from, to, against: first === 'forkLeg' ? 'upright' : 'level' };
    }
    case 'offset': {
      const { frontAxle, offset, rake } = stance;
      const onAxis = { x: frontAxle.x - offset * Math.cos(rake), y: frontAxle.y - offset * Math.sin(rake) };
      return tape(onAxis, frontAxle, 'straight');
    }
    case 'scale': {
      const under = onFloor(at(first));
      return under === null ? null : { tool: 'scale', under: [under] };
    }
    case 'tube':
      return tape(onLeg(stance, SIGHT_FROM), onLeg(stance, SIGHT_TO), 'straight');
    case 'shock': {
      const { shockOnFrame, shockOnArm, shockOnRocker, shockFarEnd } = POINTS;
      const place = ({ place: find }: typeof shockOnFrame): Point | null => find(stance, on.bike);
      return (
        tape(place(shockOnFrame), place(shockOnArm), 'straight') ??
        tape(place(shockOnRocker), place(shockFarEnd), 'straight')
      );
    }
    case 'round':
      return first === undefined ? null : roundOf(on, first);
    case null:
      return null;
  }
}
