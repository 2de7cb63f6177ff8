/** The seat mark, where the rider’s weight meets the seat. */
import type { FramePlace } from './frame-place.ts';

export const seat: FramePlace = {
  label: 'Seat mark',
  help: 'Where the rider’s weight meets the seat.',
  needsRun: false,
  absent: { at: { x: 0, y: 400 }, said: true },
};
