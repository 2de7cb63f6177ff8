/** The page as it is shipped, built into a separate folder so that no other run is disturbed. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { threadId } from 'node:worker_threads';
import { build } from 'vite';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

export interface BuiltPage {
  readonly folder: string;
  remove(): void;
}

/** The project's own page where the tests of one run share it; it stays until they end. */
let shared: Promise<void> | null = null;

/** `source` is the folder that the page's settings lie in: the project, or a copy of it. */
export async function builtPage(source = ROOT): Promise<BuiltPage> {
  const shelf = process.env.SIDESTANCE_PAGES;
  if (shelf !== undefined && source === ROOT) {
    const folder = join(shelf, String(threadId));
    shared ??= buildInto(folder, ROOT);
    await shared;
    return { folder, remove: () => {} };
  }
  const folder = mkdtempSync(join(tmpdir(), 'sidestance-'));
  await buildInto(folder, source);
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

async function buildInto(folder: string, source: string): Promise<void> {
  const kind = process.env.NODE_ENV;
  // Under the tests' own kind the libraries' checks for developers are built in, 10 kB that do not ship.
  process.env.NODE_ENV = 'production';
  try {
    await build({
      configFile: join(source, 'vite.config.ts'),
      logLevel: 'error',
      build: { outDir: folder, emptyOutDir: true, manifest: true },
    });
  } finally {
    if (kind === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = kind;
  }
}
