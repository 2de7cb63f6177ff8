/** What holds parts on the bike: subframe, engine mounts, brackets of shock and links, stays of mudguards; it carries no measurement. */
import { linkPoints } from '../../core/linkage/link-points.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { onGround } from '../../core/chassis/pose.ts';
import type { Point } from '../../core/plane/point.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { linkPlaces, shockEyes } from './linkage-drawing.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';
import { anchors } from './silhouette-anchors.ts';
import { shockEnds } from './suspension-drawing.ts';

/** Drawn thicknesses, mm. */
const RAIL = 22;
const BRACKET = 26;
const STAY = 9;
const EDGE = 5;
/** Where a front mudguard's stays reach it, radians from forward, and how far it stands off the tyre, mm. */
const STAY_ANGLES = [1.05, 2.25];
const GUARD_GAP = 14;
/** The brake caliper of the front wheel: its middle behind the leg, and its size about the disc, mm. */
const CALIPER_BEHIND = 0.55;

function tube(widthMm: number, ...way: readonly Point[]): Shape[] {
  const line = pen().move(way[0].x, way[0].y);
  for (const { x, y } of way.slice(1)) line.line(x, y);
  return [line.shape('tubeEdge', { widthMm }), line.shape('tube', { widthMm: widthMm - EDGE })];
}

/** Subframe, engine mounts and the brackets of shock and links; they lie behind everything else of the frame. */
export function bracketShapes(standing: Stance, bike: Bike): Shape[] {
  const { place, hx, hy, sx, sy, cx, cy, lx, ly } = anchors(standing, bike);
  const on = (x: number, y: number): Point => onGround(standing.pose, { x, y });
  const { x: px, y: py } = place;
  const plate = on(-24, 100);
  const shapes: Shape[] = [];
  if (bike.bodywork === 'faired')
    shapes.push(
      ...tube(RAIL, plate, on(sx - 40, sy - 96), on(lx + 10, ly - 14)),
      ...tube(RAIL, on(hx * 0.45, hy * 0.72), on(sx + 60, sy - 60), on(lx + 10, ly - 14)),
    );
  else if (bike.bodywork === 'offRoad')
    shapes.push(...tube(RAIL, plate, on(sx - 60, sy - 120), on(lx, ly - 40)));
  else shapes.push(...tube(RAIL, on(-6, 40), on(sx - 60, sy - 50), on(lx - 60, ly - 58)));
  // The engine hangs at the pivot and from the backbone.
  shapes.push(
    ...tube(BRACKET, { x: px, y: py }, on(cx + 40, cy + 30)),
    ...tube(BRACKET, on(-4, -60), on(cx + 60, cy - 110)),
  );
  if (bike.bodywork !== 'faired')
    shapes.push(...tube(RAIL, on(cx + 180, cy + 60), on((sx + hx) / 2, hy - 70)));
  return [...shapes, ...shockBrackets(standing, bike, plate)];
}

function shockBrackets(standing: Stance, bike: Bike, plate: Point): Shape[] {
  const { top } = shockEyes(standing) ?? shockEnds(standing, bike);
  const { lx, ly } = anchors(standing, bike);
  const places = linkPlaces(standing);
  const pivot = standing.pose.pivot;
  const shapes: Shape[] =
    bike.bodywork === 'naked'
      ? tube(BRACKET, top, onGround(standing.pose, { x: lx + 30, y: ly - 56 }))
      : isOnArm(standing)
        ? []
        : tube(BRACKET, top, plate);
  const rodOnFrame = places?.get('rodOnFrame');
  const rodOnArm = places?.get('rodOnArm');
  const rocker = places?.get('rockerPivot');
  if (rodOnFrame !== undefined) shapes.push(...tube(BRACKET, rodOnFrame, pivot));
  if (rodOnArm !== undefined) shapes.push(...tube(BRACKET, rodOnArm, nearestOnArm(standing, rodOnArm)));
  if (rocker !== undefined)
    shapes.push(...tube(BRACKET, rocker, rodOnFrame === undefined ? pivot : nearestOnArm(standing, rocker)));
  return shapes;
}

/** Whether the shock's upper eye rides on the swingarm. */
function isOnArm({ machine: { rear }, arm }: Stance): boolean {
  const points = rear.kind === 'links' ? linkPoints(rear.links, arm.angle) : null;
  return points?.some(({ key, part }) => key === 'shockFarEnd' && part === 'arm') === true;
}

/** The foot of a place on the line from pivot to axle. */
function nearestOnArm({ pose: { pivot }, rearAxle }: Stance, place: Point): Point {
  const along = { x: rearAxle.x - pivot.x, y: rearAxle.y - pivot.y };
  const part =
    ((place.x - pivot.x) * along.x + (place.y - pivot.y) * along.y) / (along.x ** 2 + along.y ** 2);
  return { x: pivot.x + part * along.x, y: pivot.y + part * along.y };
}

/** Stays from the front axle to the mudguard that rides with the wheel, and the caliper on the fork leg. */
export function frontStayShapes(standing: Stance, bike: Bike, disc: number): Shape[] {
  const { frontAxle, machine } = standing;
  const reach = machine.frontRadius + GUARD_GAP;
  const at = (angle: number, radius: number): Point => ({
    x: frontAxle.x + radius * Math.cos(angle),
    y: frontAxle.y + radius * Math.sin(angle),
  });
  const stays =
    bike.bodywork === 'offRoad'
      ? []
      : STAY_ANGLES.flatMap((angle) => tube(STAY, frontAxle, at(angle, reach)));
  const middle = Math.PI / 2 + machine.front.legLean + CALIPER_BEHIND;
  const corners = [
    at(middle - 0.24, disc - 42),
    at(middle - 0.2, disc + 16),
    at(middle + 0.2, disc + 16),
    at(middle + 0.24, disc - 42),
  ];
  return [
    ...stays,
    pen()
      .move(corners[0].x, corners[0].y)
      .line(...corners.slice(1).flatMap(({ x, y }) => [x, y]))
      .close()
      .shape('clamp'),
  ];
}
