/** How much JavaScript and style the page loads before it can be used, compressed as servers send it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { builtPage } from '../support/built-page.ts';

/** Goal for all scripts of the first load together, kB (1000 bytes). */
const GOAL_KB = 160;

const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

/** The files that the page names itself, whether as script, as module to load ahead, or as style. */
function namedIn(html: string, ending: string): string[] {
  return [...html.matchAll(/(?:src|href)="([^"]+)"/g)]
    .map((match) => match[1])
    .filter((address) => address.endsWith(ending));
}

export default async function firstLoad(): Promise<string[]> {
  const page = await builtPage();
  try {
    const html = readFileSync(join(page.folder, 'index.html'), 'utf8');
    const sizes = (ending: string): { plain: number; gzip: number } => {
      const files = namedIn(html, ending).map((file) => readFileSync(join(page.folder, file)));
      if (files.length === 0) throw new Error(`the page names no ${ending}`);
      return {
        plain: files.reduce((sum, file) => sum + file.length, 0),
        gzip: files.reduce((sum, file) => sum + gzipSync(file, { level: 9 }).length, 0),
      };
    };
    const scripts = sizes('.js');
    const styles = sizes('.css');
    return [
      `scripts ${kB(scripts.gzip)} gzip (${kB(scripts.plain)}); goal ${GOAL_KB} kB: ${scripts.gzip <= 1000 * GOAL_KB ? 'met' : 'MISSED'}`,
      `styles ${kB(styles.gzip)} gzip (${kB(styles.plain)})`,
    ];
  } finally {
    page.remove();
  }
}
