/** Where a link leads: the address of a page as a person types it, and who can reach it. */

/** A longer address would leave a link no room for its bike, characters. */
export const LONGEST_ADDRESS = 200;

/** The address of a web page without what stands behind its ? and #; null where it is no such address. */
export function readAddress(typed: string): string | null {
  const trimmed = typed.trim();
  try {
    const { protocol, origin, pathname, host } = new URL(
      /^[a-z][a-z+.-]*:\/\//i.test(trimmed) ? trimmed : `https://${trimmed}`,
    );
    const address = `${origin}${pathname}`;
    const usable = (protocol === 'https:' || protocol === 'http:') && host !== '';
    return usable && address.length <= LONGEST_ADDRESS ? address : null;
  } catch {
    // The URL standard throws at what is no address.
    return null;
  }
}

/** `machine`: only a page on the same machine; `network`: only machines on the same network; `anywhere`. */
export type Reach = 'machine' | 'network' | 'anywhere';

const MACHINE = /^(localhost|.*\.localhost|127(\.\d+){3}|0\.0\.0\.0|\[::1?\])$/;
/** The private addresses of RFC 1918, RFC 3927 and RFC 4193, and names that a network gives itself. */
const NETWORK =
  /^(10(\.\d+){3}|192\.168(\.\d+){2}|172\.(1[6-9]|2\d|3[01])(\.\d+){2}|169\.254(\.\d+){2}|\[f[cde].*\]|.*\.local|[^.[]+)$/;

/** Who can open a page at this address. */
export function reachOf(address: string): Reach {
  try {
    const { protocol, hostname } = new URL(address);
    if (protocol !== 'https:' && protocol !== 'http:') return 'machine';
    if (MACHINE.test(hostname)) return 'machine';
    return NETWORK.test(hostname) ? 'network' : 'anywhere';
  } catch {
    // What is no address leads nowhere beyond this page.
    return 'machine';
  }
}

/** The address of this page without what stands behind its ? and #. */
export function pageAddress(page: Location = location): string {
  return page.href.replace(/[?#].*$/s, '');
}
