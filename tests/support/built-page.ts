/** The page as it is shipped, built into a separate folder so that no other run is disturbed. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

export interface BuiltPage {
  readonly folder: string;
  remove(): void;
}

/** `source` is the folder that the page's settings lie in: the project, or a copy of it. */
export async function builtPage(source = ROOT): Promise<BuiltPage> {
  const folder = mkdtempSync(join(tmpdir(), 'sidestance-'));
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
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
