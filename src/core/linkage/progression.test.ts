/** Tests of progression in per cent and in words. */
import { describe, expect, it } from 'vitest';
import { progression, PROGRESSION_WORDS } from './progression.ts';

const word = (...ratios: number[]) => progression(ratios)?.word;

describe('a suspension', () => {
  it('is progressive when its motion ratio rises, with the leverage falling by the workshop’s figure', () => {
    const found = progression([0.4, 0.43, 0.46, 0.5]);
    expect(found?.word).toBe('progressive');
    // From 2.5 to 2 to 1.
    expect(found?.leverageFallPercent).toBeCloseTo(20, 12);
    expect(found?.ratioRisePercent).toBeCloseTo(25, 12);
    expect(found?.spreadPercent).toBeCloseTo(25, 12);
  });

  it('is falling when it falls, nearly straight when it stays within 4 per cent', () => {
    expect(word(0.5, 0.46, 0.43)).toBe('falling');
    expect(word(0.5, 0.51, 0.505)).toBe('nearlyStraight');
    expect(word(0.5, 0.525)).toBe('progressive');
  });

  it('is rising then falling with a hump well above both ends, the reverse with such a dip', () => {
    expect(word(0.4, 0.48, 0.42)).toBe('risingThenFalling');
    expect(word(0.4, 0.5, 0.495)).toBe('progressive');
    expect(word(0.48, 0.4, 0.46)).toBe('fallingThenRising');
    expect(word(0.48, 0.4, 0.405)).toBe('falling');
  });

  it('is not judged without two ratios above zero', () => {
    expect(progression([0.4])).toBeNull();
    expect(progression([0.4, 0])).toBeNull();
    expect(progression([0.4, NaN])).toBeNull();
  });

  it('has words for each judgement', () => {
    for (const ratios of [
      [0.4, 0.5],
      [0.5, 0.4],
      [0.5, 0.5],
      [0.4, 0.5, 0.4],
      [0.5, 0.4, 0.5],
    ]) {
      const found = progression(ratios);
      expect(found === null ? '' : PROGRESSION_WORDS[found.word]).toMatch(/^[a-z]/);
    }
  });
});
