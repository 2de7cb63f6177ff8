/** The lesson “Chain over the pivot”. */
import type { Lesson } from './lesson.ts';

export const chainOverPivot: Lesson = {
  key: 'chainOverPivot',
  title: 'Chain over the pivot',
  goal: 'Spot a chain that will lie on its slider, and say what it then does.',
  minutes: 10,
  prepare: [],
  shows: ['chainSliderClearance', 'swingarmAngle', 'antiSquatChain', 'upperRunAngle'],
  steps: [
    {
      act: 'Fit a front sprocket with three teeth less.',
      turns: [{ adjuster: 'frontTeeth', by: -3 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      point: 'less',
      because: 'The run leaves the front sprocket lower and comes nearer to the slider over the pivot.',
      otherwise: 'The run turns about a place behind the pivot here.',
    },
    {
      act: 'Make the arm steeper instead.',
      turns: [{ adjuster: 'shockLength', by: 8 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      point: 'less',
      because: 'The axle swings down and takes the rear end of the run with it, while the pivot stays.',
      otherwise: 'The rear did not come up by that, or the run passes the pivot elsewhere.',
    },
  ],
  check: {
    act: 'You fit a front sprocket with one tooth more',
    turns: [{ adjuster: 'frontTeeth', by: 1 }],
    state: 'toppedOut',
    figure: 'chainSliderClearance',
  },
  notes: [
    'Pass a worn chain slider round.',
    'A chain on the slider pulls with the slider’s radius as its lever, whatever the run does. It wears through in days.',
  ],
};
