/** Tests of how far a dragged label steps. */
import { describe, expect, it } from 'vitest';
import { stepsOfScrub } from './scrub-label.ts';

describe('a dragged label', () => {
  it('stays put within three pixels', () => {
    expect(stepsOfScrub(3, false, false)).toBeNull();
    expect(stepsOfScrub(-3, true, false)).toBeNull();
  });

  it('steps the way it is dragged, ten with Shift and a tenth with Alt', () => {
    expect(stepsOfScrub(23, false, false)).toBe(5);
    expect(stepsOfScrub(-23, false, false)).toBe(-5);
    expect(stepsOfScrub(23, true, false)).toBe(50);
    expect(stepsOfScrub(23, false, true)).toBe(0.5);
  });
});
