/** Tests of telling whether two values say the same. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import '../../tests/support/cases.ts';
import { sameValue } from './same-document.ts';

it('takes a copy for the same, whatever the order of its fields', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(sameValue(value, JSON.parse(JSON.stringify(value)))).toBe(true);
    }),
  );
  expect(sameValue({ a: 1, b: [2] }, { b: [2], a: 1 })).toBe(true);
});

it('sees each kind of difference', () => {
  const pairs: [unknown, unknown][] = [
    [{ a: 1 }, { a: 2 }],
    [{ a: 1 }, { b: 1 }],
    [{ a: 1 }, { a: 1, b: undefined }],
    [
      [1, 2],
      [2, 1],
    ],
    [[], {}],
    [null, {}],
    [null, 0],
    [1, '1'],
  ];
  for (const [a, b] of pairs) expect(sameValue(a, b)).toBe(false);
});

it('takes a zero for a zero whatever its sign, as a file does', () => {
  expect(sameValue({ a: 0 }, { a: -0 })).toBe(true);
});
