/** How much JavaScript and style the page loads before its first sight and later, compressed as servers send it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { builtPage, type BuiltPage } from '../support/built-page.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goals, kB (1000 bytes) of gzip: scripts before the first sight, all scripts together, and each panel that comes later. */
const GOALS_KB = { firstSight: 130, all: 180, latePanel: 25 };

/** The entry that the page names, by its place below the page's own folder. */
const ENTRY = 'index.html';

/** What Vite writes of each file that it built. */
interface Chunk {
  readonly file: string;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
}
type Manifest = Readonly<Record<string, Chunk>>;

/** A chunk and all that it cannot run without, by their keys. */
function withImports(manifest: Manifest, key: string, found: Set<string> = new Set()): Set<string> {
  if (found.has(key)) return found;
  found.add(key);
  for (const next of manifest[key].imports ?? []) withImports(manifest, next, found);
  return found;
}

function sizes(page: BuiltPage): BenchRow[] {
  const read = (file: string): string => readFileSync(join(page.folder, file), 'utf8');
  const manifest = JSON.parse(read('.vite/manifest.json')) as Manifest;
  const kB = (files: Iterable<string>): number =>
    [...new Set(files)].reduce((sum, file) => sum + gzipSync(read(file), { level: 9 }).length, 0) / 1000;
  const scripts = (keys: Iterable<string>): number => kB([...keys].map((key) => manifest[key].file));

  const first = withImports(manifest, ENTRY);
  const late = new Set(Object.values(manifest).flatMap(({ dynamicImports }) => dynamicImports ?? []));
  if (late.size === 0) throw new Error('the page loads nothing later');
  const row = (what: string, figure: number, most?: number): BenchRow => ({
    what,
    figure,
    unit: 'kB',
    ...(most === undefined ? {} : { goal: { most } }),
  });
  const panels = [...late].map((key) => {
    const besides = [...withImports(manifest, key)].filter((each) => !first.has(each));
    return row(
      `scripts of ${key.replace(/^.*\//, '')}, which comes later`,
      scripts(besides),
      GOALS_KB.latePanel,
    );
  });
  return [
    row('styles before the first sight', kB([...first].flatMap((key) => manifest[key].css ?? []))),
    row('styles of all parts', kB(Object.values(manifest).flatMap(({ css }) => css ?? []))),
    ...panels.sort((a, b) => b.figure - a.figure),
    row('scripts before the first sight', scripts(first), GOALS_KB.firstSight),
    row(
      'scripts of all parts',
      scripts(Object.keys(manifest).filter((key) => manifest[key].file.endsWith('.js'))),
      GOALS_KB.all,
    ),
  ];
}

/** A size takes no time to measure, so the short form is the long one. */
export default async function firstLoad(): Promise<string[]> {
  const page = await builtPage();
  try {
    return benchTable(sizes(page));
  } finally {
    page.remove();
  }
}
