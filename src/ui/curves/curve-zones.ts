/** Whether the zones of the gas lie behind the curves, and where and how wide neutral is. */
import { hasZones } from '../../words/kept/curve-words.ts';
import { neutralZone, type NeutralZone } from '../../curves/neutral-zone.ts';
import type { Curves } from '../../session/tabs/curves.svelte.ts';

/** The neutral zone, `band` either side of its middle; null where the curve is of no line of the drive, or none is wanted. */
export function zonesShown({ zones, reading, neutral }: Curves, band: number): NeutralZone | null {
  return zones && hasZones(reading) ? neutralZone(band, neutral) : null;
}
