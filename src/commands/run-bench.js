/** Runs the one measurement whose file is named and prints the lines that it gives; `npm run bench` and `npm run endure` start it, which takes a missed goal for a failure (`--strict`). */
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { root } from './install.js';

/** @type {import('vite').Plugin} Each file keeps its address, so that it finds its neighbours. */
const ownAddresses = {
  name: 'own-addresses',
  enforce: 'pre',
  transform: (code, id) => code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href)),
};

/**
 * The measurement with all files of the program that it needs in one, as the page's scripts are: small functions
 * called from file to file would take several times as long. Packages stay outside, hence the folder. @param {string}
 * file @param {string} folder @returns {Promise<{ default(short: boolean): string[] | Promise<string[]> }>}
 */
async function asBuilt(file, folder) {
  await build({
    configFile: false,
    root,
    logLevel: 'silent',
    plugins: [ownAddresses],
    build: { ssr: file, outDir: folder, rolldownOptions: { output: { entryFileNames: 'bench.js' } } },
  });
  return import(pathToFileURL(join(folder, 'bench.js')).href);
}

const [file, ...flags] = process.argv.slice(2);
const folder = mkdtempSync(join(root, 'node_modules/.bench-'));
process.on('exit', () => rmSync(folder, { recursive: true }));
const bench = await asBuilt(file, folder);
const lines = await bench.default(flags.includes('--short'));
for (const line of lines) console.log(line);
if (flags.includes('--strict') && lines.some((line) => line.endsWith(' MISSED'))) process.exitCode = 1;
