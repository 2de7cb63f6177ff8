/** Tests of tyres in words. */
import { describe, expect, it } from 'vitest';
import { tyreDiameter } from '../../../core/parts/tyre.ts';
import { COMMON_SIZES } from '../../../core/parts/common-tyres.ts';
import { tyreRefusal, tyreWords, wayOf } from './tyre-text.ts';

describe('tyres in words', () => {
  it('offer no size that the model would refuse, and none twice', () => {
    for (const sizes of Object.values(COMMON_SIZES)) {
      expect(new Set(sizes).size).toBe(sizes.length);
      for (const code of sizes) {
        const diameter = tyreDiameter({ code });
        expect(diameter.ok && diameter.value).toBeGreaterThan(500);
        expect(diameter.ok && diameter.value).toBeLessThan(750);
      }
    }
  });

  it('say why a tyre is refused', () => {
    expect(tyreRefusal({ code: '120/70-17' })).toBeNull();
    expect(tyreRefusal({ code: 'round' })).toContain('120/70-17');
    expect(tyreRefusal({ diameter: 20 })).toContain('unit');
  });

  it('tell the three ways apart', () => {
    expect([{ code: 'a' }, { diameter: 1 }, { circumference: 1 }].map(wayOf)).toEqual([
      'code',
      'diameter',
      'circumference',
    ]);
    expect(tyreWords({ diameter: 600 })).not.toBe(tyreWords({ circumference: 600 }));
  });
});
