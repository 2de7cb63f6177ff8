/** Travel, clearance and wheel loads laid over the bike: what the readings of the suspension are measured along. */
import { onGround } from '../../core/chassis/pose.ts';
import { frontAxle, onLegs } from '../../core/chassis/front-end.ts';
import { suspensionAt } from '../../core/linkage/suspension.ts';
import type { Point } from '../../core/plane/point.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { pen, segment } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** Pieces in which the rear axle's way is drawn. */
const PIECES = 16;
/** Length of an arrow for each newton of load, mm: the weight of a tonne would be as long as the bike. */
const MM_PER_NEWTON = 0.12;
/** Half of the line that stands for the clamp's underside, mm. */
const CLAMP_HALF = 70;

/** A place on the middle of the legs, `down` mm below the top clamp and `ahead` mm square ahead of them. */
function legPlace(on: Stance, down: number, ahead: number): Point {
  const { x, y } = onLegs(on.machine.front, down, ahead);
  return onGround(on.pose, { x, y });
}

/** Where the front axle is with so much travel used, the frame as it stands. */
export function frontAxleAt(on: Stance, travel: number): Point {
  const { x, y } = frontAxle(on.machine.front, travel);
  return onGround(on.pose, { x, y });
}

/** The front axle's way, from fully extended to fully in. */
export function forkTravelShapes(on: StandingBike): Shape[] {
  const most = on.sprung?.most.front ?? on.machine.front.travel;
  const [from, to] = [frontAxleAt(on, 0), frontAxleAt(on, most)];
  return [segment('dimension', from, to, { arrows: 'both' }), ...endTicks(from, to)];
}

/** The rear axle's way about the pivot, from hanging to the end of the travel. */
export function rearTravelShapes(on: StandingBike): Shape[] {
  const { rear } = on.machine;
  const most = on.sprung?.most.rear ?? rear.wheelTravel;
  const way: Point[] = [];
  for (let piece = 0; piece <= PIECES; piece++) {
    const at = suspensionAt(rear, (most * piece) / PIECES);
    if (at.ok)
      way.push(onGround(on.pose, { x: -rear.arm * Math.cos(at.angle), y: -rear.arm * Math.sin(at.angle) }));
  }
  if (way.length < 2) return [];
  const [first, ...rest] = way;
  const line = pen().move(first.x, first.y);
  for (const place of rest) line.line(place.x, place.y);
  return [line.shape('dimension', { arrows: 'both' }), ...endTicks(first, way[way.length - 1])];
}

/** Short lines across both ends of a way. */
function endTicks(from: Point, to: Point): Shape[] {
  const length = Math.max(1e-6, Math.hypot(to.x - from.x, to.y - from.y));
  const x = (-30 * (to.y - from.y)) / length;
  const y = (30 * (to.x - from.x)) / length;
  return [from, to].map((end) =>
    segment('dimension', { x: end.x - x, y: end.y - y }, { x: end.x + x, y: end.y + y }),
  );
}

/** The tube that stands out of the top clamp, from the least that it must to where it ends. */
export function forkTopShapes(on: Stance): Shape[] {
  const { tubeSpare } = on.machine.front;
  if (tubeSpare === null) return [];
  const top = on.machine.front.tubeAbove;
  const from = legPlace(on, tubeSpare - top, 0);
  const to = legPlace(on, -top, 0);
  return [segment('dimension', from, to, { arrows: 'both' }), ...endTicks(from, to)];
}

/** Where the gap between tyre and lower clamp is, with the fork fully in; null while the clamp is not known. */
export function clampGapPlaces(on: Stance): { tyre: Point; clamp: Point } | null {
  const { front, frontRadius } = on.machine;
  if (front.lowerClampDepth === null) return null;
  const tread = front.legLength - front.travel - frontRadius;
  return {
    tyre: legPlace(on, tread, front.axleLead),
    clamp: legPlace(on, front.lowerClampDepth, front.axleLead),
  };
}

/** The front tyre with the fork fully in, the lower clamp's underside, and the gap between them. */
export function clampGapShapes(on: Stance): Shape[] {
  const places = clampGapPlaces(on);
  if (places === null) return [];
  const { front, frontRadius } = on.machine;
  const depth = front.lowerClampDepth ?? 0;
  const axle = frontAxleAt(on, front.travel);
  return [
    pen().circle(axle.x, axle.y, frontRadius).shape('heightLine'),
    segment(
      'dimension',
      legPlace(on, depth, front.axleLead - CLAMP_HALF),
      legPlace(on, depth, front.axleLead + CLAMP_HALF),
    ),
    segment('dimension', places.tyre, places.clamp, { arrows: 'both' }),
  ];
}

/** Both wheel loads as arrows under the patches; nothing in a ride state without an equilibrium. */
export function wheelLoadShapes({ equilibrium, pose }: StandingBike): Shape[] {
  if (equilibrium === undefined) return [];
  const arrow = (x: number, load: number): Shape =>
    segment('dimension', { x, y: -load * MM_PER_NEWTON }, { x, y: 0 }, { arrows: 'end' });
  return [arrow(0, equilibrium.rear.wheelLoad), arrow(pose.wheelbase, equilibrium.front.wheelLoad)];
}
