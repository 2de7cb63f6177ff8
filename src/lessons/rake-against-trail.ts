/** The lesson “Rake against trail”. */
import type { Lesson } from './lesson.ts';

export const rakeAgainstTrail: Lesson = {
  key: 'rakeAgainstTrail',
  title: 'Rake against trail',
  goal: 'Tell rake from trail: two bikes with the same trail and another rake are not the same bike.',
  caution:
    'Clamps and cups are a workshop job. Little trail can make the bike shake its head. Keep the tubes’ minimum engagement.',
  minutes: 10,
  prepare: [],
  shows: ['rake', 'trail', 'wheelbase', 'wheelFlop', 'normalTrail'],
  steps: [
    {
      act: 'Lean the steering axis back by a degree, and choose triple clamps [yokes] that bring the trail back to where it was.',
      turns: [
        { adjuster: 'headAngleCupsDeg', by: 1 },
        { adjuster: 'clampOffset', keep: 'trail' },
      ],
      state: 'riderUp',
      figure: 'rake',
      point: 'more',
      because:
        'The cups lean the axis back. The clamps set how far the wheel sits ahead of it, and tip the bike only a little.',
      otherwise: 'The other clamps tip the bike, and here that outweighs the cups.',
    },
    {
      act: 'The same change once more. Now look at the trail.',
      turns: [
        { adjuster: 'headAngleCupsDeg', by: 1 },
        { adjuster: 'clampOffset', keep: 'trail' },
      ],
      state: 'riderUp',
      figure: 'trail',
      point: 'same',
      because: 'Offset takes out what rake puts in. Two numbers, two ways to set them.',
      otherwise: 'No triple-clamp [yoke] offset brought this trail back all the way.',
    },
    {
      act: 'The same change. How much does the front drop as the bar turns?',
      turns: [
        { adjuster: 'headAngleCupsDeg', by: 1 },
        { adjuster: 'clampOffset', keep: 'trail' },
      ],
      state: 'riderUp',
      figure: 'wheelFlop',
      point: 'more',
      because:
        'With the same trail, a slacker axis lets the front drop further as the bar turns. That is felt at walking pace.',
      otherwise: 'Wheel flop comes from rake and trail together: look at both below.',
    },
  ],
  check: {
    act: 'You lean the axis back by a degree and leave the clamps alone',
    turns: [{ adjuster: 'headAngleCupsDeg', by: 1 }],
    state: 'riderUp',
    figure: 'trail',
  },
  notes: [
    'Ask who has ridden a long, raked bike in a car park, and what the bar did.',
    'People say rake when they mean trail. Let them, then show this.',
  ],
};
