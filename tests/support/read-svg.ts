/** Reads the SVG text that a renderer wrote, strictly: anything unexpected stops with an error. */
import type { PathPoint } from '../render/recording-context.ts';

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>';
const TAG = /<(\/?)([a-zA-Z]+)((?:\s+[a-zA-Z-]+="[^"<&]*(?:&(?:amp|lt|gt|quot|apos);[^"<&]*)*")*)\s*(\/?)>/y;
const TEXT = /(?:[^<>&]|&(?:amp|lt|gt|quot|apos);)+/y;
const ATTRIBUTE = /([a-zA-Z-]+)="([^"]*)"/g;

function plain(words: string): string {
  return words
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&');
}

/** What XML 1.0 allows in no form, section 2.2: control characters, halves of a letter, and two more. */
const FORBIDDEN = /[\p{Cs}\ufffe\uffff]|[^\P{Cc}\t\n\r\u007f-\u009f]/u;

/** The one root element of a well-formed document that uses no more of XML than a picture needs. */
export function readSvg(document: string): Element {
  if (!document.startsWith(DECLARATION)) throw new Error('no XML declaration');
  const forbidden = FORBIDDEN.exec(document);
  if (forbidden !== null) throw new Error(`a sign that XML forbids at ${forbidden.index}`);
  const top: Element = { name: '', attributes: {}, children: [], text: '' };
  const open = [top];
  let at = DECLARATION.length;
  while (at < document.length) {
    const inside = open[open.length - 1];
    TAG.lastIndex = TEXT.lastIndex = at;
    const text = TEXT.exec(document);
    if (text !== null) {
      inside.text += plain(text[0]);
      at = TEXT.lastIndex;
      continue;
    }
    const tag = TAG.exec(document);
    if (tag === null) throw new Error(`not XML from: ${document.slice(at, at + 60)}`);
    at = TAG.lastIndex;
    const [, closing, name, attributeText, selfClosing] = tag;
    if (closing === '/') {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes another element`);
      continue;
    }
    const attributes: Record<string, string> = {};
    for (const [, key, value] of attributeText.matchAll(ATTRIBUTE)) {
      if (key in attributes) throw new Error(`${name} has ${key} twice`);
      attributes[key] = plain(value);
    }
    const element: Element = { name, attributes, children: [], text: '' };
    inside.children.push(element);
    if (selfClosing !== '/') open.push(element);
  }
  if (open.length !== 1 || top.children.length !== 1 || top.text.trim() !== '')
    throw new Error('not one whole root element');
  return top.children[0];
}

/** Elements without children, in the order of drawing. */
export function leaves(element: Element): Element[] {
  return element.children.length === 0 ? [element] : element.children.flatMap(leaves);
}

const NUMBERS_OF: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6, A: 7, Z: 0 };

export interface PathData {
  readonly points: readonly PathPoint[];
  readonly closes: number;
}

/** The places that path data names: ends, and controls of curves. */
export function readPath(d: string): PathData {
  const points: PathPoint[] = [];
  let closes = 0;
  for (const [whole, command, numbers] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const values = numbers.trim() === '' ? [] : numbers.trim().split(/\s+/).map(Number);
    if (values.length !== NUMBERS_OF[command] || values.some((value) => !Number.isFinite(value)))
      throw new Error(`not path data: ${whole}`);
    if (command === 'Z') closes++;
    const places = command === 'A' ? values.slice(5) : values;
    for (let i = 0; i < places.length; i += 2) points.push({ xPx: places[i], yPx: places[i + 1] });
  }
  return { points, closes };
}
