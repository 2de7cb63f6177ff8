/** The outside radius of a wheel that a row names, with no load on it. */
import type { HeldBike } from './held-bike.ts';
import type { MeasurePartKey } from './measure-parts.ts';

/** mm; null for a part that is no wheel. */
export function wheelRadius(
  { freeRadius }: Pick<HeldBike, 'freeRadius'>,
  wheel: MeasurePartKey,
): number | null {
  if (wheel === 'frontWheel') return freeRadius.front;
  return wheel === 'rearWheel' ? freeRadius.rear : null;
}
