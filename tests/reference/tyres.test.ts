/** Tyre diameters by size code against makers' tables. */
import { expect, it } from 'vitest';
import tyres from '../../fixtures/reference/tyres.json';
import { tyreDiameter } from '../../src/core/parts/tyre.ts';

// Source: beside each row of fixtures/reference/tyres.json.
it.each(Object.entries(tyres.diameters))(
  'a %s has the overall diameter of %d that makers print',
  (code, printed) => {
    const diameter = tyreDiameter({ code });
    if (!diameter.ok) throw new Error(diameter.reason);
    expect(Math.abs(diameter.value - printed)).toBeLessThanOrEqual(0.5);
  },
);
