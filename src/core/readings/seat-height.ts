/** Seat height: the seat mark above the ground. */
import { onGround } from '../chassis/pose.ts';
import type { Reading } from './reading.ts';

/**
 * Height of the seat mark above the ground, mm, positive upward. Always has an answer.
 * Example: pivot height 415 mm, seat above the pivot 400 mm → 815 mm.
 */
export const seatHeight: Reading = {
  key: 'seatHeight',
  label: 'Seat height',
  group: 'rearEnd',
  quantity: 'length',
  construction: 'heights',
  read: ({ machine, pose }) => onGround(pose, machine.places.seat).y,
  usual: { least: 300, most: 1300 },
  more: 'higher seat',
  less: 'lower seat',
  help: {
    what: 'Height of the seat mark above the ground.',
    sign: 'Positive above the ground.',
    measured: 'Tape from the floor to the lowest place of the seat.',
    feels:
      'A higher bike leans further before it touches and shifts more weight; a lower one lets the feet reach the ground.',
  },
};
