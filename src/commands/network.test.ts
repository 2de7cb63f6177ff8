/** Tests of serving the network: who is answered, and what is printed. */
import { request } from 'node:http';
import jsQR from 'jsqr';
import { expect, it } from 'vitest';
import { networkAddresses, networkHosts, networkLines } from './network.js';
import { serve } from './serve.js';

const card = (family: 'IPv4' | 'IPv6', address: string, internal = false) =>
  ({ family, address, internal }) as import('node:os').NetworkInterfaceInfo;

it('the addresses are those that others reach', () => {
  expect(
    networkAddresses({
      lo: [card('IPv4', '127.0.0.1', true), card('IPv6', '::1', true)],
      wifi: [card('IPv6', 'fe80::1'), card('IPv4', '192.168.7.20')],
      cable: [card('IPv4', '10.1.2.3')],
      none: undefined,
    }),
  ).toEqual(['192.168.7.20', '10.1.2.3']);
});

/** The pixels of a code printed with half blocks, each module four wide and high, white where the block is. */
function pixelsOf(lines: readonly string[]) {
  const rows = lines.flatMap((line) => [
    [...line].map((sign) => sign === '█' || sign === '▀'),
    [...line].map((sign) => sign === '█' || sign === '▄'),
  ]);
  const [width, height] = [4 * (rows[0]?.length ?? 0), 4 * rows.length];
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      if (rows[y >> 2]?.[x >> 2] !== true) data.fill(0, 4 * (y * width + x), 4 * (y * width + x) + 3);
  return { data, width, height };
}

it('each address is printed, a camera reads the first from the code, and what it means is said', () => {
  const lines = networkLines(['192.168.7.20', '10.1.2.3'], 4780, false);
  expect(lines[0]).toBe(
    'Phones and tablets in the same network open it at http://192.168.7.20:4780 or http://10.1.2.3:4780',
  );
  const { data, width, height } = pixelsOf(lines.slice(1, -2));
  expect(jsQR(data, width, height)?.data).toBe('http://192.168.7.20:4780');
  expect(lines.at(-2)).toMatch(/^Everyone in this network can open the page\./);
  expect(lines.at(-1)).toMatch(/^Such an address opens only while this machine serves it\./);
  // The same code stands white on black in every terminal.
  const coloured = networkLines(['192.168.7.20'], 4780, true);
  expect(coloured[1]).toBe(`\x1b[97;40m${networkLines(['192.168.7.20'], 4780, false)[1]}\x1b[0m`);
});

it('a machine in no network says so', () => {
  expect(networkLines([], 4780, true)).toEqual([
    'This machine is in no network, so no phone or tablet reaches the page.',
  ]);
});

it.runIf(process.platform === 'linux')(
  'answers to the names it has in the network, and only when asked to',
  async () => {
    /** The status of the answer to a request that asks this machine for a host; the error's code where none comes. */
    const statusFor = (address: string, port: number, host: string): Promise<number | string | undefined> =>
      new Promise((done) => {
        request({ host: address, port, headers: { host } }, (response) => {
          response.resume();
          done(response.statusCode);
        })
          .on('error', (error: NodeJS.ErrnoException) => done(error.code))
          .end();
      });
    const folder = new URL('../../static', import.meta.url).pathname;
    // Another address of this machine stands for one in the network.
    const other = '127.0.0.2';
    const open = await serve(folder, 0, { hosts: networkHosts([other], 'Workshop') });
    expect(await statusFor(other, open.portTaken, `${other}:${open.portTaken}`)).toBe(404);
    expect(await statusFor(other, open.portTaken, 'workshop.local')).toBe(404);
    expect(await statusFor(other, open.portTaken, 'localhost')).toBe(404);
    expect(await statusFor(other, open.portTaken, 'elsewhere.example')).toBe(421);
    open.close();
    const closed = await serve(folder, 0);
    expect(await statusFor(other, closed.portTaken, 'localhost')).toBe('ECONNREFUSED');
    expect(await statusFor('127.0.0.1', closed.portTaken, other)).toBe(421);
    closed.close();
  },
);
