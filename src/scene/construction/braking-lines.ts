/** The lines along which engine braking and the rear brake act at the rear patch, and how they come about. */
import { onGround } from '../../core/chassis/pose.ts';
import { hasRuns } from '../../core/parts/drive-kind.ts';
import { crossing, type Line } from '../../core/plane/line.ts';
import type { Point } from '../../core/plane/point.ts';
import { engineBrakingSlopeOf } from '../../core/standing/drive-slopes.ts';
import { rearBrakeSlope, stayPlaces } from '../../core/standing/rear-brake.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { lowerRun, drivePlaces } from '../chain/chain-drawing.ts';
import { carriedOn, segment } from '../shapes/outline.ts';
import type { Role, Shape } from '../shapes/shape.ts';
import { zonesEnd } from './zones.ts';

/** A crossing further away than this many wheelbases is not drawn. */
const FARTHEST_CROSSING = 3;
/** How far a line runs on past its crossing, mm. */
const PAST_CROSSING = 40;

/** Slope of the engine-braking line, rise per run toward the front. */
export function engineBrakingLine(on: Stance): number {
  const { swingarm, chain } = engineBrakingSlopeOf(on);
  return swingarm + chain;
}

/** Slope of the rear brake's line; null where the caliper's stay cannot hold. */
export function brakeLine({ machine, arm, pose }: Stance): number | null {
  const slope = rearBrakeSlope(machine.brake, machine, arm.angle, pose.pivot);
  return typeof slope === 'number' ? slope : null;
}

/** The caliper's stay on the ground frame, from the bracket's bolt to the frame's; null without a stay. */
export function stayLine(on: Stance): Line | null {
  const { brake, rear } = on.machine;
  if (brake.caliper === 'onArm') return null;
  const places = stayPlaces(brake, rear.arm, on.arm.angle);
  if (!places.ok) return null;
  return {
    from: onGround(on.pose, places.bolt),
    to: onGround(on.pose, places.anchor),
  };
}

function swingarmLine(on: Stance): Line {
  return { from: on.rearAxle, to: on.pose.pivot };
}

/** Where a line of force crosses the swingarm line, near enough to be drawn; null otherwise. */
function shownCrossing(on: Stance, line: Line): Point | null {
  const at = crossing(swingarmLine(on), line);
  if (at === 'parallel') return null;
  return Math.hypot(at.x, at.y) < FARTHEST_CROSSING * on.pose.wheelbase ? at : null;
}

/** A line of force and the swingarm line up to where they cross, with a ring there. */
function crossingShapes(on: Stance, role: Role, line: Line, lit: Role): Shape[] {
  const at = shownCrossing(on, line);
  if (at === null) return [carriedOn(role, line.from, line.to, on.pose.wheelbase)];
  const arm = swingarmLine(on);
  const past = at.x + Math.sign(at.x - line.from.x) * PAST_CROSSING;
  // A crossing behind the line's beginning is reached from its other end.
  const ahead = (at.x - line.from.x) * (line.to.x - line.from.x) >= 0;
  return [
    ahead ? carriedOn(role, line.from, line.to, past) : carriedOn(role, line.to, line.from, past),
    at.x > arm.from.x
      ? carriedOn('swingarmLine', arm.from, arm.to, past)
      : carriedOn('swingarmLine', arm.to, arm.from, past),
    { kind: 'mark', role: lit, at, sign: 'ring', radiusPx: 6 },
  ];
}

function fromPatch(on: Stance, role: Role, slope: number): Shape {
  const end = zonesEnd(on);
  return segment(role, { x: 0, y: 0 }, { x: end, y: slope * end });
}

/** Engine braking: the tight lower run to its crossing with the swingarm line, and the line through it. */
export function engineBrakingShapes(on: Stance): Shape[] {
  const line = fromPatch(on, 'engineBrakingLine', engineBrakingLine(on));
  const [run] = hasRuns(on.machine.driveKind) ? lowerRun(drivePlaces(on)) : [];
  if (run === undefined) return [line];
  return [line, ...crossingShapes(on, 'chainLine', run, 'brakeCrossing')];
}

/** The rear brake: the caliper's stay to its crossing with the swingarm line, and the line through it. */
export function brakeLineShapes(on: Stance): Shape[] {
  const slope = brakeLine(on);
  if (slope === null) return [];
  const line = fromPatch(on, 'brakeLine', slope);
  const stay = stayLine(on);
  return stay === null ? [line] : [line, ...crossingShapes(on, 'stayLine', stay, 'brakeCrossing')];
}
