/** The lesson “Against a wall”. */
import type { Lesson } from './lesson.ts';

export const againstTheWall: Lesson = {
  key: 'againstTheWall',
  title: 'Against a wall',
  goal: 'Explain what lifts when the clutch is let out against a wall, and why that says little about the road.',
  minutes: 15,
  prepare: [],
  shows: ['swingarmAngle', 'antiSquat', 'squatAngle', 'wheelbase', 'frontAxleHeight'],
  steps: [
    {
      act: 'Front wheel against a wall, rider on board, first gear. Let the clutch out gently.',
      turns: [],
      state: 'riderUp',
      figure: 'wallLift',
      point: null,
      because:
        'At the wall the push is held at the height of the front axle, so only that much load goes to the rear. The squat line needs to be no steeper than from the rear patch to that axle for the rear to come up.',
      otherwise: '',
    },
    {
      act: 'The same bike on the road, on the gas.',
      turns: [],
      state: 'accelerating',
      figure: 'squatOnRoad',
      point: null,
      because:
        'On the road the whole bike speeds up, so the load goes over as if pushed at the height of the centre of gravity. That line is much steeper, and the squat line often lies below it.',
      otherwise: '',
    },
    {
      act: 'Back to the wall, now with the rear raised.',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'riderUp',
      figure: 'swingarmAngle',
      point: 'more',
      because:
        'The arm is steeper and so is the squat line. The wall test feels that, but it feels it from another zero.',
      otherwise: 'The arm did not get steeper here.',
    },
  ],
  check: {
    act: 'You fit a shorter shock, and stay on the road',
    turns: [{ adjuster: 'shockLength', by: -3 }],
    state: 'riderUp',
    figure: 'antiSquat',
  },
  notes: [
    'Show it on the computer. On a real bike people have been hurt: nobody stands between bike and wall.',
    'No verdict: nearly every bike with a chain lifts at the wall, also one that squats on the road.',
    'Friction of the tyre on the wall is left out. It would hold the front down or up a little.',
  ],
};
