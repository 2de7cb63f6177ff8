/** Virtual work on a bike at rest: what small moves of its two ends set free, from where its parts come to lie. */
import { inFrame, onGround } from '../../src/core/chassis/pose.ts';
import type { RideForces } from '../../src/core/riding/equilibrium/ride-forces.ts';
import { springEnergy } from './spring-energy.ts';
import type { SprungMachine } from '../../src/core/springs/sprung-machine.ts';
import type { RearBrake } from '../../src/core/standing/rear-brake.ts';
import { stance, type Stance, type Travel } from '../../src/core/standing/stance.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { STANDARD_GRAVITY } from '../../src/core/units/convert.ts';

/** Half a move, mm of travel: its square and the rounding over it are both below 1e-6 N. */
const MOVE = 1e-2;

function stood(sprung: SprungMachine, travel: Travel): Stance {
  const on = stance(sprung.machine, travel);
  if (!on.ok) throw new Error(on.reason);
  return on;
}

const axleInFrame = ({ machine, arm }: Stance): Point => ({
  x: -machine.rear.arm * Math.cos(arm.angle),
  y: -machine.rear.arm * Math.sin(arm.angle),
});

/** What the springs carry, each with its place in the frame as the bike stands; rider and loads sit still there. */
function carried(on: Stance): { mass: number; at: Point }[] {
  const onFrame = on.machine.carried.filter(({ key }) => key !== 'swingarm');
  return onFrame.map(({ mass, at, height }) => {
    const mark = onGround(on.pose, at);
    return { mass, at: inFrame(on.pose, { x: mark.x, y: mark.y + height }) };
  });
}

/** The swingarm's own centre of gravity as the arm lies, frame coordinates: one body, not its split. */
function armCentre({ machine, arm }: Stance): Point {
  const { along, above } = machine.armMass;
  const [cos, sin] = [Math.cos(arm.angle), Math.sin(arm.angle)];
  return { x: -along * cos - above * sin, y: -along * sin + above * cos };
}

/** Angle of a line that touches two circles on their upper (1) or lower (−1) sides, from the first, `r1` mm, to the second. */
function touching(from: Point, r1: number, to: Point, r2: number, side: 1 | -1): number {
  const apart = Math.hypot(to.x - from.x, to.y - from.y);
  return Math.atan2(to.y - from.y, to.x - from.x) - side * Math.asin((r1 - r2) / apart);
}

/**
 * Turn of the rear wheel against the frame between two places, the engine and the gearbox held: by the upper run, which
 * is tight on the gas, or by the lower, tight with the throttle closed.
 */
function turnedByDrive(on: Stance, before: Stance, after: Stance, side: 1 | -1): number {
  const m = on.machine;
  if (m.torqueArm !== null) return heldAngle(after, m.torqueArm) - heldAngle(before, m.torqueArm);
  if (m.driveKind === 'shaft' || m.driveKind === 'hub') return after.arm.angle - before.arm.angle;
  const axle = axleInFrame(on);
  const shaft = m.places.countershaft;
  let run = touching(axle, m.rearSprocketRadius, shaft, m.frontSprocketRadius, side);
  const guide = side === 1 ? m.guideRadius : m.lowerGuideRadius;
  if (guide !== null) {
    // Whichever lies further out, the run or the guide about the pivot, carries the chain.
    const out = m.rearSprocketRadius + side * (axle.y * Math.cos(run) - axle.x * Math.sin(run));
    if (out < guide) run = touching(axle, m.rearSprocketRadius, { x: 0, y: 0 }, guide, side);
  }
  const [a, b] = [axleInFrame(before), axleInFrame(after)];
  return (side * ((b.x - a.x) * Math.cos(run) + (b.y - a.y) * Math.sin(run))) / m.rearSprocketRadius;
}

