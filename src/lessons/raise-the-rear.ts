/** The lesson “Raise the rear”. */
import type { Lesson } from './lesson.ts';

export const raiseTheRear: Lesson = {
  key: 'raiseTheRear',
  title: 'Raise the rear',
  goal: 'Say what a longer shock does at both ends of the bike.',
  minutes: 10,
  caution:
    'Work on a stand that cannot slip, with a second person holding the bike. Check chain slack and side stand afterwards, by the maker’s manual.',
  prepare: [],
  shows: ['rake', 'trail', 'swingarmAngle', 'antiSquat', 'antiSquatSwingarm', 'antiSquatChain', 'seatHeight'],
  steps: [
    {
      act: 'Fit a longer shock.',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'riderUp',
      figure: 'rake',
      point: 'less',
      because:
        'The rear comes up, the bike tips forward about the front, and the steering axis stands steeper.',
      otherwise: 'The rear did not come up as it does on most bikes: look at its travel.',
    },
    {
      act: 'With the frame on a stand that cannot slip, let the rear wheel hang. Look at the swingarm.',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'toppedOut',
      figure: 'swingarmAngle',
      point: 'more',
      because:
        'The longer shock lets the axle drop further from the frame, so the swingarm points down more steeply.',
      otherwise: 'Look at how this shock is built in: its length may work the other way.',
    },
    {
      act: 'Set it on its wheels and sit on it again. What does the gas do to the rear now?',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'riderUp',
      figure: 'antiSquat',
      point: 'more',
      because: 'A steeper swingarm turns more of the tyre’s push into lift.',
      otherwise: 'Look at the swingarm’s part and at the drive’s part below.',
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
