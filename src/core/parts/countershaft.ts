/** The countershaft sprocket’s place on the frame. */
import type { FramePlace } from './frame-place.ts';

export const countershaft: FramePlace = {
  label: 'Front sprocket',
  help: 'Centre of the front sprocket, the countershaft.',
  needsRun: true,
  absent: null,
};
