/** A part that may touch the ground as a point of the bike: it is stored as one point and moves alone. */
import { asStored, fromPivot } from '../chassis/pivot-move.ts';
import { inFrame, onGround } from '../chassis/pose.ts';
import { succeed } from '../numeric/result.ts';
import { TOUCH_PARTS, type TouchKey } from '../parts/touch-parts.ts';
import type { BikePoint } from './bike-point.ts';

export function touchPoint(key: TouchKey): BikePoint {
  const { label, help } = TOUCH_PARTS[key];
  return {
    label,
    help,
    applies: ({ frame }) => frame.touching[key].halfWidth !== null,
    place: ({ machine, pose }, { frame }) => {
      const { halfWidth, ...at } = frame.touching[key];
      return halfWidth === null ? null : onGround(pose, fromPivot(at, machine));
    },
    move: ({ bike, setup, stance, target }) => {
      const stored = asStored(inFrame(stance.pose, target), setup);
      const { halfWidth } = bike.frame.touching[key];
      const touching = { ...bike.frame.touching, [key]: { ...stored, halfWidth } };
      return succeed({ bike: { ...bike, frame: { ...bike.frame, touching } }, setup });
    },
    placedBy: null,
    staysStill: 'steeringHead',
  };
}
