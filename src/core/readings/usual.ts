/** Whether a reading lies where motorcycles lie; words about feel stop where none does. */
import type { Reading } from './reading.ts';

/** True where no motorcycle has such a reading. `metric` in its file unit; a reading without a usual range never is. */
export function isBeyondUsual({ usual }: Reading, metric: number): boolean {
  return usual !== undefined && (metric < usual.least || metric > usual.most);
}
