/** Names that a picture, a table, a page or a link could take for more than letters. */

const signs = (...codes: readonly number[]): string => String.fromCodePoint(...codes);

export const HOSTILE_NAMES: Readonly<Record<string, string>> = {
  tags: '"><script>1</script>&amp;<!-- -->',
  'the end of a CDATA section': ']]>&<![CDATA[',
  'an entity': '&#x202e;&lol;%x;<!DOCTYPE a>',
  'a turn of the direction': `${signs(0x202e)}ekib ${signs(0x2067)}x`,
  'signs that nobody sees': `a${signs(0x200b, 0x2060, 0xfeff)}b`,
  'control characters': `a${signs(0x0, 0x7, 0x1b)}b`,
  'half a letter': `a${signs(0xd83d)}b`,
  'quotes, commas and new lines': 'a "b", c;\r\nd\n\te',
};

/** What a spreadsheet would take for a formula. */
export const FORMULAS: readonly string[] = [
  '=1+1',
  '+1+1',
  '-1+1',
  '@SUM(A1)',
  '\t=1+1',
  '\r=1+1',
  '\n=1+1',
  ' =1+1',
  `${signs(0xfeff)}=1+1`,
  `${signs(0x200b)}=1+1`,
  `${signs(0xff1d)}1+1`,
  '=HYPERLINK("https://bikes.example.com";"a, b")',
];
