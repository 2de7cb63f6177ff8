/** Whether the zones of the gas lie behind the curves, and how wide neutral is. */
import type { Workbench } from '../../session/workbench.svelte.ts';

/** The half-width of the neutral zone, per cent; null where the curve is not of anti-squat, or none are wanted. */
export function zonesShown({ curves, preferences }: Workbench): number | null {
  return curves.zones && curves.reading.key === 'antiSquat' ? preferences.data.band : null;
}
