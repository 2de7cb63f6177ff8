/** Tests of an adjuster's second way of counting. */
import { describe, expect, it } from 'vitest';
import { asideBetween, asideText } from './aside-text.ts';

const style = { system: 'metric', decimal: ',' } as const;

describe('an aside', () => {
  it('has no needless digits, and one of a thing is one', () => {
    expect(asideText({ amount: 1.5, counted: 'turns' }, style)).toBe('1,5\u00a0turns');
    expect(asideText({ amount: -1, counted: 'turns' }, style)).toBe('1\u00a0turn');
    expect(asideText({ amount: 1 / 3, counted: 'links' }, style)).toBe('0,33\u00a0links of chain');
    expect(asideText({ amount: 0.001, counted: 'links' }, style)).toBe('');
  });

  it('between two values is their difference, and there is none without both', () => {
    const turns = (amount: number) => ({ amount, counted: 'turns' as const });
    expect(asideBetween(turns(3), turns(1))).toEqual(turns(2));
    expect(asideBetween(turns(3), null)).toBeNull();
  });
});
