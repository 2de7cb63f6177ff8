/** Tests of the reading frontTravel: the worked number. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { frontTravel } from './front-travel.ts';

it('of a fork that stands with 42 used is 42', () => {
  expect(frontTravel.read(stanceWith({ travel: { front: 42, rear: 0 } }))).toBe(42);
});
