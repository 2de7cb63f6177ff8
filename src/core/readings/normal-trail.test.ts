/** Tests of the reading normalTrail: the worked number and its relation to trail. */
import { expect, it } from 'vitest';
import { stanceWith, standing } from '../../../tests/support/standing.ts';
import { radians } from '../units/convert.ts';
import { trail } from './trail.ts';
import { normalTrail } from './normal-trail.ts';

it('of a trail of 100 at 24° is 91.3545', () => {
  // Trail 100 at 24° on a wheel of 300 is an offset of 300·sin 24° − 100·cos 24°.
  const lean = radians(24);
  const offset = 300 * Math.sin(lean) - 100 * Math.cos(lean);
  const on = stanceWith({ machine: { frontRadius: 300 }, rake: lean, offset });
  expect(trail.read(on)).toBeCloseTo(100, 10);
  expect(normalTrail.read(on)).toBeCloseTo(91.3545, 4);
});

it('is shorter than the trail of a standing bike', () => {
  expect(normalTrail.read(standing())).toBeLessThan(trail.read(standing()) as number);
});
