/** The lesson “Both ends move together”. */
import type { Lesson } from './lesson.ts';

export const bothEnds: Lesson = {
  key: 'bothEnds',
  title: 'Both ends move together',
  goal: 'Raise a bike without changing its steering, and say what changed all the same.',
  minutes: 15,
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
      otherwise: 'What came up at the rear went down at the front.',
    },
    {
      act: 'The rake is back. Is the arm, too?',
      turns: [
        { adjuster: 'shockLength', by: 4 },
        { adjuster: 'forkTubes', keep: 'rake' },
      ],
      state: 'riderUp',
      figure: 'swingarmAngle',
      point: 'more',
      because:
        'The frame is level again, only higher, and the rear axle is still on the floor’s side: the arm is steeper.',
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
        'The steeper arm stays after the steering is put back. This is how a rear is set for the exit, and a front for the entry.',
      otherwise: 'A higher centre takes load back as fast as the arm adds to it.',
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
    'The front cannot repair the exit. This lesson shows by how much.',
  ],
};
