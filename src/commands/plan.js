/** `npm run plan -- FILE --target … --with …`: installs what is missing, then runs plan.ts and prints nothing but its output. */
import { installPackages, root } from './install.js';

installPackages();
const { runnerImport } = await import('vite');
/** @type {{ module: { run(args: string[]): number | Promise<number> } }} */
const { module } = await runnerImport(`${root}src/commands/plan.ts`, { root, logLevel: 'silent' });
process.exitCode = await module.run(process.argv.slice(2));
