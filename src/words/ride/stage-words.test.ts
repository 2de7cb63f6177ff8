/** Tests of saying where a spring of two stages changes over. */
import { expect, it } from 'vitest';
import type { CurvedSpring } from '../../core/springs/main-spring.ts';
import { stageWords } from './stage-words.ts';

const METRIC = { system: 'metric', decimal: '.' } as const;
const spring = (changeover: number): CurvedSpring => ({
  kind: 'stages',
  count: 2,
  preload: 10,
  rate: 9,
  thenRate: 12,
  changeover,
});
const told = (changeover: number, kind: 'inSeries' | 'twoRates' | 'oneRate' = 'twoRates'): string =>
  stageWords(kind, spring(changeover), 120, 'fork', METRIC).replaceAll('\u00a0', ' ');

it('says at which travel the second rate begins, and that a changeover is passed or never reached', () => {
  expect(told(62)).toBe('The second rate begins at 52.0 mm of 120.0 mm of fork travel.');
  expect(told(4)).toBe('The preload has passed the changeover by 6.0 mm: only the second rate works.');
  expect(told(140)).toBe('The changeover is never reached: it lies at 130.0 mm of 120.0 mm of fork travel.');
  expect(told(Infinity, 'inSeries')).toBe('The springs never change over: neither is coil-bound.');
  expect(told(62, 'oneRate')).toBe('');
});
