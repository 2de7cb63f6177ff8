/** A bolt of the rear links as a point of the bike: a layout has some of them. */
import { inFrame, onGround } from '../chassis/pose.ts';
import type { LinkPointKey } from '../linkage/link-drawing.ts';
import { linkPoints } from '../linkage/link-points.ts';
import { moveBolt } from '../linkage/move-bolt.ts';
import { adjustersIn } from '../linkage/rear-layout-of.ts';
import { fail, succeed } from '../numeric/result.ts';
import { moveReasonOf, type BikePoint } from './bike-point.ts';

/** A bolt that moves alone: wheel and other bolts stay where the stance has them. */
export function bolt(key: LinkPointKey, label: string, help: string): BikePoint {
  return {
    label,
    help,
    note: 'Moved here the swingarm keeps its place and the shock is measured anew; under Rear suspension the shock keeps its length.',
    applies: ({ swingarm }) => swingarm.links !== null && key in swingarm.links,
    place: ({ machine, arm, pose }) => {
      const { rear } = machine;
      const points = rear.kind === 'links' ? linkPoints(rear.links, arm.angle) : null;
      const found = points?.find((point) => point.key === key);
      return found === undefined ? null : onGround(pose, found.place);
    },
    move: ({ bike, setup, stance, target }) => {
      const { swingarm } = bike;
      const { machine, arm, pose } = stance;
      if (swingarm.links === null || !(key in swingarm.links)) return fail('noSuchPoint');
      const hanging = Math.asin(machine.rear.toppedOutSine) - machine.rear.framePitch;
      const posture = { angle: arm.angle, hanging };
      const links = moveBolt(swingarm.links, key, inFrame(pose, target), posture, adjustersIn(setup));
      if ('ok' in links) return fail(moveReasonOf(links));
      return succeed({ bike: { ...bike, swingarm: { ...swingarm, links } }, setup });
    },
    placedBy: null,
    staysStill: 'steeringHead',
  };
}
