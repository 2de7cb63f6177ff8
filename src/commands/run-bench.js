/** Runs the one measurement whose file is named and prints the lines that it gives; `npm run bench` starts it. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.js';

/** @type {import('vite').Plugin} Each file keeps its address, so that it finds its neighbours. */
const ownAddresses = {
  name: 'own-addresses',
  enforce: 'pre',
  transform: (code, id) => code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href)),
};

const [file, ...flags] = process.argv.slice(2);
const folder = await bundle({ bench: file }, [ownAddresses]);
/** @type {{ default(short: boolean): string[] | Promise<string[]> }} */
const bench = await import(pathToFileURL(join(folder, 'bench.js')).href);
const lines = await bench.default(flags.includes('--short'));
for (const line of lines) console.log(line);
// Where a missed goal is a failure, the lines are there all the same.
if (flags.includes('--strict') && lines.some((line) => line.endsWith(' MISSED'))) process.exitCode = 1;
