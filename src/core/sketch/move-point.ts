/** Moving one point of the sketch: the bike that has it there, with every other point left in its place. */
import { inFrame } from '../chassis/pose.ts';
import type { Bike, Frame, RearBrakeMount } from '../parts/bike.ts';
import { asStored } from '../chassis/pivot-move.ts';
import type { Setup } from '../adjusters/setup.ts';
import type { LinkPointKey } from '../linkage/link-drawing.ts';
import { moveBolt } from '../linkage/move-bolt.ts';
import { adjustersIn } from '../linkage/rear-layout-of.ts';
import { moveArm } from '../linkage/move-arm.ts';
import { refused, solved, type Result } from '../numeric/result.ts';
import { distance, type Point } from '../plane/point.ts';
import type { Stance } from '../standing/stance.ts';
import { degrees, radians } from '../units/convert.ts';
import { axisFootInFrame, isBolt, type PointKey } from './points.ts';

export interface Sketched {
  readonly bike: Bike;
  readonly setup: Setup;
}

/**
 * `onOtherPoint`: two points that make a line would fall together. `axleNotBehindPivot`: the arm would not trail, or
 * would have to hang steeper than upright. `linksCannotFollow`: the rear links cannot close with the point there.
 * `noSuchPoint`: the bike's links have no such bolt.
 */
export type MoveReason =
  'notANumber' | 'onOtherPoint' | 'axleNotBehindPivot' | 'linksCannotFollow' | 'noSuchPoint';

/** Points that define a direction must stay at least this far apart, mm. */
const LEAST_APART = 5;

/**
 * The bike with point `key` at `target` (ground frame of `stance`, mm), everything else where it stood in the frame.
 * Moving the pivot re-measures the arm; moving an axle changes arm or fork; moving either end of the steering axis turns
 * it and re-measures fork length and axle lead so that the front axle stays; moving a contact patch sets that tyre's
 * measured diameter. With real links, moving pivot, rear axle or a bolt leaves the (other) bolts in their places and
 * measures the shock anew, so that the wheel hangs where it hung. `stance` must be that of `bike` with `setup`. Refused
 * when `target` is not finite, and for the other reasons of MoveReason.
 */
export function movePoint(
  bike: Bike,
  setup: Setup,
  stance: Stance,
  key: PointKey,
  target: Point,
): Result<Sketched, MoveReason> {
  if (!Number.isFinite(target.x) || !Number.isFinite(target.y)) return refused('notANumber');
  const at = inFrame(stance.pose, target);
  const rearAxle = inFrame(stance.pose, stance.rearAxle);
  const frontAxle = inFrame(stance.pose, stance.frontAxle);
  const { head } = stance.machine.front;
  if (isBolt(key)) return withBolt(bike, setup, stance, key, at);
  switch (key) {
    case 'countershaft':
    case 'sprungCentre':
    case 'seat':
    case 'passengerSeat':
    case 'tank':
    case 'loadMark':
      return solved({ bike: { ...bike, frame: { ...bike.frame, [key]: asStored(at, setup) } }, setup });
    case 'rearPatch': {
      const radius = distance(target, stance.rearAxle);
      return solved({ bike, setup: { ...setup, rearTyre: { diameter: 2 * radius } } });
    }
    case 'frontPatch': {
      const radius = distance(target, stance.frontAxle);
      return solved({ bike, setup: { ...setup, frontTyre: { diameter: 2 * radius } } });
    }
    case 'rearAxle':
      return withArm(bike, setup, stance, at, { x: 0, y: 0 });
    case 'pivot':
      return withArm(bike, setup, stance, rearAxle, at);
    case 'frontAxle':
      return withSteering(bike, setup, stance, head, footOf(bike, stance), at);
    case 'steeringHead':
      return withSteering(bike, setup, stance, at, footOf(bike, stance), frontAxle);
    case 'axisFoot':
      return withSteering(bike, setup, stance, head, at, frontAxle);
  }
}

function footOf(bike: Bike, stance: Stance): Point {
  return axisFootInFrame(stance, bike.frame.headTubeLength);
}

function originMoved(frame: Frame, by: Point): Frame {
  const moved = (p: Point): Point => ({ x: p.x - by.x, y: p.y - by.y });
  return {
    ...frame,
    steeringHead: moved(frame.steeringHead),
    countershaft: moved(frame.countershaft),
    sprungCentre: moved(frame.sprungCentre),
    seat: moved(frame.seat),
    passengerSeat: moved(frame.passengerSeat),
    tank: moved(frame.tank),
    loadMark: moved(frame.loadMark),
  };
}

function brakeMoved(brake: RearBrakeMount, by: Point): RearBrakeMount {
  const { x, y } = brake.stayAnchor;
  return { ...brake, stayAnchor: { x: x - by.x, y: y - by.y } };
}

/**
 * The arm re-measured with the axle at `axle` and the pivot at `pivot` (both in frame coordinates of the stance), at
 * the travel and with the adjusters of the stance. Links keep their bolts; a table keeps its travel. An axle put
 * somewhere by hand no longer stands where a chain puts it.
 */
