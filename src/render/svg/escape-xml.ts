/** Words as they may stand in an XML document, both between tags and in attributes. */

const ENTITIES: ReadonlyMap<string, string> = new Map([
  ['&', '&amp;'],
  ['<', '&lt;'],
  ['>', '&gt;'],
  ['"', '&quot;'],
  ["'", '&apos;'],
]);

/** Characters that XML 1.0 allows in no form are left out: control characters, lone surrogates and two more. */
export function escapeXml(words: string): string {
  let escaped = '';
  for (const sign of words) if (isAllowed(sign.codePointAt(0) ?? 0)) escaped += ENTITIES.get(sign) ?? sign;
  return escaped;
}

/** The production Char of XML 1.0, section 2.2. */
function isAllowed(code: number): boolean {
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}
