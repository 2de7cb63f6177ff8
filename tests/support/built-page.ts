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
  await build({
    configFile: join(source, 'vite.config.ts'),
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true, manifest: true },
  });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
