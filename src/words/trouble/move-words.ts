/** Why a point of the bike did not move, in words. */
import type { MoveReason } from '../../core/sketch/bike-point.ts';

/** Where the bike has no pose, and so no place for a hand. */
export const NOTHING_TO_HOLD =
  'The bike cannot stand as it is, so its parts cannot be taken hold of. Undo, or change the figure that stands in the way.';

export const MOVE_WORDS: Readonly<Record<MoveReason, string>> = {
  notANumber: 'That is not a place.',
  axleNotBehindPivot: 'The rear axle has to stay behind the swingarm pivot.',
  onOtherPoint: 'Two points that make a line would fall together there.',
  linksCannotFollow: 'The rear links could not close with the point there.',
  shockTurnsBack: 'With the point there the shock would grow longer as the wheel rises.',
  noSuchPoint: 'This bike has no such point: its rear links are of another layout.',
};
