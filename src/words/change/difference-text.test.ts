/** Tests of how a change is written. */
import { describe, expect, it } from 'vitest';
import { differenceOf } from './difference-text.ts';

const style = { system: 'metric', decimal: '.' } as const;

describe('a difference', () => {
  it('carries an arrow and a sign', () => {
    expect(differenceOf(98.6, 96.4, 'length', style)).toEqual({
      direction: 'more',
      arrow: '▲',
      amount: '+2.2\u00a0mm',
      digits: '+2.2',
    });
    expect(differenceOf(23.5, 24, 'angle', style)).toEqual({
      direction: 'less',
      arrow: '▼',
      amount: '−0.50°',
      digits: '−0.50',
    });
  });

  it('of one tooth is one tooth', () => {
    expect(differenceOf(15, 16, 'teeth', style).amount).toBe('−1\u00a0tooth');
    expect(differenceOf(18, 16, 'teeth', style).amount).toBe('+2\u00a0teeth');
  });

  it('below the shown digits is none', () => {
    expect(differenceOf(96.44, 96.41, 'length', style).direction).toBe('same');
  });
});
