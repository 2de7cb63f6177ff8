/** Tests of the reading rearTravel: the worked number. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { rearTravel } from './rear-travel.ts';

it('of an axle 35 above where it hangs is 35', () => {
  expect(rearTravel.read(stanceWith({ travel: { front: 0, rear: 35 } }))).toBe(35);
});
