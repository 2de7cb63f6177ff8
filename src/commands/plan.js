/** `npm run plan -- FILE --target … --with …`: installs what is missing, then runs plan.ts and prints nothing but its output. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installPackages, root } from './install.js';

installPackages();
const { bundle } = await import('./bundle.js');
const folder = await bundle({
  plan: `${root}src/commands/plan.ts`,
  'plan-share': `${root}src/commands/plan-share.ts`,
});
/** @type {{ run(args: string[], shareFile: URL): Promise<number> }} */
const { run } = await import(pathToFileURL(join(folder, 'plan.js')).href);
process.exitCode = await run(process.argv.slice(2), pathToFileURL(join(folder, 'plan-share.js')));
