/** The outside radius of a wheel that a row names. */
import type { HeldBike } from './held-bike.ts';
import type { MeasurePartKey } from './measure-parts.ts';

/** mm; null for a part that is no wheel. */
export function wheelRadius(
  { frontRadius, rearRadius }: Pick<HeldBike, 'frontRadius' | 'rearRadius'>,
  wheel: MeasurePartKey,
): number | null {
  if (wheel === 'frontWheel') return frontRadius;
  return wheel === 'rearWheel' ? rearRadius : null;
}
