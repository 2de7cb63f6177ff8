/** The lesson “Same ratio, other teeth”. */
import type { Lesson } from './lesson.ts';

export const sameRatio: Lesson = {
  key: 'sameRatio',
  title: 'Same ratio, other teeth',
  goal: 'Say what changes when the ratio does not.',
  minutes: 10,
  caution:
    'Engine off before a hand goes near the chain. After a change of sprockets, set chain slack and wheel alignment by the maker’s manual.',
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
      because: 'The ratio is rear teeth divided by front teeth, and both pairs give the same.',
      otherwise: 'The ratio is rear teeth divided by front teeth.',
    },
    {
      act: 'The same pair. How far does the chain clear the chain slider [rub strip]?',
      turns: [
        { adjuster: 'frontTeeth', to: 16 },
        { adjuster: 'rearTeeth', to: 48 },
      ],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      point: 'more',
      because: 'Both sprockets are bigger, so the whole upper run lies higher.',
      otherwise: 'The upper run turned more than it rose.',
    },
    {
      act: 'And on the gas? Guess by how much, too.',
      turns: [
        { adjuster: 'frontTeeth', to: 16 },
        { adjuster: 'rearTeeth', to: 48 },
      ],
      state: 'accelerating',
      figure: 'antiSquat',
      point: 'less',
      because:
        'The bigger rear sprocket needs less pull, but the lever grows a little more than the pull falls. The figure shows how little is left over.',
      otherwise:
        'The lower pull and the longer lever cancel, or come out the other way. What decides is where the countershaft lies against the line of the swingarm.',
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
