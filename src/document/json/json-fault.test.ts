/** Tests of finding the fault in a text that is almost JSON. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { jsonFaultAt } from './json-fault.ts';

it('finds no fault in any JSON', () => {
  fc.assert(
    fc.property(fc.json(), (text) => {
      expect(jsonFaultAt(text)).toBeNull();
    }),
  );
});

it('finds a fault exactly when the parser refuses the text', () => {
  const marks = fc.constantFrom(
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '"',
    '"a"',
    '1',
    '-',
    'true',
    'nul',
    ' ',
    '\\',
    '01',
  );
  fc.assert(
    fc.property(fc.array(marks, { maxLength: 8 }), (parts) => {
      const text = parts.join('');
      let parses = true;
      try {
        JSON.parse(text);
      } catch {
        parses = false;
      }
      expect(jsonFaultAt(text) === null, text).toBe(parses);
    }),
    { numRuns: cases(3000) },
  );
});

it.each([
  ['{"a": NaN}', 6],
  ['{"a": 1,}', 8],
  ['{"a" 1}', 5],
  ['[1 2]', 3],
  ['{a: 1}', 1],
  ['"tab\there"', 4],
  ['"\\q"', 1],
  ['[1] x', 4],
  ['[1', 2],
])('puts the fault of %s at %i', (text, at) => {
  expect(jsonFaultAt(text)).toBe(at);
});
