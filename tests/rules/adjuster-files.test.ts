/** Holds the files of the adjusters against their list: one file and one row each. */
import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { ADJUSTERS } from '../../src/core/adjusters/all-adjusters.ts';

const folder = new URL('../../src/core/adjusters/', import.meta.url);

/** The files of the folder that are not adjusters. */
const OTHER_FILES = [
  'adjuster-groups.ts',
  'adjuster.ts',
  'all-adjusters.ts',
  'changed-adjusters.ts',
  'does-apply.ts',
  'fitting.ts',
  'named-adjusters.ts',
  'setup.ts',
  'working-order.ts',
];

/** `headAngleCupsDeg` is in `head-angle-cups-deg.ts`. */
const fileOf = (key: string): string => `${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}.ts`;

it('every adjuster has a file named as its key, and every such file has its row', () => {
  const files = readdirSync(folder).filter((file) => !file.endsWith('.test.ts'));
  expect([...ADJUSTERS.map(({ key }) => fileOf(key)), ...OTHER_FILES].sort()).toEqual(files.sort());
});
