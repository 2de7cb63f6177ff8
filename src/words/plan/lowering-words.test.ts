/** Tests of the ways to lower a seat in words. */
import { expect, it } from 'vitest';
import { costName, costWords, shortfallWords } from './lowering-words.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const style = { system: 'metric', decimal: '.' } as const;
const trail = { reading: 'trail', state: 'riderUp' } as const;

it('a cost has its figure and the difference of the figures as they are written', () => {
  // Written 100.0 and 102.3, though the difference itself would be written 2.4.
  const { value, change } = costWords({ ...trail, before: 99.96, after: 102.34 }, style);
  expect([plain(value), plain(change)]).toEqual(['102.3 mm', '+2.3 mm']);
  expect(costWords({ ...trail, before: 100.01, after: 99.99 }, style).change).toBe('same');
  expect(costWords({ ...trail, before: 100, after: null }, style)).toEqual({ value: '–', change: '' });
  expect(costName(trail, 'chain')).toBe('Trail, rider on board');
  expect(costName({ ...trail, reading: 'tyreToClampGap' }, 'chain')).toMatch(/, fork bottomed$/);
});

it('a way that does not reach says where it ends', () => {
  const way = { key: 'preload', turned: [], costs: [], drop: 6.24 } as const;
  expect(plain(shortfallWords({ ...way, reached: false }, style))).toBe('Ends at 6.2 mm down.');
  expect(shortfallWords({ ...way, reached: true }, style)).toBe('');
});
