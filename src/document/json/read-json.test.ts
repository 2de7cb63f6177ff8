/** Tests of reading JSON: size, nesting, and where the fault lies. */
import { expect, it } from 'vitest';
import { DEEPEST_NESTING, LARGEST_TEXT, readJson } from './read-json.ts';

const kind = (text: string): string => {
  const result = readJson(text);
  return result.ok ? 'ok' : result.reason.kind;
};

it('reads what JSON allows at its deepest, and nothing deeper', () => {
  const nested = (levels: number) => '['.repeat(levels) + ']'.repeat(levels);
  expect(kind(nested(DEEPEST_NESTING))).toBe('ok');
  expect(kind(nested(DEEPEST_NESTING + 1))).toBe('tooDeep');
  expect(kind('['.repeat(1_000_000))).toBe('tooDeep');
});

it('does not take brackets within text for nesting', () => {
  expect(kind(JSON.stringify('[{'.repeat(100)))).toBe('ok');
  expect(kind(JSON.stringify('"\\[['.repeat(100)))).toBe('ok');
});

it('tells a text that breaks off from one that is wrong', () => {
  expect(kind('{"a": [1, 2')).toBe('cutOff');
  expect(kind('{"a": "half')).toBe('cutOff');
  expect(kind('{"a": NaN}')).toBe('notJson');
  expect(kind('hello')).toBe('notJson');
  expect(kind(']]]')).toBe('notJson');
});

it('calls a blank text empty', () => {
  expect([kind(''), kind(' \r\n'), kind('\ufeff')]).toEqual(['empty', 'empty', 'empty']);
});

it('says in which line the fault is', () => {
  const result = readJson('{\n  "a": 1,\n  "b": NaN\n}');
  expect(!result.ok && result.reason.sentence).toBe(
    'The file is not JSON that can be read: line 3, column 8 is wrong.',
  );
});

it('refuses a name that is given twice, with both places, instead of quietly taking the last', () => {
  const result = readJson('{\n  "forkTubes": 5,\n  "forkExtenders": 0,\n  "forkTubes": 9\n}');
  expect(!result.ok && result.reason).toEqual({
    kind: 'repeatedName',
    sentence:
      'The file gives "forkTubes" twice in one group, at line 2, column 3 and at line 4, column 3; only one of them can be meant.',
  });
});

it('refuses more than 5 MB of text and takes 5 MB', () => {
  const result = readJson(`"${'x'.repeat(LARGEST_TEXT)}"`);
  expect(!result.ok && result.reason).toEqual({
    kind: 'tooLarge',
    sentence: 'The file is 5.0 MB; a bike takes a few kB, and nothing above 5.0 MB is opened.',
  });
  expect(kind(`"${'x'.repeat(LARGEST_TEXT - 2)}"`)).toBe('ok');
});
