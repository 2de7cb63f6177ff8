/** Tests of tyre sizes. */
import { describe, expect, it } from 'vitest';
import { readTyreCode, tyreDiameter, type Tyre } from './tyre.ts';

describe('a tyre code', () => {
  it.each([
    ['120/70-17', 120, 70, 17],
    ['120/70 ZR17', 120, 70, 17],
    ['120/70ZR17', 120, 70, 17],
    ['190/55ZR17 M/C 75W', 190, 55, 17],
    ['190/55 ZR 17', 190, 55, 17],
    [' 90/90 - 21 ', 90, 90, 21],
    ['110/90 B19', 110, 90, 19],
    ['150/60 r17', 150, 60, 17],
    ['140/70-16.5', 140, 70, 16.5],
    ['140/70-16,5', 140, 70, 16.5],
    ['120/70 17', 120, 70, 17],
  ])('%j is read', (code, width, aspect, rim) => {
    expect(readTyreCode(code)).toEqual({ width, aspect, rim });
  });

  it.each(['', 'soft', '120/70', '120-17', '3.25-19', '120/70-', '120/70-171', '/70-17', '12000/70-17'])(
    '%j is not read',
    (code) => expect(readTyreCode(code)).toBe('tyreCodeUnreadable'),
  );
});

describe('a tyre', () => {
  const diameter = (tyre: Tyre) => {
    const result = tyreDiameter(tyre);
    return result.ok ? result.value : result.reason;
  };

  it('has its measured diameter, or its measured circumference over pi', () => {
    expect(diameter({ diameter: 638 })).toBe(638);
    expect(diameter({ circumference: 2000 })).toBeCloseTo(636.6198, 4);
  });

  it.each([
    ['120/70-17', 599.8],
    ['160/60-17', 623.8],
    ['180/55-17', 629.8],
    ['190/50-17', 621.8],
    ['190/55-17', 640.8],
    ['200/55-17', 651.8],
    ['110/90-19', 680.6],
    ['90/90-21', 695.4],
    ['140/80-18', 681.2],
  ])('of code %s measures two section heights and the rim: %d', (code, expected) => {
    expect(diameter({ code })).toBeCloseTo(expected, 9);
  });

  it('is refused when its code cannot be read', () => {
    expect(diameter({ code: 'soft' })).toBe('tyreCodeUnreadable');
  });

  it('is refused when no wheel has its size', () => {
    expect(diameter({ diameter: 149 })).toBe('tyreSizeImpossible');
    expect(diameter({ diameter: 2001 })).toBe('tyreSizeImpossible');
    expect(diameter({ diameter: NaN })).toBe('tyreSizeImpossible');
    expect(diameter({ circumference: -2000 })).toBe('tyreSizeImpossible');
    expect(diameter({ code: '999/99-99' })).toBe('tyreSizeImpossible');
  });
});
