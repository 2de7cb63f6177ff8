/** The lesson “From complaint to adjuster”. */
import type { Lesson } from './lesson.ts';

export const complaintToAdjuster: Lesson = {
  key: 'complaintToAdjuster',
  title: 'From complaint to adjuster',
  goal: 'Split a complaint at the moment the gas opens, and pick the end that is turned first.',
  minutes: 20,
  caution:
    'Check tyres, chain slack, and wheel and steering-head [headstock] bearings before any adjuster. Keep the fork tubes’ minimum engagement, as the maker’s manual says.',
  prepare: [],
  shows: ['trail', 'rake', 'antiSquat', 'rearTravel', 'frontTravel'],
  steps: [
    {
      act: '“It does not want to turn in on the brakes.” The gas is still shut, so start at the front: slide the fork tubes up.',
      turns: [{ adjuster: 'forkTubes', by: 4 }],
      state: 'braking',
      figure: 'trail',
      point: 'less',
      because:
        'On the brakes the bike rides on its fork. Tubes further up lower it there, and the axis stands steeper.',
      otherwise: 'Look at rake and front travel below: they show what the tubes did on the brakes.',
    },
    {
      act: '“It runs wide as soon as I open the gas.” The gas is open, so start at the rear: raise it.',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'accelerating',
      figure: 'antiSquat',
      point: 'more',
      because:
        'On the gas load goes to the rear. More anti-squat keeps the rear from sinking, so the bike holds its line better. Too much costs grip.',
      otherwise: 'Here the rear’s height does not do it; look at the sprockets.',
    },
    {
      act: 'The same complaint, answered at the front instead.',
      turns: [{ adjuster: 'forkTubes', by: 4 }],
      state: 'accelerating',
      figure: 'antiSquat',
      point: 'less',
      because:
        'Here the fork took anti-squat away. The front may steer quicker, but the rear is held up less.',
      otherwise: 'Here the fork took no anti-squat away: the figures are above.',
    },
  ],
  check: {
    act: '“It stands up on the brakes.” You slide the fork tubes down',
    turns: [{ adjuster: 'forkTubes', by: -4 }],
    state: 'braking',
    figure: 'trail',
  },
  notes: [
    'The split at the gas is a rule of feel, not of geometry. It is right more often than not.',
    'Tyre pressure, chain slack and head bearings come before any adjuster.',
    'Let everybody bring one complaint of a customer, and run it through Rider says, in Find a setup.',
  ],
};
