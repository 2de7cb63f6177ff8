/** Tests of finding a name that is given twice. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import '../../../tests/support/cases.ts';
import { repeatedName } from './repeated-name.ts';

describe('a name given twice', () => {
  it('is found in the very group that holds both, wherever that lies', () => {
    const name = (text: string) => repeatedName(text)?.name;
    expect(name('{"a":1,"b":2,"a":3}')).toBe('a');
    expect(name('{"list":[0,{"x":1,"x":1}]}')).toBe('x');
    expect(name('{"a":{"b":1},"c":{"b":{},"d":[],"b":[]}}')).toBe('b');
    expect(name('{"":0,"":0}')).toBe('');
    expect(name('{"__proto__":0,"__proto__":0}')).toBe('__proto__');
  });

  it('is reported with both its places', () => {
    expect(repeatedName('{"a": 1,\n "a": 2}')?.at).toEqual([1, 10]);
  });

  it('is the same name when one is spelled with escapes', () => {
    expect(repeatedName('{"a":1,"\\u0061":2}')?.name).toBe('a');
    expect(repeatedName('{"\\"":1,"\\u0022":2}')?.name).toBe('"');
  });

  it('is not seen in names of other groups, nor in text', () => {
    for (const text of [
      '{"a":{"a":{"a":1}},"b":[{"a":1},{"a":1}]}',
      '{"a":"b","b":"a","c":["a","a"]}',
      '{"a":"\\",\\"a\\":1","b":"\\\\"}',
      '["a","a"]',
      '"a"',
      '{}',
    ])
      expect(repeatedName(text)).toBeNull();
  });

  it('is in no text that a program has written', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(repeatedName(text)).toBeNull();
      }),
    );
  });
});
