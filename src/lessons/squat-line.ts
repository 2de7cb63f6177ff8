/** The lesson “The squat line from chain and arm”. */
import type { Lesson } from './lesson.ts';

export const squatLine: Lesson = {
  key: 'squatLine',
  title: 'The squat line from chain and swingarm',
  goal: 'Draw the squat line: where chain and swingarm lines meet, and from the tyre to there.',
  minutes: 15,
  caution:
    'Engine off before a hand goes near the chain. After a change of sprockets, set chain slack and wheel alignment by the maker’s manual.',
  prepare: [],
  shows: [
    'antiSquat',
    'squatAngle',
    'loadTransferAngle',
    'antiSquatSwingarm',
    'antiSquatChain',
    'neutralAntiSquat',
  ],
  steps: [
    {
      act: 'Raise the rear and draw both lines again.',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'accelerating',
      figure: 'antiSquat',
      point: 'more',
      because: 'Both lines turn, and the line from the tyre to their crossing gets steeper.',
      otherwise: 'Look at squat angle and load-transfer angle below: anti-squat compares the two.',
    },
    {
      act: 'Fit a front sprocket with one tooth less.',
      turns: [{ adjuster: 'frontTeeth', by: -1 }],
      state: 'accelerating',
      figure: 'antiSquatChain',
      point: 'more',
      because:
        'The upper run starts lower at the front and passes nearer to the pivot. The pull is the same, because the rear sprocket is, but its lever is shorter: it draws the rear down by less.',
      otherwise:
        'The upper run lies on the chain slider [rub strip] here, or passes the pivot another way, so its lever did not get shorter.',
    },
    {
      act: 'Fit a rear sprocket with two teeth more.',
      turns: [{ adjuster: 'rearTeeth', by: 2 }],
      state: 'accelerating',
      figure: 'antiSquatChain',
      point: 'more',
      because:
        'Two things work against each other: a lower pull and a longer lever. The pull falls by more than the lever grows.',
      otherwise:
        'A lower pull and a longer lever work against each other. Here they cancel, or come out the other way.',
    },
  ],
  check: {
    act: 'You fit a front sprocket with one tooth more',
    turns: [{ adjuster: 'frontTeeth', by: 1 }],
    state: 'accelerating',
    figure: 'antiSquatChain',
  },
  notes: [
    'Have a ruler and a printed side view ready: everybody draws the two lines once by hand.',
    'Where the lines are parallel the crossing is far away. The direction is all that counts.',
  ],
};
