/** Moves one point of the bike and leaves every other in its place. */
import { fail, type Result } from '../numeric/result.ts';
import type { Move, MoveReason, Sketched } from './bike-point.ts';
import { POINTS, type PointKey } from './points.ts';

/**
 * The bike with point `key` at the target (ground frame of `stance`, mm), everything else where it stood in the frame.
 * Moving the pivot re-measures the arm; moving an axle changes arm or fork; moving either end of the steering axis turns
 * it and re-measures fork length and axle lead so that the front axle stays; moving a contact patch sets that tyre's
 * measured diameter. With real links, moving pivot, rear axle or a bolt leaves the (other) bolts in their places and
 * measures the shock anew, so that the wheel hangs where it hung. The stance must be that of the bike with its setup. Refused
 * when the target is not finite, and for the other reasons of MoveReason.
 */
export function movePoint(key: PointKey, move: Move): Result<Sketched, MoveReason> {
  if (!Number.isFinite(move.target.x) || !Number.isFinite(move.target.y)) return fail('notANumber');
  return POINTS[key].move(move);
}
