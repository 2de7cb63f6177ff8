/** How far the axle has moved in its slot, in words. */
import { directionWord, type ShownChange } from './shown-change.ts';

/** "Axle 5.0 mm back", from the change of its place back from the slot's front. */
export function axleMoved(change: ShownChange): string {
  return `Axle ${change.amount} ${directionWord(change, { more: 'back', less: 'forward', same: 'as before' })}`;
}
