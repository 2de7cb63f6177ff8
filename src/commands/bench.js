/** `npm run bench`: runs the measurements of tests/bench, or those that are named, and prints the lines they give. */
import { benchNames, chosenBenches, runBenches } from './benches.js';
import { installPackages, root } from './install.js';

installPackages();
const folder = `${root}tests/bench`;
const names = benchNames(folder);
const { chosen, unknown, short } = chosenBenches(process.argv.slice(2), names);
if (unknown.length > 0) {
  console.error(`There is no measurement ${unknown.join(' or ')}. There are: ${names.join(', ')}.`);
  process.exit(2);
}
const failed = runBenches(folder, chosen, { short, print: (line) => console.log(line) });
console.log(failed.length === 0 ? '\nEvery measurement ran through.' : `\nFailed: ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
