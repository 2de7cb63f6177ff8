/** Tests of the range in which a shock's length can be set. */
import { describe, expect, it } from 'vitest';
import { linkedBike } from '../../../tests/support/linked-bike.ts';
import { plainBike, withSwingarm } from '../../../tests/support/plain-bike.ts';
import { rockerOnArm } from '../../../tests/support/rear-layouts.ts';
import { AS_DELIVERED } from './link-adjustments.ts';
import { shockLengthRange } from './shock-length-range.ts';
import { suspension } from './suspension.ts';

describe('the range of shock length', () => {
  it('is the whole width where nothing is in the way', () => {
    expect(shockLengthRange(plainBike.swingarm, 10, 0.5)).toEqual({ least: -10, most: 10 });
  });

  it('ends on the last step at which the links still hold the shock', () => {
    const { length } = linkedBike.swingarm;
    const { least, most } = shockLengthRange(linkedBike.swingarm, 200, 1);
    const works = (shockLength: number) =>
      suspension(rockerOnArm, length, { ...AS_DELIVERED, shockLength }).ok;
    expect([works(least), works(least - 1), works(most), works(most + 1)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  it('is the whole width on links that do not work at all, so that the adjuster is still there', () => {
    const shock = { fullLength: 900, closedLength: 800 };
    const broken = withSwingarm(plainBike, { links: { ...rockerOnArm, shock } });
    expect(shockLengthRange(broken.swingarm, 20, 1)).toEqual({ least: -20, most: 20 });
  });
});
