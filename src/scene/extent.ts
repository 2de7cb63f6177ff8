/** What must be seen of a standing bike when it is fitted into the window. */
import { onGround } from '../core/chassis/pose.ts';
import type { Stance } from '../core/standing/stance.ts';
import type { Extent } from './shapes/view.ts';
import { zonesEnd } from './construction/zones.ts';

/** Room for the tail behind the load mark, a rider's helmet above the steering head and the wheelbase line below, mm. */
const BEHIND = 170;
const ABOVE = 285;
const BELOW = 215;

export function bikeExtent(standing: Stance): Extent {
  const { machine } = standing;
  const head = onGround(standing.pose, machine.front.head);
  const tail = onGround(standing.pose, machine.places.loadMark);
  return {
    left: Math.min(-machine.rearRadius, tail.x - BEHIND) - 20,
    right: zonesEnd(standing),
    bottom: -BELOW,
    top: Math.max(head.y, tail.y) + ABOVE,
  };
}
