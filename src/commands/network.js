/** `npm start -- --lan`: the page for phones and tablets in the same network, where to find it and what that means. */
import { renderUnicodeCompact } from 'uqr';

/**
 * The addresses at which others in the network reach this machine; none that lead back to it.
 * @param {NodeJS.Dict<import('node:os').NetworkInterfaceInfo[]>} interfaces as the system lists them
 * @returns {string[]}
 */
export function networkAddresses(interfaces) {
  return Object.values(interfaces)
    .flatMap((each) => each ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}

/**
 * The names that a request from the network may ask for this machine by.
 * @param {string[]} addresses
 * @param {string} hostname the machine's own name
 * @returns {string[]}
 */
export function networkHosts(addresses, hostname) {
  const name = hostname.toLowerCase();
  return [...addresses, name, `${name}.local`];
}

/** White on black whatever the terminal's own colours are, because a camera wants dark on light. */
const CODE_COLOURS = ['\x1b[97;40m', '\x1b[0m'];

/**
 * What is printed: each address, the code of the first for a phone's camera, and what everyone should know.
 * @param {string[]} addresses
 * @param {number} port
 * @param {boolean} inColour whether this goes to a terminal
 * @returns {string[]}
 */
export function networkLines(addresses, port, inColour) {
  if (addresses.length === 0)
    return ['This machine is in no network, so no phone or tablet reaches the page.'];
  const [on, off] = inColour ? CODE_COLOURS : ['', ''];
  const places = addresses.map((address) => `http://${address}:${port}`);
  return [
    `Phones and tablets in the same network open it at ${places.join(' or ')}`,
    ...renderUnicodeCompact(places[0], { border: 2 })
      .split('\n')
      .map((line) => on + line + off),
    'Everyone in this network can open the page. They see none of your bikes: bikes stay on the device they were made on.',
    'Such an address opens only while this machine serves it. For the paddock, put the folder dist on a web server with https.',
  ];
}
