/** A copy of the source in a folder that goes again, into which made-up things are written. */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { MadeUpThing } from './made-up-things.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** What the type check, the commands and the build read. */
const COPIED = [
  'src',
  'static',
  'package.json',
  'svelte.config.js',
  'tsconfig.json',
  'tsconfig.core.json',
  'LICENSE',
  'vite.config.ts',
];

export interface SourceCopy {
  readonly folder: string;
  remove(): void;
}

/** The source without its tests, with each thing added by its file and its row. */
export function copySource(things: readonly MadeUpThing[]): SourceCopy {
  const folder = mkdtempSync(join(tmpdir(), 'sidestance-copy-'));
  for (const part of COPIED)
    cpSync(join(ROOT, part), join(folder, part), {
      recursive: true,
      filter: (file) => !file.endsWith('.test.ts'),
    });
  // A junction needs no rights on Windows.
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'), 'junction');
  for (const thing of things) add(thing, folder);
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

function add({ name, file, text, list, before, row, imports }: MadeUpThing, folder: string): void {
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text, { flag: 'wx' });
  const parts = readFileSync(join(folder, list), 'utf8').split(before);
  if (parts.length !== 2)
    throw new Error(
      `${name} finds no place for its row: ${list} holds “${before}” ${parts.length - 1} times.`,
    );
  const withRow = parts.join(`${row}${before}`);
  writeFileSync(
    join(folder, list),
    imports === null ? withRow : withRow.replace('\nimport ', () => `\n${imports}\nimport `),
  );
}
