/** The lesson “Chain over the pivot”. */
import type { Lesson } from './lesson.ts';

export const chainOverPivot: Lesson = {
  key: 'chainOverPivot',
  title: 'Chain over the pivot',
  goal: 'Spot a chain that will lie on the chain slider [rub strip], and say what it then does.',
  minutes: 10,
  caution:
    'A chain slider [rub strip] worn through lets the chain cut into the swingarm. Check it by the maker’s manual.',
  prepare: [],
  shows: ['chainSliderClearance', 'swingarmAngle', 'antiSquatChain', 'upperRunAngle'],
  steps: [
    {
      act: 'Fit a front sprocket with three teeth less.',
      turns: [{ adjuster: 'frontTeeth', by: -3 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      point: 'less',
      because:
        'The upper run leaves the front sprocket lower and comes nearer to the chain slider over the pivot.',
      otherwise: 'Look at where the upper run passes the pivot on this bike.',
    },
    {
      act: 'Make the swingarm steeper instead.',
      turns: [{ adjuster: 'shockLength', by: 8 }],
      state: 'toppedOut',
      figure: 'chainSliderClearance',
      point: 'less',
      because: 'The axle swings down and takes the rear end of the upper run with it, while the pivot stays.',
      otherwise: 'Look at swingarm angle and upper-run angle below.',
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
    'A chain on the chain slider pulls with the slider’s radius as its lever, however the upper run lies.',
  ],
};
