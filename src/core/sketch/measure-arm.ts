/** Measures the swingarm anew from its two ends. */
import { moveArm } from '../linkage/move-arm.ts';
import { adjustersIn } from '../linkage/rear-layout-of.ts';
import { fail, succeed, type Result } from '../numeric/result.ts';
import type { Frame, HousingMount, RearBrakeMount } from '../parts/bike.ts';
import { eachFramePlace } from '../parts/frame-places.ts';
import type { Point } from '../plane/point.ts';
import type { Stance } from '../standing/stance.ts';
import { degrees } from '../units/convert.ts';
import { moveReasonOf, type MoveReason, type Sketched } from './bike-point.ts';
import { LEAST_APART } from './least-apart.ts';

/** Both ends of the arm, frame coordinates of the stance. */
interface ArmEnds {
  readonly axle: Point;
  readonly pivot: Point;
}

/**
 * The arm re-measured with the axle at `axle` and the pivot at `pivot` (both in frame coordinates of the stance), at
 * the travel and with the adjusters of the stance. Links keep their bolts; a table keeps its travel. A chain no
 * longer places an axle that a hand has moved.
 */
export function measureArm(
  { bike, setup, stance }: Sketched & { readonly stance: Stance },
  { axle, pivot }: ArmEnds,
): Result<Sketched, MoveReason> {
  const { rear } = stance.machine;
  const fromPivot = { x: axle.x - pivot.x, y: axle.y - pivot.y };
  const arm = Math.hypot(fromPivot.x, fromPivot.y);
  const axlePosition = rear.arm - rear.slotFrontArm;
  const length = arm - axlePosition;
  if (!(length >= LEAST_APART)) return fail('onOtherPoint');
  const newAngle = Math.atan2(-fromPivot.y, -fromPivot.x);
  const toGround = newAngle + rear.framePitch;
  if (!(Math.cos(toGround) > 0)) return fail('axleNotBehindPivot');
  const { swingarm } = bike;
  const moved = {
    bike: {
      ...bike,
      frame: moveOrigin(bike.frame, pivot),
      rearBrake: moveBrake(bike.rearBrake, pivot),
      housing: housingMoved(bike.housing, pivot),
    },
    setup: setup.chainLinks === null ? setup : { ...setup, axlePosition, chainLinks: null },
  };
  if (swingarm.links !== null) {
    const newHangingSine = Math.sin(toGround) + stance.travel.rear / arm;
    if (!(Math.abs(newHangingSine) < 1)) return fail('axleNotBehindPivot');
    const newHanging = Math.asin(newHangingSine) - rear.framePitch;
    const line = { angle: stance.arm.angle, newAngle, pivot, newHanging };
    const links = moveArm(swingarm.links, line, adjustersIn(setup));
    if ('ok' in links) return fail(moveReasonOf(links));
    return succeed({ ...moved, bike: { ...moved.bike, swingarm: { ...swingarm, length, links } } });
  }
  if (rear.kind !== 'table') return fail('noSuchPoint');
  const { deliveredSine, toppedOutSine, tableArm, tablePitch } = rear.table;
  const hangingTravel = tableArm * (deliveredSine - toppedOutSine);
  const newSine = Math.sin(toGround) + stance.travel.rear / arm + hangingTravel / length;
  if (!(Math.abs(newSine) < 1)) return fail('axleNotBehindPivot');
  const toppedOutAngleDeg = degrees(Math.asin(newSine) - tablePitch);
  return succeed({ ...moved, bike: { ...moved.bike, swingarm: { ...swingarm, length, toppedOutAngleDeg } } });
}

function moveOrigin(frame: Frame, by: Point): Frame {
  const moved = (p: Point): Point => ({ x: p.x - by.x, y: p.y - by.y });
  return {
    ...frame,
    ...eachFramePlace((key) => moved(frame[key])),
    steeringHead: moved(frame.steeringHead),
  };
}

function moveBrake(brake: RearBrakeMount, by: Point): RearBrakeMount {
  const { x, y } = brake.stayAnchor;
  return { ...brake, stayAnchor: { x: x - by.x, y: y - by.y } };
}

function housingMoved(housing: HousingMount, by: Point): HousingMount {
  const { x, y } = housing.armAnchor;
  return { ...housing, armAnchor: { x: x - by.x, y: y - by.y } };
}
