/** The lesson “Springs hold the geometry”. */
import type { Lesson } from './lesson.ts';

export const springsHoldGeometry: Lesson = {
  key: 'springsHoldGeometry',
  title: 'Springs hold the geometry',
  goal: 'Say why a spring change is also a change of geometry.',
  minutes: 15,
  caution: 'A loaded spring can injure. Changing springs is a workshop job, by the maker’s manual.',
  prepare: [],
  shows: ['rake', 'trail', 'frontTravel', 'rearTravel', 'antiSquat'],
  steps: [
    {
      act: 'Fit fork springs that are a tenth stiffer, and change nothing else.',
      turns: [{ adjuster: 'forkSpringRate', times: 1.1 }],
      state: 'riderUp',
      figure: 'trail',
      point: 'more',
      because: 'The front stays higher under the same load, so the axis leans back.',
      otherwise: 'The fork may be on a stop here: look at its travel below.',
    },
    {
      act: 'Fit a shock spring that is a tenth stiffer, and change nothing else.',
      turns: [{ adjuster: 'shockSpringRate', times: 1.1 }],
      state: 'riderUp',
      figure: 'rake',
      point: 'less',
      because: 'The rear stays higher under the same load, and the bike tips forward.',
      otherwise: 'The rear may be on a stop here: look at its travel below.',
    },
    {
      act: 'The same shock spring, with its preload backed off until the rear sits where it sat.',
      turns: [
        { adjuster: 'shockSpringRate', times: 1.1 },
        { adjuster: 'shockPreload', keep: 'rearTravel' },
      ],
      state: 'riderUp',
      figure: 'rake',
      point: 'same',
      because: 'With the sag set again the bike stands as it did. Now the spring alone has changed.',
      otherwise: 'No preload brings the rear back to where it sat.',
    },
  ],
  check: {
    act: 'You fit a shock spring that is a tenth softer',
    turns: [{ adjuster: 'shockSpringRate', times: 0.9 }],
    state: 'riderUp',
    figure: 'trail',
  },
  notes: [
    'The sentence to take home: a spring is not changed until its sag is set again.',
    'A loaded spring can injure. Nobody takes a fork or a shock apart in this class.',
  ],
};
