/** Holds README.md against what a newcomer must read first. */
import { expect, it } from 'vitest';
import { readmeFaults } from './readme.ts';
import { textOf } from './source-files.ts';

it('R8: the README says in its first paragraph what this is, and names both commands', () => {
  expect(readmeFaults(textOf('README.md'))).toEqual([]);
});

it('a README without a title, a first paragraph or a command is found out', () => {
  const rest = '\n\nRun `npm start`, check with `npm test`.\n';
  expect(readmeFaults(`# S\n\nA sketcher.${rest}`)).toEqual([]);
  expect(readmeFaults(`A sketcher.${rest}`)).toHaveLength(1);
  expect(readmeFaults(`# S\n\n![picture](x.png)${rest}`)).toHaveLength(1);
  expect(readmeFaults(`# S\n\n## Install${rest}`)).toHaveLength(1);
  expect(readmeFaults('# S\n\nA sketcher.\n')).toHaveLength(2);
});
