/** `npm start`: installs what is missing, builds the page and serves it. */
import { installPackages, root } from './install.js';
import { readPort } from './port.js';

const strict = process.argv.includes('--strict-port');
const port = readPort(process.argv.slice(2), process.env.PORT);
if (port === undefined) {
  console.error('The port must be a whole number from 1 to 65535, as in: npm start -- --port 4780');
  process.exit(2);
}

installPackages();
const { build } = await import('vite');
await build({ configFile: `${root}vite.config.ts`, logLevel: 'warn' });
const { serve } = await import('./serve.js');
const server = await serve(`${root}dist`, port, { strict });
if (server.portTaken !== port) console.log(`Port ${port} is busy, so another is used.`);
console.log(`Sidestance is at http://localhost:${server.portTaken}`);

for (const signal of ['SIGINT', 'SIGTERM']) {
  process.on(signal, () => process.exit(0));
}
