/** Seat height: the seat mark above the ground. */
import type { Reading } from './reading.ts';

/**
 * Height of the seat mark above the ground, mm, positive upward. Always has an answer.
 * Worked: a seat mark 400 above a pivot that stands at 415, frame level, gives 815.
 */
export const seatHeight: Reading = {
  key: 'seatHeight',
  label: 'Seat height',
  group: 'rearEnd',
  quantity: 'length',
  construction: 'heights',
  read: ({ machine, pose }) => pose.originY + pose.sin * machine.seatX + pose.cos * machine.seatY,
  more: 'higher seat',
  less: 'lower seat',
  help: {
    what: 'Height of the seat mark above the ground.',
    sign: 'Positive above the ground.',
    measured: 'Tape from the floor to the lowest place of the seat.',
    feels: 'Higher gives room to lean and weight transfer; lower reaches the ground.',
  },
};
