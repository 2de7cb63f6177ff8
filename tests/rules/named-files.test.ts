/** Holds the files that DEVELOPERS.md and README.md name against those there are. */
import { expect, it } from 'vitest';
import { missingPaths, namedPaths } from './named-files.ts';
import { filesBelow, textOf } from './source-files.ts';

const files = ['src', 'tests', 'fixtures', 'static'].flatMap((folder) => filesBelow(folder));

it.each(['DEVELOPERS.md', 'README.md'])('R10: every file that %s names is there', (page) => {
  const named = namedPaths(textOf(page));
  expect(missingPaths(named, files)).toEqual([]);
});

it('a file that is named and gone is found, and a pattern or a command does not count as one', () => {
  const text = 'See `core/plane/point.ts`, `gone/away.ts`, `tests/rules/`, `*.spec.ts` and `npm test`.';
  const named = namedPaths(text);
  expect(named).toEqual(['core/plane/point.ts', 'gone/away.ts', 'tests/rules/']);
  expect(missingPaths(named, ['src/core/plane/point.ts', 'tests/rules/layout.ts'])).toEqual(['gone/away.ts']);
});
