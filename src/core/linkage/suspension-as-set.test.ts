/** Tests of the suspension that is solved once for each setting. */
import { describe, expect, it } from 'vitest';
import { linkedBike } from '../../../tests/support/linked-bike.ts';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import { suspensionAsSet } from './suspension-as-set.ts';
import { adjustersIn, rearLayout } from './rear-layout-of.ts';
import { suspension } from './suspension.ts';

describe.each([
  ['links', linkedBike],
  ['a table', plainBike],
])('the set suspension of %s', (_, { swingarm }) => {
  it('is what solving it anew gives, whatever was solved before', () => {
    for (const shockLength of [0, 4, -3, 0, 8, 4])
      for (const axlePosition of [0, 12, 25]) {
        const setup = { ...plainSetup, shockLength, shockMountShim: 1, axlePosition };
        const found = suspensionAsSet(swingarm, setup);
        const anew = suspension(rearLayout(swingarm), swingarm.length, adjustersIn(setup));
        if (!found.ok || !anew.ok) throw new Error('no suspension');
        expect(found).toEqual({ ...anew, wheelTravel: found.wheelTravel });
        expect(found.wheelTravel).toBeCloseTo(anew.wheelTravel, 9);
      }
  });

  it('is the very same object while only other adjusters turn', () => {
    const first = suspensionAsSet(swingarm, { ...plainSetup, shockLength: 2 });
    const moreTeeth = { ...plainSetup, shockLength: 2, rearTeeth: 48 };
    expect(suspensionAsSet(swingarm, moreTeeth)).toBe(first);
  });

  it('is refused for an axle place that is not a number, or beyond the arm', () => {
    const at = (axlePosition: number) => suspensionAsSet(swingarm, { ...plainSetup, axlePosition });
    expect(at(NaN)).toMatchObject({ reason: 'inputNotANumber' });
    expect(at(-900)).toMatchObject({ reason: 'swingarmCannotReach' });
  });
});
