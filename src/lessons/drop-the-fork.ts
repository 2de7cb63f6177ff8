/** The lesson “Drop the fork”. */
import type { Lesson } from './lesson.ts';

export const dropTheFork: Lesson = {
  key: 'dropTheFork',
  title: 'Drop the fork',
  goal: 'Say what fork tubes further up in their triple clamps [yokes] do, and what they do to the rear.',
  minutes: 10,
  caution:
    'Keep the tubes’ minimum engagement in both triple clamps [yokes], as the maker’s manual says. Check tyre and mudguard clearance with the fork bottomed before anyone rides.',
  prepare: [],
  shows: ['trail', 'rake', 'swingarmAngle', 'wheelbase', 'antiSquat', 'centreHeight'],
  steps: [
    {
      act: 'Slide the fork tubes up through the clamps.',
      turns: [{ adjuster: 'forkTubes', by: 8 }],
      state: 'riderUp',
      figure: 'rake',
      point: 'less',
      because: 'The front comes down and the bike tips forward, so the steering axis stands steeper.',
      otherwise: 'The front did not come down as it does on most bikes.',
    },
    {
      act: 'Now look at the other end of the bike.',
      turns: [{ adjuster: 'forkTubes', by: 8 }],
      state: 'riderUp',
      figure: 'swingarmAngle',
      point: 'less',
      because:
        'Tipping forward lowers the pivot and not the rear axle, so the swingarm lies flatter. That comes along unasked.',
      otherwise: 'The pivot moved less than the axle here.',
    },
    {
      act: 'And on the gas?',
      turns: [{ adjuster: 'forkTubes', by: 8 }],
      state: 'riderUp',
      figure: 'antiSquat',
      point: 'less',
      because: 'The flatter swingarm holds up less. Quicker steering was paid for at the exit.',
      otherwise:
        'Anti-squat also depends on the wheelbase and on the height of the centre of gravity: look at both below.',
    },
  ],
  check: {
    act: 'You slide the fork tubes down through the clamps',
    turns: [{ adjuster: 'forkTubes', by: -5 }],
    state: 'riderUp',
    figure: 'trail',
  },
  notes: [
    'Minimum engagement in the clamps comes first. Show where it is marked on a fork.',
    'Check tyre and mudguard clearance with the fork bottomed before anybody rides it.',
  ],
};
