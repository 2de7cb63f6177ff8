/** Words for what is unsure about a measured bike where it is drawn: on the side view and on curves. */
import { SPRING_DOUBT } from '../../core/measure/spread/spring-doubt.ts';
import type { Reading } from '../../core/readings/reading.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { COVERAGE, plusMinus } from '../plus-minus.ts';

/** What the ellipses on the side view are, and how many times as large they are drawn, as short as it is on a close-up. */
export function spreadScaleWords(scale: number): string {
  return scale === 1 ? '± of points' : `± of points ×${scale}`;
}

/** What a ± counts for springs that nobody measured, and how it gets smaller. */
export function springDoubtWords(): string {
  const part = Math.round(100 * COVERAGE * SPRING_DOUBT);
  return `Where springs carry the bike, how far they move it from where it was measured counts as ±${part} %. Rows with the rider on make that smaller.`;
}

/** What the band along a curve says, from the standard deviations at its places; null where there is no band to speak of. */
export function bandAlongWords(
  deviations: readonly (number | null)[] | null,
  { quantity }: Pick<Reading, 'quantity'>,
  style: NumberStyle,
): string | null {
  if (deviations === null) return null;
  const known = deviations.filter((u) => u !== null);
  if (known.length === 0)
    return 'Now has no band: this curve depends on something that nobody has measured, such as a spring.';
  const [least, most] = [Math.min(...known), Math.max(...known)].map((u) => plusMinus(u, quantity, style));
  if (most === 'exact') return 'The measurements make this curve sure to its last digit.';
  const width = least === most || least === 'exact' ? `up to ${most}` : `${least} to ${most}`;
  return `Dotted band: the measurements leave Now ${width} (95 %). They are wrong alike in each curve of this bike, so the gap between two of them is surer.`;
}

/** How many standard deviations the edge of a band lies from its curve. */
export const BAND_REACH = COVERAGE;
