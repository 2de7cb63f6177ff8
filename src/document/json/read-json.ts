/** From text to parsed JSON, refusing early what is too large, too deep, cut off, ambiguous or no JSON at all. */
import { fail, succeed, type Result } from '../../core/numeric/result.ts';
import { jsonFaultAt } from './json-fault.ts';
import { showJson, type Json } from './json.ts';
import type { OpenReason } from './open-reason.ts';
import { repeatedName, type RepeatedName } from './repeated-name.ts';

/** The largest text opened, in characters; a bike takes a few thousand. */
export const LARGEST_TEXT = 5_000_000;
/** The deepest nesting opened; a bike needs five. */
export const DEEPEST_NESTING = 32;

/** The reason for a file too large to look at; `size` is in bytes or characters. */
export function tooLarge(size: number, most = LARGEST_TEXT): OpenReason {
  const megabytes = (n: number): string => (n / 1e6).toFixed(1);
  return {
    kind: 'tooLarge',
    sentence: `The file is ${megabytes(size)} MB; a bike takes a few kB, and nothing above ${megabytes(most)} MB is opened.`,
  };
}

/** Parses `text` of at most `most` characters after looking at its size and nesting. A byte order mark and any line ends are accepted. */
export function readJson(text: string, most = LARGEST_TEXT): Result<Json, OpenReason> {
  if (text.length > most) return fail(tooLarge(text.length, most));
  const body = text.startsWith('\ufeff') ? text.slice(1) : text;
  if (body.trim() === '') return fail({ kind: 'empty', sentence: 'The file is empty.' });
  const shape = shapeOf(body);
  if (shape === 'tooDeep')
    return fail({
      kind: 'tooDeep',
      sentence: `The file is nested more than ${DEEPEST_NESTING} levels deep, which no bike is.`,
    });
  try {
    const parsed: Json = JSON.parse(body);
    const repeated = repeatedName(body);
    return repeated === null ? succeed(parsed) : fail(givenTwice(body, repeated));
  } catch {
    const where = placeOfFault(body);
    return fail(
      shape === 'open'
        ? { kind: 'cutOff', sentence: 'The file breaks off before its end; part of it is missing.' }
        : { kind: 'notJson', sentence: `The file is not JSON that can be read${where}.` },
    );
  }
}

/**
 * Whether the brackets of a text close. It runs before the parser, which in some engines recurses and so could be
 * made to run out of stack; a text that is no JSON at all comes out as one of these too, and the parser refuses it.
 */
function shapeOf(text: string): 'closed' | 'open' | 'tooDeep' {
  let depth = 0;
  let inString = false;
  let began = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inString) {
      if (c === '\\') i++;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') {
      began = true;
      if (++depth > DEEPEST_NESTING) return 'tooDeep';
    } else if (c === '}' || c === ']') depth--;
  }
  return began && (depth > 0 || inString) ? 'open' : 'closed';
}

/** The program does not choose between two values under one name: it refuses the file and names both places. */
function givenTwice(text: string, { name, at }: RepeatedName): OpenReason {
  const [first, second] = at.map((each) => lineAndColumn(text, each));
  return {
    kind: 'repeatedName',
    sentence: `The file gives ${showJson(name)} twice in one group, at ${first} and at ${second}; only one of them can be meant.`,
  };
}

/** In words, the line and column at which the text stops being JSON. */
function placeOfFault(text: string): string {
  const at = jsonFaultAt(text);
  return at === null ? '' : `: ${lineAndColumn(text, at)} is wrong`;
}

function lineAndColumn(text: string, at: number): string {
  const before = text.slice(0, at).split('\n');
  return `line ${before.length}, column ${before[before.length - 1].length + 1}`;
}
