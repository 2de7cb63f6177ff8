/** Holds the files of the adjusters against their list: one file and one row each, in the room of its kind. */
import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { ADJUSTERS } from '../../src/core/adjusters/all-adjusters.ts';

const folder = new URL('../../src/core/adjusters/', import.meta.url);

/** The room that holds what an adjuster is, and no adjuster. */
const DEFINITION = 'definition';

/** `headAngleCupsDeg` is in `head-angle-cups-deg.ts`. */
const fileOf = (key: string): string => `${key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}.ts`;

it('every adjuster has a file named as its key in the room of its kind, and every file there has its row', () => {
  const rooms = readdirSync(folder, { withFileTypes: true }).filter(
    (entry) => entry.isDirectory() && entry.name !== DEFINITION,
  );
  const files = rooms.flatMap(({ name }) =>
    readdirSync(new URL(`${name}/`, folder))
      .filter((file) => !file.endsWith('.test.ts'))
      .map((file) => `${name}/${file}`),
  );
  expect(ADJUSTERS.map(({ kind, key }) => `${kind}/${fileOf(key)}`).sort()).toEqual(files.sort());
});
