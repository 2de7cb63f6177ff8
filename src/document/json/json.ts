/** What parsed JSON can be, and the few questions asked of it. */

export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: Json;
}

export function isJsonObject(json: unknown): json is JsonObject {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}

/** The value an object holds itself under `key`; never one that it inherits. */
export function ownValue(json: JsonObject, key: string): Json | undefined {
  return Object.hasOwn(json, key) ? json[key] : undefined;
}

/** Characters that nobody sees or that turn the text around them: controls, marks without width, and private ones. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Co}\u2028\u2029]/gu;

/** The text with every invisible or turning character written by its code, such as ‹U+202E›. */
export function visible(text: string): string {
  return text.replace(
    UNSEEN,
    (each) => `‹U+${(each.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}›`,
  );
}

/** How much of a strange value or name is repeated in a sentence about it. */
const LONGEST_QUOTE = 40;

export function quote(text: string): string {
  const cut = [...text].slice(0, LONGEST_QUOTE).join('');
  return `${visible(cut)}${cut.length < text.length ? '…' : ''}`;
}

/** A value as a sentence can show it, cut to a readable length. */
export function showJson(json: unknown): string {
  if (json === undefined) return 'nothing';
  if (typeof json === 'number') return String(json);
  if (Array.isArray(json)) return 'a list';
  if (typeof json === 'object' && json !== null) return 'a group of values';
  return quote(JSON.stringify(json));
}
