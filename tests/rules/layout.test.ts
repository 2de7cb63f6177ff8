/** Holds the top level against the list of what may be there. */
import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { strayNames } from './layout.ts';
import { root, textOf } from './source-files.ts';

it('R3: the top level holds only the fixed folders and what tools force there', () => {
  expect(strayNames(readdirSync(root), textOf('.gitignore'))).toEqual([]);
});

it('a stray file or folder is found, unless git ignores it', () => {
  const names = ['src', 'docs', 'tsconfig.core.json', 'notes.md', 'README.md.bak', 'dist', 'a.tsbuildinfo'];
  expect(strayNames(names, '# built\ndist/\n\n*.tsbuildinfo\n')).toEqual([
    'docs',
    'notes.md',
    'README.md.bak',
  ]);
});
