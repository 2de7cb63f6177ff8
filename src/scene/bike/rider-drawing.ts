/** Rider and passenger, pale, in the states that carry them, so that the centre of gravity explains itself. */
import type { Bike } from '../../core/parts/bike.ts';
import type { Point } from '../../core/plane/point.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';
import { anchors, type Anchors } from './silhouette-anchors.ts';

/** A body's drawn measures, mm; they carry no measurement of a person. */
const HEAD = 98;
const NECK = 30;
const TORSO = 96;
const THIGH = 74;
const SHIN = 56;
const ARM = 48;

/** Where a body sits, holds on, rests its feet and has its head, frame coordinates, mm. */
interface Posture {
  readonly hip: Point;
  readonly shoulder: Point;
  readonly hand: Point;
  readonly knee: Point;
  readonly foot: Point;
}

/** Nobody where the state carries nobody: what is aboard stands among the masses that the machine carries. */
export function riderShapes(standing: Stance, bike: Bike): Shape[] {
  const a = anchors(standing, bike);
  const { carried, places } = standing.machine;
  const sits = (key: 'rider' | 'passenger'): boolean =>
    carried.some((each) => each.key === key && each.mass > 0);
  const { passengerSeat } = places;
  return [
    ...(sits('passenger') ? bodyShapes(a, passengerPosture(a, passengerSeat)) : []),
    ...(sits('rider') ? bodyShapes(a, riderPosture(a, bike)) : []),
  ];
}

/** Over the tank of a faired bike, upright behind wide bars otherwise. */
function riderPosture({ sx, sy, hx, hy, cx, cy }: Anchors, bike: Bike): Posture {
  const tucked = bike.bodywork === 'faired';
  const hip = { x: sx + 20, y: sy + 80 };
  const reach = hx - hip.x;
  return {
    hip,
    shoulder: { x: hip.x + (tucked ? 0.64 : 0.5) * reach, y: Math.max(sy, hy) + (tucked ? 110 : 160) },
    hand: tucked ? { x: hx - 50, y: hy + 10 } : { x: hx - 90, y: hy + 108 },
    knee: { x: hip.x + 0.58 * reach, y: sy - 40 },
    foot: { x: Math.min(cx - 30, sx + 60), y: cy - 60 },
  };
}

function passengerPosture({ sx, sy, cx, cy }: Anchors, seat: Point): Posture {
  const hip = { x: seat.x, y: seat.y + 80 };
  return {
    hip,
    shoulder: { x: hip.x + 110, y: hip.y + 330 },
    hand: { x: sx + 30, y: sy + 150 },
    knee: { x: hip.x + 280, y: seat.y - 20 },
    foot: { x: Math.min(cx - 160, hip.x + 140), y: cy + 20 },
  };
}

function bodyShapes({ place }: Anchors, { hip, shoulder, hand, knee, foot }: Posture): Shape[] {
  const lean = Math.atan2(shoulder.x - hip.x, shoulder.y - hip.y);
  const head = {
    x: shoulder.x + (NECK + HEAD * 0.9) * Math.sin(lean),
    y: shoulder.y + (NECK + HEAD * 0.9) * Math.cos(lean) * 0.8,
  };
  const elbow = { x: (shoulder.x + hand.x) / 2 - 30, y: (shoulder.y + hand.y) / 2 - 60 };
  const limb = (widthMm: number, ...way: readonly Point[]): Shape[] => {
    const line = pen(place).move(way[0].x, way[0].y);
    for (const { x, y } of way.slice(1)) line.line(x, y);
    return [line.shape('riderEdge', { widthMm }), line.shape('rider', { widthMm: widthMm - 5 })];
  };
  return [
    ...limb(SHIN, knee, foot, { x: foot.x + 120, y: foot.y - 10 }),
    ...limb(THIGH, hip, knee),
    ...limb(TORSO * 1.9, hip, { x: shoulder.x - 20, y: shoulder.y - 60 }),
    ...limb(ARM, shoulder, elbow, hand),
    pen(place).circle(head.x, head.y, HEAD).shape('riderHead'),
  ];
}
