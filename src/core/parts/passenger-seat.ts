/** The passenger’s place on the seat. */
import type { FramePlace } from './frame-place.ts';

export const passengerSeat: FramePlace = {
  label: 'Passenger’s seat',
  help: 'Where the passenger’s weight meets the seat.',
  needsRun: false,
  absent: { at: { x: -280, y: 480 }, said: false },
};
