/** The lesson “Same ratio, other teeth”. */
import type { Lesson } from './lesson.ts';

export const sameRatio: Lesson = {
  key: 'sameRatio',
  title: 'Same ratio, other teeth',
  goal: 'Say what changes when the ratio does not.',
  minutes: 10,
  prepare: [
    { adjuster: 'frontTeeth', to: 15 },
    { adjuster: 'rearTeeth', to: 45 },
  ],
  shows: ['finalDriveRatio', 'antiSquat', 'antiSquatChain', 'chainSliderClearance', 'upperRunAngle'],
  steps: [
    {
      act: 'The bike is on 15/45. Fit 16/48.',
      turns: [
        { adjuster: 'frontTeeth', to: 16 },
        { adjuster: 'rearTeeth', to: 48 },
      ],
      state: 'accelerating',
      figure: 'finalDriveRatio',
      point: 'same',
      because: 'The ratio is the quotient of the two counts, and it was kept.',
      otherwise: 'The ratio is the quotient of the two counts.',
    },
    {
      act: 'The same pair. How far does the chain clear its slider?',
      turns: [
        { adjuster: 'frontTeeth', to: 16 },
        { adjuster: 'rearTeeth', to: 48 },
      ],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      point: 'more',
      because: 'Both sprockets are bigger, so the whole upper run lies higher.',
      otherwise: 'The run turned more than it rose.',
    },
    {
      act: 'And on the gas? Ask by how much this time.',
      turns: [
        { adjuster: 'frontTeeth', to: 16 },
        { adjuster: 'rearTeeth', to: 48 },
      ],
      state: 'accelerating',
      figure: 'antiSquat',
      point: 'less',
      because:
        'The pull falls with the bigger rear sprocket and its lever grows almost as fast. A little is left over, less than most people feel.',
      otherwise: 'The countershaft lies so on this bike that the little that is left over goes another way.',
    },
  ],
  check: {
    act: 'You go from 15/45 to 14/42',
    turns: [
      { adjuster: 'frontTeeth', to: 14 },
      { adjuster: 'rearTeeth', to: 42 },
    ],
    state: 'toppedOut',
    figure: 'chainSliderClearance',
  },
  notes: [
    '15/45 and 16/48 are put on whatever the bike came with, so that everybody talks of the same pairs.',
    'The axle stays where it is. Chain and axle place change with a real pair: that belongs to the tab Sprockets.',
  ],
};
