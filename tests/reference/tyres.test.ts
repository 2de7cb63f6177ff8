/** Tyre diameters by size code against published ones. */
import { describe, expect, it } from 'vitest';
import tyres from '../../fixtures/reference/tyres.json';
import { tyreDiameter } from '../../src/core/parts/tyre.ts';

function diameterOf(code: string): number {
  const diameter = tyreDiameter({ code });
  if (!diameter.ok) throw new Error(diameter.reason);
  return diameter.value;
}

describe('the outside diameter of a tyre', () => {
  // Makers' published overall diameters, printed to 0.1 mm.
  it.each(Object.entries(tyres.published.diameters))('of %s is %d as published', (code, diameter) => {
    expect(diameterOf(code)).toBeCloseTo(diameter, 9);
  });

  // The definition of the size code, worked by hand.
  it.each(Object.entries(tyres.byDefinition.diameters))('of %s is %d by definition', (code, diameter) => {
    expect(diameterOf(code)).toBeCloseTo(diameter, 9);
  });
});
