/** Holds the table of folders in DEVELOPERS.md against the folders there are, and against the table the linter uses. */
import { expect, it } from 'vitest';
import { difference, foldersInTable, foldersOfFiles } from './folder-table.ts';
import { rowOf } from './folder-of.js';
import { folders } from './folders.js';
import { filesBelow, textOf } from './source-files.ts';

const told = foldersInTable(textOf('DEVELOPERS.md'));

it('R6: every folder under src has a row in DEVELOPERS.md, and every row has its folder', () => {
  const rows = foldersOfFiles(filesBelow('src')).map((name) => rowOf(name)?.folder ?? name);
  expect(difference(told, rows)).toEqual([]);
});

it('R7: the table of DEVELOPERS.md and the one the linter follows name the same folders', () => {
  expect(
    difference(
      told,
      folders.map((each) => each.folder),
    ),
  ).toEqual([]);
});

it('rows are read from the section on folders alone, header and rule left out', () => {
  const markdown =
    '# D\n\n## Folders\n\nText.\n\n| folder | purpose |\n|---|---|\n| `a/b` | `x` |\n| `c`, `d` | y |\n\n## More\n\n| `e` | z |\n';
  expect(foldersInTable(markdown)).toEqual(['a/b', 'c', 'd']);
  expect(foldersInTable('## Folders\n| `last` | row |')).toEqual(['last']);
  expect(foldersInTable('nothing')).toEqual([]);
});

it('a folder counts when a file lies in it and not when it only holds folders', () => {
  expect(foldersOfFiles(['src/core/plane/point.ts', 'src/ui/A.svelte', 'src/ui/B.svelte'])).toEqual([
    'core/plane',
    'ui',
  ]);
});

it('a row with a star is for the folders there without a row', () => {
  expect(rowOf('ui/chain')?.folder).toBe('ui/*');
  expect(rowOf('ui/view')?.folder).toBe('ui/view');
  expect(rowOf('ui')).toBeUndefined();
  expect(rowOf('ui/chain/below')).toBeUndefined();
  expect(rowOf('core/nowhere')).toBeUndefined();
});

it('a folder without a row and a row without a folder are both found', () => {
  expect(difference(['a', 'b'], ['b', 'c'])).toEqual(['c has no row', 'a has a row but no file']);
});
