/** How large the scripts of the built page are, compressed as servers send them: before the first sight, and later. */
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BuiltPage } from './built-page.ts';

/** The entry that the page names, by its place below the page's own folder. */
const ENTRY = 'index.html';
/** What several late parts share, by the start of its file's name: it comes right after the first sight, before them. */
const SHARED = /(^|\/)shared-[^/]*\.js$/;
/** The thread that paints the first sight; the page names it in no import. */
const PAINTER = /^painter\.worker.*\.js$/;
/** All threads, with what they carry of the core a second time. */
const THREAD = /\.worker.*\.js$/;
/** Where the build puts scripts. */
const SCRIPTS = 'assets';

/** What Vite writes of each file that it built. */
interface Chunk {
  readonly file: string;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
}
type Manifest = Readonly<Record<string, Chunk>>;

/** kB (1000 bytes) of gzip. */
export interface ScriptSizes {
  /** What the page runs before it shows the bike, the thread that paints it included. */
  readonly firstSight: number;
  readonly all: number;
  /** What late parts share, which comes once and before any of them. */
  readonly shared: number;
  /** What each late part needs beside that, by its source's name; the largest first. */
  readonly late: readonly { readonly name: string; readonly size: number }[];
  readonly firstStyles: number;
  readonly allStyles: number;
}

/** A chunk and all that it cannot run without, by their keys. */
function withImports(manifest: Manifest, key: string, found: Set<string> = new Set()): Set<string> {
  if (found.has(key)) return found;
  found.add(key);
  for (const next of manifest[key].imports ?? []) withImports(manifest, next, found);
  return found;
}

export function scriptSizes(page: BuiltPage): ScriptSizes {
  const read = (file: string): string => readFileSync(join(page.folder, file), 'utf8');
  const manifest = JSON.parse(read('.vite/manifest.json')) as Manifest;
  const kB = (files: Iterable<string>): number =>
    [...new Set(files)].reduce((sum, file) => sum + gzipSync(read(file), { level: 9 }).length, 0) / 1000;
  const scripts = (keys: Iterable<string>): number => kB([...keys].map((key) => manifest[key].file));

  const threads = readdirSync(join(page.folder, SCRIPTS)).filter((file) => THREAD.test(file));
  const painters = threads.filter((file) => PAINTER.test(file));
  if (painters.length !== 1) throw new Error(`${painters.length} threads paint, and one should`);
  const painter = kB(painters.map((file) => `${SCRIPTS}/${file}`));
  const first = withImports(manifest, ENTRY);
  const sharing = Object.keys(manifest).filter((key) => SHARED.test(manifest[key].file));
  if (sharing.length !== 1)
    throw new Error(`${sharing.length} files hold what late parts share, and one should`);
  const here = withImports(manifest, sharing[0], new Set(first));
  const late = new Set(Object.values(manifest).flatMap(({ dynamicImports }) => dynamicImports ?? []));
  if (late.size === 0) throw new Error('the page loads nothing later');
  return {
    firstSight: scripts(first) + painter,
    all:
      scripts(Object.keys(manifest).filter((key) => manifest[key].file.endsWith('.js'))) +
      kB(threads.map((file) => `${SCRIPTS}/${file}`)),
    shared: scripts([...here].filter((each) => !first.has(each))),
    late: [...late]
      .map((key) => ({
        name: key.replace(/^.*\//, ''),
        size: scripts([...withImports(manifest, key)].filter((each) => !here.has(each))),
      }))
      .sort((a, b) => b.size - a.size),
    firstStyles: kB([...first].flatMap((key) => manifest[key].css ?? [])),
    allStyles: kB(Object.values(manifest).flatMap(({ css }) => css ?? [])),
  };
}
