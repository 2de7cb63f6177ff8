/** The lesson “Sag and preload are not ride height alone”. */
import type { Lesson } from './lesson.ts';

export const sagAndPreload: Lesson = {
  key: 'sagAndPreload',
  title: 'What preload does and does not do',
  goal: 'Say what preload does, and what it does not.',
  minutes: 10,
  caution: 'A loaded spring can injure. Changing springs is a workshop job, by the maker’s manual.',
  prepare: [],
  shows: ['rearTravel', 'rearWheelRate', 'frontTravel', 'frontWheelRate', 'rake'],
  steps: [
    {
      act: 'Add preload to the shock.',
      turns: [{ adjuster: 'shockPreload', by: 4 }],
      state: 'riderUp',
      figure: 'rearTravel',
      point: 'less',
      because: 'The spring is already squeezed before the load comes, so the same load moves it less.',
      otherwise: 'The rear may be on a stop here, where preload does not move it.',
    },
    {
      act: 'Is the rear stiffer now?',
      turns: [{ adjuster: 'shockPreload', by: 4 }],
      state: 'riderUp',
      figure: 'rearWheelRate',
      point: null,
      because:
        'The spring’s rate is the same. Preload shifts where it starts, not how it goes on. Where the figure moved all the same, the links work at another place of their travel now, or the spring has two rates.',
      otherwise: '',
    },
    {
      act: 'Add preload to the fork.',
      turns: [{ adjuster: 'forkPreload', by: 4 }],
      state: 'riderUp',
      figure: 'frontTravel',
      point: 'less',
      because: 'The fork stands higher under the same load, with less room to extend over the next hole.',
      otherwise: 'The fork may be on a stop here, where preload does not move it.',
    },
  ],
  check: {
    act: 'You take preload off the fork',
    turns: [{ adjuster: 'forkPreload', by: -3 }],
    state: 'riderUp',
    figure: 'rake',
  },
  notes: [
    'Sag is measured from hanging: lift the wheel, measure, set it down, sit on it.',
    'A bike at the right sag with a spring of the wrong rate is still wrong. Ask how one would see that.',
  ],
};
