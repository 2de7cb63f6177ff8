/** A place on the frame as a point of the bike: it is stored as one point and moves alone. */
import { asStored } from '../chassis/pivot-move.ts';
import { inFrame, onGround } from '../chassis/pose.ts';
import { succeed } from '../numeric/result.ts';
import { hasRuns } from '../parts/drive-kind.ts';
import { FRAME_PLACES, type FramePlaceKey } from '../parts/frame-places.ts';
import type { BikePoint } from './bike-point.ts';

export function pointOnFrame(key: FramePlaceKey): BikePoint {
  const { label, help, needsRun } = FRAME_PLACES[key];
  return {
    label,
    help,
    applies: ({ drive }) => !needsRun || hasRuns(drive.kind),
    place: ({ machine, pose }) => onGround(pose, machine.places[key]),
    move: ({ bike, setup, stance, target }) => {
      const stored = asStored(inFrame(stance.pose, target), setup);
      return succeed({ bike: { ...bike, frame: { ...bike.frame, [key]: stored } }, setup });
    },
    placedBy: null,
    staysStill: 'steeringHead',
  };
}
