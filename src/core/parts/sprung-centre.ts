/** The centre of gravity of what the springs carry. */
import type { FramePlace } from './frame-place.ts';

export const sprungCentre: FramePlace = {
  label: 'Sprung centre of gravity',
  help: 'Centre of gravity of all that the springs carry, without rider and load.',
  needsRun: false,
  absent: { at: { x: 300, y: 200 }, said: true },
};
