/** Holds every source file against the rules that can be read from its text. */
import { describe, expect, it } from 'vitest';
import { escapesIn } from './escapes.ts';
import { fileFaults } from './file-faults.ts';
import { filesBelow, isCode, textOf } from './source-files.ts';

const code = [...filesBelow('src'), ...filesBelow('tests')].filter(isCode);

it('R4: every source file opens with one sentence, has at most 400 lines and is neither a barrel nor a "util"', () => {
  expect(code.length).toBeGreaterThan(0);
  expect(code.flatMap((file) => fileFaults(file, textOf(file)).map((fault) => `${file} ${fault}`))).toEqual(
    [],
  );
});

it('R5: no test is skipped or focused and no check is switched off', () => {
  expect(code.flatMap((file) => escapesIn(textOf(file)).map((found) => `${file} ${found}`))).toEqual([]);
});

describe('the finder of faults', () => {
  const good = '/** A point in the plane. */\nexport {};\n';

  it('passes the three ways of opening a file', () => {
    expect(fileFaults('src/a/point.ts', good)).toEqual([]);
    expect(fileFaults('src/a/point.ts', '// A point, e.g. an axle.\n')).toEqual([]);
    expect(fileFaults('src/a/Point.svelte', '<!-- A point of 1.5 mm\n  and its label. -->\n<p></p>')).toEqual(
      [],
    );
    expect(fileFaults('src/a/point.ts', '/**\n * A point\n * in the plane.\n */\n')).toEqual([]);
  });

  it('finds a missing opening, an unfinished one and one of two sentences', () => {
    expect(fileFaults('src/a/point.ts', "import './b.ts';\n")).toHaveLength(1);
    expect(fileFaults('src/a/point.ts', '\n/** A point. */\n')).toHaveLength(1);
    expect(fileFaults('src/a/point.ts', '/** A point */\n')).toHaveLength(1);
    expect(fileFaults('src/a/point.ts', '/** A point. And a line. */\n')).toHaveLength(1);
  });

  it('finds a file of 401 lines and passes one of 400', () => {
    expect(fileFaults('src/a/point.ts', good + '//\n'.repeat(398))).toEqual([]);
    expect(fileFaults('src/a/point.ts', good + '//\n'.repeat(399))).toEqual(['has 401 lines, more than 400']);
  });

  it('finds barrels and names that say nothing, in files and in folders', () => {
    for (const bad of ['src/a/index.ts', 'src/a/utils.ts', 'src/utils/point.ts', 'src/a/point-util.ts'])
      expect(fileFaults(bad, good)).toHaveLength(1);
  });
});

describe('the finder of escapes', () => {
  it('finds each of them with its line', () => {
    const bad = [
      'it.' + 'skip("x")',
      'test.describe.' + 'only("x")',
      'f' + 'it("x")',
      '// @ts-' + 'ignore',
      '/* eslint-' + 'disable */',
      'const x = y as a' + 'ny;',
      'function f(x: a' + 'ny) {}',
      'const x: Map<string, a' + 'ny> = y;',
      'const files = import.meta.' + 'glob("x")',
    ];
    bad.forEach((line) => expect(escapesIn(`\n${line}`), line).toHaveLength(1));
    expect(escapesIn(`\n${bad[0]}`)[0]).toMatch(/^line 2: a skipped/);
  });

  it('leaves ordinary words and calls alone', () => {
    const fine = [
      '// units: any of the table',
      'list.only(x)',
      'const anything = 1;',
      'it("skips a tooth", f)',
    ];
    fine.forEach((line) => expect(escapesIn(line), line).toEqual([]));
  });
});
