/** The lesson “Both ends move together”. */
import type { Lesson } from './lesson.ts';

export const bothEnds: Lesson = {
  key: 'bothEnds',
  title: 'Both ends move together',
  goal: 'Raise a bike, keep its rake, and say what changed all the same.',
  minutes: 15,
  caution:
    'Keep the tubes’ minimum engagement in both triple clamps [yokes], as the maker’s manual says. Check tyre and mudguard clearance with the fork bottomed before anyone rides.',
  prepare: [],
  shows: ['rake', 'trail', 'seatHeight', 'swingarmAngle', 'antiSquat', 'centreHeight'],
  steps: [
    {
      act: 'Raise the rear, then let the fork tubes down until the rake is back.',
      turns: [
        { adjuster: 'shockLength', by: 4 },
        { adjuster: 'forkTubes', keep: 'rake' },
      ],
      state: 'riderUp',
      figure: 'seatHeight',
      point: 'more',
      because: 'Both ends went up together. The rake is the same, and the whole bike stands higher.',
      otherwise: 'The seat did not come up here: look at what each adjuster did.',
    },
    {
      act: 'The rake is back. Is the swingarm angle back too?',
      turns: [
        { adjuster: 'shockLength', by: 4 },
        { adjuster: 'forkTubes', keep: 'rake' },
      ],
      state: 'riderUp',
      figure: 'swingarmAngle',
      point: 'more',
      because:
        'The frame has its old tilt, only higher, and the rear axle kept its height: the swingarm is steeper.',
      otherwise: 'Look at what the fork did to the pivot.',
    },
    {
      act: 'And on the gas?',
      turns: [
        { adjuster: 'shockLength', by: 4 },
        { adjuster: 'forkTubes', keep: 'rake' },
      ],
      state: 'riderUp',
      figure: 'antiSquat',
      point: 'more',
      because:
        'The swingarm stays steeper with the rake back. That is why the rear is set first, then the front.',
      otherwise: 'The height of the centre of gravity changed too, and anti-squat is measured against it.',
    },
  ],
  check: {
    act: 'You raise the rear and leave the fork alone',
    turns: [{ adjuster: 'shockLength', by: 4 }],
    state: 'riderUp',
    figure: 'rake',
  },
  notes: [
    'The order is rear first, then front. Ask why before you say it.',
    'The front alone seldom puts the exit right. This lesson shows by how much.',
  ],
};
