/** Files of the program with all that they need in one each, as the page's scripts are, for what takes long under node. */
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { root } from './install.js';

/**
 * Writes each entry as NAME.js into a folder that is gone when the process ends: small functions called from file to file
 * would take several times as long. Packages stay outside, hence the place of the folder.
 * @param {Record<string, string>} entries names, and the files behind them
 * @param {import('vite').Plugin[]} plugins
 * @returns {Promise<string>} the folder
 */
export async function bundle(entries, plugins = []) {
  const folder = mkdtempSync(join(root, 'node_modules/.bundle-'));
  process.on('exit', () => rmSync(folder, { recursive: true }));
  await build({
    configFile: false,
    root,
    logLevel: 'silent',
    plugins,
    build: {
      ssr: true,
      outDir: folder,
      rolldownOptions: { input: entries, output: { entryFileNames: '[name].js' } },
    },
  });
  return folder;
}
