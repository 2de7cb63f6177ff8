/** The page as it is shipped, built into a folder of its own so that no other run is disturbed. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

export interface BuiltPage {
  readonly folder: string;
  remove(): void;
}

export async function builtPage(): Promise<BuiltPage> {
  const folder = mkdtempSync(join(tmpdir(), 'sidestance-'));
  const configFile = fileURLToPath(new URL('../../vite.config.ts', import.meta.url));
  await build({
    configFile,
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true, manifest: true },
  });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
