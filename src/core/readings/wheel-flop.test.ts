/** Tests of the reading wheelFlop: the worked number and its sign. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { radians } from '../units/convert.ts';
import { wheelFlop } from './wheel-flop.ts';

it('of a trail of 80 at 18° is 23.5114', () => {
  const lean = radians(18);
  const offset = 350 * Math.sin(lean) - 80 * Math.cos(lean);
  const on = stanceWith({ machine: { frontRadius: 350 }, rake: lean, offset });
  expect(wheelFlop.read(on)).toBeCloseTo(23.5114, 4);
});

it('is negative with negative trail', () => {
  expect(wheelFlop.read(stanceWith({ rake: radians(18), offset: 200 }))).toBeLessThan(0);
  expect(wheelFlop.read(standing())).toBeGreaterThan(0);
});
