/** The countershaft sprocket’s place on the frame. */
import type { FramePlace } from './frame-place.ts';

export const countershaft: FramePlace = {
  label: 'Countershaft sprocket',
  help: 'Centre of the front sprocket.',
  needsRun: true,
  absent: null,
};
