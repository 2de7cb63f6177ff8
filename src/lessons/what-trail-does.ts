/** The lesson “What trail does”. */
import type { Lesson } from './lesson.ts';

export const whatTrailDoes: Lesson = {
  key: 'whatTrailDoes',
  title: 'What trail does',
  goal: 'Say what trail is, point to it on a bike, and name two ways to change it.',
  caution:
    'Clamps and cups are a workshop job. Little trail can make the bike shake its head. Keep the tubes’ minimum engagement.',
  minutes: 10,
  prepare: [],
  shows: ['trail', 'rake', 'normalTrail', 'wheelFlop'],
  steps: [
    {
      act: 'Fit triple clamps [yokes] that hold the fork further forward.',
      turns: [{ adjuster: 'clampOffset', by: 3 }],
      state: 'riderUp',
      figure: 'trail',
      point: 'less',
      because:
        'The wheel sits further ahead of the steering axis, so the contact patch moves toward the point where the axis meets the floor. The distance between the two is the trail.',
      otherwise:
        'Look at the triangle of axis, axle and floor: something else moved it more than the clamps did.',
    },
    {
      act: 'Slide the fork tubes up through the clamps.',
      turns: [{ adjuster: 'forkTubes', by: 8 }],
      state: 'riderUp',
      figure: 'trail',
      point: 'less',
      because:
        'The front comes down and the whole bike tips forward. The axis stands steeper and meets the floor nearer to the contact patch.',
      otherwise: 'The bike tips about its rear contact patch: look at what its rake did.',
    },
  ],
  check: {
    act: 'You fit clamps that hold the fork further back',
    turns: [{ adjuster: 'clampOffset', by: -3 }],
    state: 'riderUp',
    figure: 'trail',
  },
  notes: [
    'Bring a shopping trolley wheel: everybody has seen trail work.',
    'Let the room point at both ends of the trail before you show the drawing.',
    'Trail is not the only thing that steadies a bike. Say so before somebody asks.',
  ],
};
