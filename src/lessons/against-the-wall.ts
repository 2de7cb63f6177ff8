/** The lesson “Against a wall”. */
import type { Lesson } from './lesson.ts';

export const againstTheWall: Lesson = {
  key: 'againstTheWall',
  title: 'Against a wall',
  goal: 'Explain what lifts when the clutch is let out against a wall, and why that says little about the road.',
  minutes: 15,
  caution: 'On the computer only. Do not try this on a real bike: it can lift, slip or run someone down.',
  prepare: [],
  shows: ['swingarmAngle', 'antiSquat', 'squatAngle', 'wheelbase', 'frontAxleHeight'],
  steps: [
    {
      act: 'Front wheel against a wall, rider on board, first gear. Let the clutch out slowly, in the model only.',
      turns: [],
      state: 'riderUp',
      figure: 'wallLift',
      point: null,
      because:
        'The wall pushes back at the height of the front axle. The rear comes up if the squat line is steeper than the line from the rear contact patch to the front axle.',
      otherwise: '',
    },
    {
      act: 'The same bike on the road, on the gas.',
      turns: [],
      state: 'accelerating',
      figure: 'squatOnRoad',
      point: null,
      because:
        'On the road the load goes over as if the push were at the height of the centre of gravity. That line is steeper than the one to the front axle, so the squat line can lie above the one and below the other.',
      otherwise: '',
    },
    {
      act: 'Away from the wall, rider on board: raise the rear.',
      turns: [{ adjuster: 'shockLength', by: 4 }],
      state: 'riderUp',
      figure: 'swingarmAngle',
      point: 'more',
      because:
        'The swingarm is steeper. Squat angle below shows what the squat line did; wall and road each hold it against a line of their own.',
      otherwise: 'The swingarm did not get steeper here.',
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
