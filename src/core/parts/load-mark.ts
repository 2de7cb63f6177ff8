/** The load mark, where luggage rests. */
import type { FramePlace } from './frame-place.ts';

export const loadMark: FramePlace = {
  label: 'Load mark',
  help: 'Where luggage rests.',
  needsRun: false,
  absent: { at: { x: -300, y: 450 }, said: true },
};