/** Angle in the frame of what holds the wheel's torque: a bracket or housing on a stay, or the arm itself. */
function heldAngle(on: Stance, brake: RearBrake): number {
  if (brake.caliper === 'onArm') return on.arm.angle;
  const { anchor, bracketRadius, stayLength, bracketSide } = brake;
  const axle = axleInFrame(on);
  const apart = Math.hypot(anchor.x - axle.x, anchor.y - axle.y);
  const opening = Math.acos(
    (apart * apart + bracketRadius * bracketRadius - stayLength * stayLength) / (2 * apart * bracketRadius),
  );
  return Math.atan2(anchor.y - axle.y, anchor.x - axle.x) + (bracketSide === 'above' ? opening : -opening);
}

/**
 * Work per mm of travel, N, that gravity, inertia, tyre forces, drag and springs do together when the fork or the rear
 * moves a little; zero at a rest on the springs. Tyre forces act at the tyre's own lowest point: the driven wheel turns
 * as its chain or shaft makes it, a braked wheel as its caliper. Ground's push does no work.
 */
export function workLeft(bike: SprungMachine, travel: Travel, forces: RideForces): Travel {
  const on = stood(bike, travel);
  const parts = carried(on);
  const m = bike.machine;
  const weight = STANDARD_GRAVITY / Math.cos(forces.lean);
  const armMass = m.armMass.mass;
  const mass = m.frontUnsprung + m.rearWheelMass + armMass + parts.reduce((sum, part) => sum + part.mass, 0);
  const drag = forces.drag?.force ?? 0;
  // With the throttle closed drag slows the bike on top of engine and brakes.
  const inertia = STANDARD_GRAVITY * forces.acceleration - ((forces.slowedByDrag ?? 0) * drag) / mass;
  const forward = mass * inertia + drag;
  const wall = forces.wallThrust ?? 0;
  const driving = Math.max(forward, 0) + wall;
  const engine = Math.min(mass * STANDARD_GRAVITY * (forces.engineBraking ?? 0), Math.max(-forward, 0));
  const braking = Math.max(-forward, 0) - engine;
  const blown = inFrame(on.pose, { x: 0, y: forces.drag?.height ?? 0 });
  const between = (before: Stance, after: Stance): number => {
    let work = 0;
    for (const { mass: part, at } of parts) {
      const [a, b] = [onGround(before.pose, at), onGround(after.pose, at)];
      work -= part * (weight * (b.y - a.y) + inertia * (b.x - a.x));
    }
    const [armBefore, armAfter] = [before, after].map((each) => onGround(each.pose, armCentre(each)));
    work -= armMass * (weight * (armAfter.y - armBefore.y) + inertia * (armAfter.x - armBefore.x));
    // Axles keep their height; the rear one is where x is counted from.
    const longer = after.frontAxle.x - before.frontAxle.x;
    const pitched = after.pose.pitch - before.pose.pitch;
    work -= m.frontUnsprung * inertia * longer;
    work -= drag * (onGround(after.pose, blown).x - onGround(before.pose, blown).x);
    work += driving * m.rearRadius * (pitched + turnedByDrive(on, before, after, 1));
    // The wall stands still and holds the front wheel, which turns freely, at its axle.
    work -= wall * longer;
    work -= engine * m.rearRadius * (pitched + turnedByDrive(on, before, after, -1));
    const held = heldAngle(after, bike.brake) - heldAngle(before, bike.brake);
    const rear = braking * (1 - forces.frontBrakeShare);
    if (rear > 0) work -= rear * m.rearRadius * (pitched + held);
    work -= braking * forces.frontBrakeShare * (longer + m.frontRadius * pitched);
    const energy = ({ travel: at, arm }: Stance): number =>
      springEnergy(bike.fork, at.front) + springEnergy(bike.shock, arm.shockStroke);
    return work - (energy(after) - energy(before));
  };
  const moved = (front: number, rear: number): number =>
    between(
      stood(bike, { front: travel.front - front, rear: travel.rear - rear }),
      stood(bike, { front: travel.front + front, rear: travel.rear + rear }),
    ) /
    (2 * MOVE);
  return { front: moved(MOVE, 0), rear: moved(0, MOVE) };
}
