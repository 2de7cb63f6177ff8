/** The tank, by the centre of the fuel in it. */
import type { FramePlace } from './frame-place.ts';

export const tank: FramePlace = {
  label: 'Tank',
  help: 'Centre of the fuel in the tank.',
  needsRun: false,
  absent: { at: { x: 220, y: 330 }, said: false },
};
