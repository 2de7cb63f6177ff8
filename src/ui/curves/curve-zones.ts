/** Whether the zones of the gas lie behind the curves, and how wide neutral is. */
import { hasZones } from '../../words/curve-words.ts';
import type { Curves } from '../../session/curves.svelte.ts';

/** The half-width of the neutral zone, `band`; null where the curve is of no line of the drive, or none are wanted. */
export function zonesShown({ zones, reading }: Curves, band: number): number | null {
  return zones && hasZones(reading) ? band : null;
}
