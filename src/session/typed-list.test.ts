/** Tests of typed lists. */
import { describe, expect, it } from 'vitest';
import { readList, writeList, type ListRules } from './typed-list.ts';

const POINT = { system: 'metric', decimal: '.' } as const;
const COMMA = { system: 'metric', decimal: ',' } as const;
const LINKS: ListRules = { least: 2, most: 400, whole: true, longest: 12 };
const RATIOS: ListRules = { least: 0.1, most: 20, whole: false, longest: 3 };

describe('a typed list', () => {
  it('takes commas, semicolons and spaces between whole numbers', () => {
    for (const text of ['112,114', '112, 114', ' 112 114 ', '112;114;'])
      expect(readList(text, LINKS, POINT)).toEqual({ ok: true, value: [112, 114] });
    expect(readList('  ', LINKS, POINT)).toEqual({ ok: true, value: [] });
  });

  it('takes a comma within a number as the decimal sign where parts are allowed', () => {
    for (const text of ['2,6; 2,05', '2.6, 2.05', '2,6 2,05', '2,6, 2,05'])
      expect(readList(text, RATIOS, COMMA)).toEqual({ ok: true, value: [2.6, 2.05] });
  });

  it('is read back as it was written', () => {
    for (const style of [POINT, COMMA])
      expect(readList(writeList([2.6, 2, 0.93], style), RATIOS, style)).toMatchObject({
        value: [2.6, 2, 0.93],
      });
  });

  it('names what it cannot take', () => {
    expect(readList('112 abc', LINKS, POINT)).toEqual({ ok: false, reason: '“abc” is not a number.' });
    expect(readList('112.5', LINKS, POINT)).toEqual({ ok: false, reason: '“112.5” is not whole.' });
    expect(readList('0.05', RATIOS, COMMA)).toEqual({ ok: false, reason: '“0.05” is not from 0,1 to 20.' });
    expect(readList('1 1 1 1', RATIOS, POINT)).toEqual({ ok: false, reason: 'At most 3 numbers go here.' });
  });
});

describe('a list of spring rates', () => {
  const rules = { least: 0.1, most: 9999, whole: false, longest: 24, quantity: 'rate' } as const;
  const metric = { system: 'metric', decimal: '.' } as const;
  const inch = { system: 'inch', decimal: ',' } as const;

  it('is read in the user’s unit, and a unit word overrides it', () => {
    expect(readList('8.5 9, 50lb/in', rules, metric)).toEqual({
      ok: true,
      value: [8.5, 9, expect.closeTo(8.756, 3) as number],
    });
    const read = readList('50; 57,1', rules, inch);
    expect(read.ok && read.value[0]).toBeCloseTo(8.756, 3);
    expect(read.ok && writeList(read.value, inch, 'rate')).toBe('50; 57,1');
  });

  it('takes a unit with a space before it', () => {
    const read = readList('50 lb/in, 8.5 N/mm', rules, metric);
    expect(read).toEqual({ ok: true, value: [expect.closeTo(8.756, 3) as number, 8.5] });
  });

  it('asks about a number that may be thousands, where a figure above 100 can be meant', () => {
    for (const text of ['1,420', '9.5 1.420', '1,000'])
      expect(readList(text, rules, metric), text).toMatchObject({
        ok: false,
        reason: expect.stringMatching(/thousands or one with decimals/) as string,
      });
    expect(readList('1,42 9,52', rules, metric)).toEqual({ ok: true, value: [1.42, 9.52] });
    expect(readList('1,421', RATIOS, POINT)).toEqual({ ok: true, value: [1.421] });
  });

  it('refuses a number as computers write it, and one that no spring has', () => {
    for (const text of ['0x10', '1e3', '-4', '0']) expect(readList(text, rules, metric).ok, text).toBe(false);
  });
});
