/** Tests of a dimension in words. */
import { describe, expect, it } from 'vitest';
import { dimensionWords } from './dimension-words.ts';

const METRIC = { system: 'metric', decimal: '.' } as const;
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const words = (dx: number, dy: number): string =>
  plain(dimensionWords({ x: 100, y: 400 }, { x: 100 + dx, y: 400 + dy }, METRIC));

describe('a dimension', () => {
  it('goes down to a lower place, with a slope below zero, whichever way it lies', () => {
    expect(words(817, -124.6)).toBe('826.4 mm (forward 817.0 mm, down 124.6 mm, slope −8.67°)');
    expect(words(-817, -124.6)).toBe('826.4 mm (back 817.0 mm, down 124.6 mm, slope −8.67°)');
  });

  it('goes up to a higher place, with a slope above zero, whichever way it lies', () => {
    for (const dx of [300, -300])
      expect(words(dx, 400)).toMatch(/^500\.0 mm \((forward|back) 300\.0 mm, up 400\.0 mm, slope 53\.13°\)$/);
  });

  it('has no direction where the figure would be zero', () => {
    expect(words(250, 0.02)).toBe('250.0 mm (forward 250.0 mm, at the same height, slope 0.00°)');
    expect(words(-0.02, 250)).toBe('250.0 mm (level with it, up 250.0 mm, slope 90.00°)');
  });

  it('is written in inches with a comma for who reads so', () => {
    const inch = { system: 'inch', decimal: ',' } as const;
    expect(plain(dimensionWords({ x: 0, y: 0 }, { x: 254, y: -25.4 }, inch))).toMatch(
      /^10,05 in \(forward 10,00 in, down 1,00 in, /,
    );
  });
});
