/** Reads the file that a command is given: its text, or the bike in it. */
import { readFileSync, statSync } from 'node:fs';
import { fail, type Result } from '../core/numeric/result.ts';
import { textOfBytes, tooLargeToRead } from '../document/json/file-text.ts';
import { openDocument } from '../document/open-document.ts';
import type { Opened } from '../document/open-json.ts';

const decode = (bytes: Uint8Array): string => new TextDecoder('utf-8', { fatal: true }).decode(bytes);

/** The text of a file, or one line why it cannot be read. */
export function textOf(file: string): Result<string, string> {
  let bytes: Uint8Array;
  try {
    const large = tooLargeToRead(statSync(file).size);
    if (large) return fail(large.sentence);
    bytes = readFileSync(file);
  } catch (error) {
    return fail(`The file cannot be read: ${error instanceof Error ? error.message : String(error)}.`);
  }
  const text = textOfBytes(bytes, decode);
  return text.ok ? text : fail(text.reason.sentence);
}

/** The bike in a file with what was repaired, or one line why there is none. */
export function openFile(file: string): Result<Opened, string> {
  const text = textOf(file);
  if (!text.ok) return text;
  const opened = openDocument(text.value);
  return opened.ok ? opened : fail(opened.reason.sentence);
}
