/** `npm run bench`: runs each file of tests/bench in turn and prints the lines it gives. */
import { existsSync, readdirSync } from 'node:fs';
import { installPackages, root } from './install.js';

installPackages();
const { runnerImport } = await import('vite');
const folder = `${root}tests/bench`;
const files = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith('.bench.ts')) : [];
if (files.length === 0) {
  console.error('tests/bench holds no *.bench.ts, so there is nothing to measure.');
  process.exitCode = 1;
}
for (const file of files.sort()) {
  console.log(`— ${file}`);
  /** @type {{ module: { default(): string[] | Promise<string[]> } }} */
  const { module } = await runnerImport(`${folder}/${file}`, { root, logLevel: 'silent' });
  for (const line of await module.default()) console.log(line);
}
