/** Wheel flop: how eagerly the front drops into a turn when the bars are turned. */
import { groundTrail } from './trail.ts';
import type { Reading } from './reading.ts';

/**
 * Wheel flop, mm: trail·sin(rake)·cos(rake), the rate at which the front sinks as the steering turns, per radian
 * squared of it halved. Positive when turning the bars lowers the front. Common practice, no source; what Meijaard and
 * others (2007) print of their benchmark bicycle gives 23.5114. Always has an answer.
 * Example: front wheel radius 350 mm, rake 18°, offset 32.07143 mm → 23.5114 mm.
 */
export const wheelFlop: Reading = {
  key: 'wheelFlop',
  label: 'Wheel flop',
  group: 'steering',
  quantity: 'length',
  construction: 'trailTriangle',
  read: ({ machine, rake, offset }) =>
    groundTrail(machine.frontRadius, rake, offset) * Math.sin(rake) * Math.cos(rake),
  usual: { least: 0, most: 120 },
  more: 'falls into turns more',
  less: 'falls into turns less',
  felt: {
    from: 2,
    gauge: { more: 'larger', less: 'smaller' },
  },
  belowZero: { more: 'front rises less in turns', less: 'front rises more in turns' },
  help: {
    what: 'How strongly the front wants to fall into the turn when the bars are turned at walking pace.',
    sign: 'Positive when turning the bars lets the front sink.',
    measured: 'Computed from trail and rake.',
    feels: 'More makes slow turns tip in by themselves; less keeps the bars light at a crawl.',
  },
};
