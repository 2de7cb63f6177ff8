/** The lesson “Lowering for a short rider”. */
import type { Lesson } from './lesson.ts';

export const shortRider: Lesson = {
  key: 'shortRider',
  title: 'Lowering for a short rider',
  goal: 'Lower a bike, keep its rake, and say what was given up.',
  minutes: 15,
  caution:
    'Before anyone rides a lowered bike, check ground clearance, side stand, chain slack, and tyre clearance with both ends bottomed. Follow the maker’s manual.',
  prepare: [],
  shows: ['seatHeight', 'rake', 'trail', 'swingarmAngle', 'antiSquat', 'centreHeight'],
  steps: [
    {
      act: 'Fit a shorter shock.',
      turns: [{ adjuster: 'shockLength', by: -4 }],
      state: 'riderUp',
      figure: 'seatHeight',
      point: 'less',
      because: 'The rear comes down and the seat with it.',
      otherwise: 'The rear did not come down by that.',
    },
    {
      act: 'The seat is lower. What happened to the rake?',
      turns: [{ adjuster: 'shockLength', by: -4 }],
      state: 'riderUp',
      figure: 'rake',
      point: 'more',
      because:
        'The bike tips back and the steering axis with it. That is the price of lowering one end alone.',
      otherwise: 'The bike did not tip back.',
    },
    {
      act: 'Now slide the fork tubes up until the rake is back.',
      turns: [
        { adjuster: 'shockLength', by: -4 },
        { adjuster: 'forkTubes', keep: 'rake' },
      ],
      state: 'riderUp',
      figure: 'rake',
      point: 'same',
      because: 'Both ends are down and the rake is back.',
      otherwise: 'No place of the fork tubes brought the rake back.',
    },
    {
      act: 'What does that do on the gas?',
      turns: [
        { adjuster: 'shockLength', by: -4 },
        { adjuster: 'forkTubes', keep: 'rake' },
      ],
      state: 'riderUp',
      figure: 'antiSquat',
      point: 'less',
      because: 'The swingarm lies flatter, and no fork brings that back.',
      otherwise: 'The height of the centre of gravity changed too, and anti-squat is measured against it.',
    },
  ],
  check: {
    act: 'You lower both ends so that the rake stays',
    turns: [
      { adjuster: 'shockLength', by: -4 },
      { adjuster: 'forkTubes', keep: 'rake' },
    ],
    state: 'riderUp',
    figure: 'centreHeight',
  },
  notes: [
    'Ground clearance, side stand and exhaust: check them before the seat is measured.',
    'A seat with less foam does not touch the geometry. Say so to the customer first.',
  ],
};
