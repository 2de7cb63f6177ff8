/** The lesson “Raise the rear”. */
import type { Lesson } from './lesson.ts';

export const raiseTheRear: Lesson = {
  key: 'raiseTheRear',
  title: 'Raise the rear',
  goal: 'Say what a longer shock does at both ends of the bike.',
  minutes: 10,
  prepare: [],
  shows: ['rake', 'trail', 'swingarmAngle', 'antiSquat', 'seatHeight'],
  steps: [
    {
      act: 'Fit a longer shock.',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'riderUp',
      figure: 'rake',
      point: 'less',
      because: 'The rear comes up, the bike tips forward about the front, and the axis stands steeper.',
      otherwise: 'The rear did not come up as it does on most bikes: look at its travel.',
    },
    {
      act: 'Let the wheel hang and look at the swingarm.',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'toppedOut',
      figure: 'swingarmAngle',
      point: 'more',
      because:
        'The pivot went up with the frame and the axle stayed at the height of the wheel, so the arm points down more steeply.',
      otherwise: 'Look at how this shock is built in: its length may work the other way.',
    },
    {
      act: 'Sit on it again. What does the gas do to the rear now?',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'riderUp',
      figure: 'antiSquat',
      point: 'more',
      because: 'A steeper arm and the chain along it hold up more of the load that goes to the rear.',
      otherwise: 'Here the chain’s part changed against the swingarm’s: look at both of them below.',
    },
  ],
  check: {
    act: 'You fit a shorter shock',
    turns: [{ adjuster: 'shockLength', by: -3 }],
    state: 'riderUp',
    figure: 'trail',
  },
  notes: [
    'Measure the ride height at the tail with a tape first, if a bike is in the room.',
    'Nobody adjusts one end alone. Say it here for the first time, and again in the fifth lesson.',
  ],
};
