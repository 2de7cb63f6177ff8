/** The project's own files as the rule tests see them: their paths from the root, and their text. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Every file below a folder of the root, with forward slashes, e.g. `src/core/plane/point.ts`; none if it is absent. */
export function filesBelow(folder: string): string[] {
  if (!existsSync(root + folder)) return [];
  return readdirSync(root + folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll('\\', '/').slice(root.length))
    .sort();
}

export function textOf(file: string): string {
  return readFileSync(root + file, 'utf8');
}

/** The files a person writes code in; data and pages are not among them. */
export function isCode(file: string): boolean {
  return /\.(ts|js|svelte)$/.test(file);
}
