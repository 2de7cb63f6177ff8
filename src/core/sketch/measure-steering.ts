/** Measures the steering anew from both ends of its axis and the front axle. */
import { asStored } from '../chassis/pivot-move.ts';
import { inFrame } from '../chassis/pose.ts';
import { fail, succeed, type Result } from '../numeric/result.ts';
import type { FramePoint } from '../parts/frame-point.ts';
import { distance, type Point } from '../plane/point.ts';
import type { Stance } from '../standing/stance.ts';
import { degrees, radians } from '../units/convert.ts';
import type { MoveReason, Sketched } from './bike-point.ts';
import { LEAST_APART } from './least-apart.ts';

/** What steering is measured from, frame coordinates of the stance. */
export interface SteeringPoints {
  readonly head: FramePoint;
  readonly foot: FramePoint;
  readonly axle: FramePoint;
}

/** Where the steering axis passes the bottom of the head tube, frame coordinates. */
export function axisFootInFrame({ machine }: Stance, headTubeLength: number): Point {
  const { head, axisAngle } = machine.front;
  return {
    x: head.x + headTubeLength * Math.sin(axisAngle),
    y: head.y - headTubeLength * Math.cos(axisAngle),
  };
}

/** The steering re-measured with some of its points elsewhere and the others where they are. */
export function measureSteering(
  { bike, setup, stance }: Sketched & { readonly stance: Stance },
  elsewhere: Partial<SteeringPoints>,
): Result<Sketched, MoveReason> {
  const {
    head = stance.machine.front.head,
    foot = axisFootInFrame(stance, bike.frame.headTubeLength),
    axle = inFrame(stance.pose, stance.frontAxle),
  } = elsewhere;
  const headTubeLength = distance(head, foot);
  if (!(headTubeLength >= LEAST_APART)) return fail('onOtherPoint');
  const axisAngle = Math.atan2(foot.x - head.x, head.y - foot.y);
  const drawnAngle = axisAngle - radians(setup.headAngleCupsDeg);
  const legLean = axisAngle - radians(bike.fork.legAngleDeg);
  const half = headTubeLength / 2;
  const fromClampX = axle.x - head.x - setup.clampOffset * Math.cos(axisAngle);
  const fromClampY = axle.y - head.y - setup.clampOffset * Math.sin(axisAngle);
  const leg = fromClampX * Math.sin(legLean) - fromClampY * Math.cos(legLean);
  const axleLead = fromClampX * Math.cos(legLean) + fromClampY * Math.sin(legLean);
  if (!(leg >= LEAST_APART)) return fail('onOtherPoint');
  return succeed({
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