function withArm(
  bike: Bike,
  setup: Setup,
  stance: Stance,
  axle: Point,
  pivot: Point,
): Result<Sketched, MoveReason> {
  const { rear } = stance.machine;
  const fromPivot = { x: axle.x - pivot.x, y: axle.y - pivot.y };
  const arm = Math.hypot(fromPivot.x, fromPivot.y);
  const axlePosition = rear.arm - rear.slotFrontArm;
  const length = arm - axlePosition;
  if (!(length >= LEAST_APART)) return refused('onOtherPoint');
  const newAngle = Math.atan2(-fromPivot.y, -fromPivot.x);
  const toGround = newAngle + rear.framePitch;
  if (!(Math.cos(toGround) > 0)) return refused('axleNotBehindPivot');
  const { swingarm } = bike;
  const moved = {
    bike: { ...bike, frame: originMoved(bike.frame, pivot), rearBrake: brakeMoved(bike.rearBrake, pivot) },
    setup: setup.chainLinks === null ? setup : { ...setup, axlePosition, chainLinks: null },
  };
  if (swingarm.links !== null) {
    const newHangingSine = Math.sin(toGround) + stance.travel.rear / arm;
    if (!(Math.abs(newHangingSine) < 1)) return refused('axleNotBehindPivot');
    const newHanging = Math.asin(newHangingSine) - rear.framePitch;
    const line = { angle: stance.arm.angle, newAngle, pivot, newHanging };
    const links = moveArm(swingarm.links, line, adjustersIn(setup));
    if ('ok' in links) return refused('linksCannotFollow');
    return solved({ ...moved, bike: { ...moved.bike, swingarm: { ...swingarm, length, links } } });
  }
  if (rear.kind !== 'table') return refused('noSuchPoint');
  const { deliveredSine, toppedOutSine, tableArm, tablePitch } = rear.table;
  const hangingTravel = tableArm * (deliveredSine - toppedOutSine);
  const newSine = Math.sin(toGround) + stance.travel.rear / arm + hangingTravel / length;
  if (!(Math.abs(newSine) < 1)) return refused('axleNotBehindPivot');
  const toppedOutAngleDeg = degrees(Math.asin(newSine) - tablePitch);
  return solved({ ...moved, bike: { ...moved.bike, swingarm: { ...swingarm, length, toppedOutAngleDeg } } });
}

/** One bolt of the links elsewhere, at the travel and with the adjusters of the stance. */
function withBolt(
  bike: Bike,
  setup: Setup,
  { machine, arm }: Stance,
  key: LinkPointKey,
  at: Point,
): Result<Sketched, MoveReason> {
  const { swingarm } = bike;
  if (swingarm.links === null || !(key in swingarm.links)) return refused('noSuchPoint');
  const hanging = Math.asin(machine.rear.toppedOutSine) - machine.rear.framePitch;
  const links = moveBolt(swingarm.links, key, at, { angle: arm.angle, hanging }, adjustersIn(setup));
  if ('ok' in links) return refused('linksCannotFollow');
  return solved({ bike: { ...bike, swingarm: { ...swingarm, links } }, setup });
}

/** The steering re-measured from both ends of the axis and the front axle, all in frame coordinates. */
function withSteering(
  bike: Bike,
  setup: Setup,
  stance: Stance,
  head: Point,
  foot: Point,
  axle: Point,
): Result<Sketched, MoveReason> {
  const headTubeLength = distance(head, foot);
  if (!(headTubeLength >= LEAST_APART)) return refused('onOtherPoint');
  const axisAngle = Math.atan2(foot.x - head.x, head.y - foot.y);
  const drawnAngle = axisAngle - radians(setup.headAngleCupsDeg);
  const legLean = axisAngle - radians(bike.fork.legAngleDeg);
  const half = headTubeLength / 2;
  const fromClampX = axle.x - head.x - setup.clampOffset * Math.cos(axisAngle);
  const fromClampY = axle.y - head.y - setup.clampOffset * Math.sin(axisAngle);
  const leg = fromClampX * Math.sin(legLean) - fromClampY * Math.cos(legLean);
  const axleLead = fromClampX * Math.cos(legLean) + fromClampY * Math.sin(legLean);
  if (!(leg >= LEAST_APART)) return refused('onOtherPoint');
  return solved({
    bike: {
      ...bike,
      frame: {
        ...bike.frame,
        axisAngleDeg: degrees(drawnAngle),
        headTubeLength,
        steeringHead: asStored(
          {
            x: head.x - half * (Math.sin(drawnAngle) - Math.sin(axisAngle)),
            y: head.y + half * (Math.cos(drawnAngle) - Math.cos(axisAngle)),
          },
          setup,
        ),
      },
      fork: {
        ...bike.fork,
        length: leg + stance.travel.front - setup.forkExtenders + setup.forkTubes,
        axleLead,
      },
    },
    setup,
  });
}
