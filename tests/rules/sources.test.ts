/** Holds that every check against the outside world names its source. */
import { expect, it } from 'vitest';
import { filesBelow, textOf } from './source-files.ts';
import { checksWithoutSource, rowsWithoutSource } from './sources.ts';

it('R12: every check of tests/reference and every row of fixtures/reference names its source in the set form', () => {
  const tests = filesBelow('tests/reference');
  const fixtures = filesBelow('fixtures/reference');
  expect(tests.length).toBeGreaterThan(5);
  expect(fixtures.length).toBeGreaterThan(3);
  expect(tests.flatMap((file) => checksWithoutSource(textOf(file)).map((at) => `${file} ${at}`))).toEqual([]);
  expect(
    fixtures.flatMap((file) => rowsWithoutSource(JSON.parse(textOf(file))).map((at) => `${file} ${at}`)),
  ).toEqual([]);
});

it('a check has its source in the comment right above it', () => {
  const check = "it('is 3', () => {";
  const under = (...lines: string[]) => checksWithoutSource([...lines, check].join('\n'));
  expect(under('// Source: A. Author; Title; 2nd edition, 2006; Table 1.')).toEqual([]);
  expect(under('// Source: A. Author; Title; 2nd edition, 2006;', '// chapter 4; from memory.')).toEqual([]);
  expect(
    under('// Source: an exercise, book not recorded; from memory. Its digits are the tolerance.'),
  ).toEqual([]);
  expect(under('// Source: common practice, no source.')).toEqual([]);
  expect(under('// Source: beside each row of fixtures/reference/x.json.')).toEqual([]);
  for (const wrong of [
    '',
    '// Source: somewhere.',
    '// Source: A. Author; Title; Table 1.',
    '// A. Author; T; 1; p. 3.',
    '// Source: A. Author; Title; edition not recorded; p. 3.',
  ])
    expect(under(wrong)).toEqual([`line 2: ${check}`]);
  expect(under('// Source: common practice, no source.', '')).toHaveLength(1);
  expect(checksWithoutSource('const table = describe;\n  it(inside)')).toEqual([]);
});

it('a row has its own source or lies in a part that has one', () => {
  const source = 'A. Author; Title; 2006; p. 3';
  expect(rowsWithoutSource({ source, rows: [{ a: 1 }, { b: 2 }] })).toEqual([]);
  expect(rowsWithoutSource({ rows: [{ source, a: 1 }, { b: 2 }] })).toEqual(['.rows.1.b']);
  expect(rowsWithoutSource({ source: 'a page on the web', a: 1 })).toEqual(['.source']);
  expect(rowsWithoutSource({ first: { source, a: 1 }, second: { a: 1 } })).toEqual(['.second.a']);
});
