/** Runs the one measurement whose file is named and prints the lines that it gives; `npm run bench` starts it. */
import { runnerImport } from 'vite';
import { root } from './install.js';

const [file, ...flags] = process.argv.slice(2);
/** @type {{ module: { default(short: boolean): string[] | Promise<string[]> } }} */
const { module } = await runnerImport(file, { root, logLevel: 'silent' });
for (const line of await module.default(flags.includes('--short'))) console.log(line);
