/** Names for bikes and tabs that no other will have. */

const BYTES = 16;

/** 32 hexadecimal digits from the browser's random source; works on plain-http addresses too, unlike randomUUID. */
export function newId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(BYTES)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
}
