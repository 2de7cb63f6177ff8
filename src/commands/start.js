/** `npm start`: installs what is missing, builds the page and serves it. */
import { hostname, networkInterfaces } from 'node:os';
import { installPackages, root } from './install.js';
import { readPort } from './port.js';
import { buildTrouble, serveTrouble } from './start-trouble.js';

/** @param {string} sentence @param {number} [code] @returns {never} */
function stop(sentence, code = 1) {
  console.error(sentence);
  process.exit(code);
}

const strict = process.argv.includes('--strict-port');
const toNetwork = process.argv.includes('--lan');
const port =
  readPort(process.argv.slice(2), process.env.PORT) ??
  stop('The port must be a whole number from 1 to 65535, as in: npm start -- --port 4780', 2);

installPackages();
const { build } = await import('vite');
await build({ configFile: `${root}vite.config.ts`, logLevel: 'silent' }).catch((error) =>
  stop(buildTrouble(error, root)),
);
const { serve } = await import('./serve.js');
const { networkAddresses, networkHosts, networkLines } = await import('./network.js');
const addresses = toNetwork ? networkAddresses(networkInterfaces()) : [];
const server = await serve(`${root}dist`, port, {
  strict,
  ...(toNetwork && { hosts: networkHosts(addresses, hostname()) }),
}).catch((error) => stop(serveTrouble(error, port)));
if (server.portTaken !== port) console.log(`Port ${port} is busy, so another is used.`);
console.log(`Sidestance is at http://localhost:${server.portTaken}`);
if (toNetwork)
  for (const line of networkLines(addresses, server.portTaken, process.stdout.isTTY)) console.log(line);

for (const signal of ['SIGINT', 'SIGTERM']) {
  process.on(signal, () => process.exit(0));
}
