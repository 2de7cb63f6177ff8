/** The pages of a PDF that the browser wrote: how large each is, and the words on it. */
import { inflateSync } from 'node:zlib';

export interface PdfPage {
  /** Points of 1/72 in, whole. */
  readonly widthPt: number;
  readonly heightPt: number;
  /** Letter by letter, with the spaces of the page itself and no others. */
  readonly text: string;
}

/** An object of the file: its entries as text, and its stream where it has one. */
interface PdfObject {
  readonly entries: string;
  readonly stream: string | null;
}

const OBJECT = /(\d+) 0 obj\s([\s\S]*?)(?:endobj|stream\r?\n)/g;
const REFERENCE = '(\\d+) 0 R';

function objectsOf(pdf: Buffer): ReadonlyMap<number, PdfObject> {
  const file = pdf.toString('latin1');
  const objects = new Map<number, PdfObject>();
  for (const found of file.matchAll(OBJECT)) {
    const [whole, id, entries] = found;
    const begin = found.index + whole.length;
    const isStream = whole.includes('stream');
    const data = isStream ? pdf.subarray(begin, file.indexOf('endstream', begin)) : null;
    const packed = entries.includes('/FlateDecode');
    const stream = data === null ? null : (packed ? inflateSync(data) : data).toString('latin1');
    objects.set(Number(id), { entries, stream });
  }
  return objects;
}

const code = (hex: string): number => parseInt(hex, 16);

/** What each glyph of a font says. */
function lettersOf(map: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>();
  const put = (glyph: number, letter: number): unknown => letters.set(glyph, String.fromCharCode(letter));
  for (const [, singles] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph, letter] of singles.matchAll(/<(\w+)>\s*<(\w{4})>/g)) put(code(glyph), code(letter));
  for (const [, ranges] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from, to, letter] of ranges.matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w{4})>/g))
      for (let i = 0; i <= code(to) - code(from); i++) put(code(from) + i, code(letter) + i);
  return letters;
}

function textOf(page: PdfObject, objects: ReadonlyMap<number, PdfObject>): string {
  const referred = (entries: string, key: string): PdfObject | undefined =>
    objects.get(Number(new RegExp(`/${key} ${REFERENCE}`).exec(entries)?.[1]));
  const fonts = new Map<string, ReadonlyMap<number, string>>();
  const named = /\/Font <<([\s\S]*?)>>/.exec(page.entries)?.[1] ?? '';
  for (const [, name, id] of named.matchAll(new RegExp(`/(\\w+) ${REFERENCE}`, 'g'))) {
    const map = referred(objects.get(Number(id))?.entries ?? '', 'ToUnicode')?.stream;
    if (map !== undefined && map !== null) fonts.set(name, lettersOf(map));
  }
  let font: ReadonlyMap<number, string> = new Map();
  let text = '';
  const drawn = referred(page.entries, 'Contents')?.stream ?? '';
  for (const [, name, glyphs] of drawn.matchAll(/\/(\w+) [\d.]+ Tf|<([\dA-F]+)>\s*T[jJ]/g)) {
    if (name !== undefined) font = fonts.get(name) ?? new Map<number, string>();
    else for (const [glyph] of glyphs.matchAll(/.{4}/g)) text += font.get(code(glyph)) ?? '\ufffd';
  }
  return text.normalize('NFKC');
}

export function pdfPages(pdf: Buffer): PdfPage[] {
  const objects = objectsOf(pdf);
  return [...objects.values()]
    .filter(({ entries }) => /\/Type\s*\/Page\b(?!s)/.test(entries))
    .map((page) => {
      const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page.entries);
      const [widthPt, heightPt] = [box?.[1], box?.[2]].map((length) => Math.round(Number(length)));
      return { widthPt, heightPt, text: textOf(page, objects) };
    });
}
