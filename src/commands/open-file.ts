/** Reads the file that a command is given: its text, or the bike in it. */
import { fail, type Result } from '../core/numeric/result.ts';
import { textOfBytes } from '../document/json/file-text.ts';
import { openDocument } from '../document/open-document.ts';
import type { Opened } from '../document/open-json.ts';
import { bytesOf } from './file-bytes.ts';

const decode = (bytes: Uint8Array): string => new TextDecoder('utf-8', { fatal: true }).decode(bytes);

/** The text of a file, or one line why it cannot be read. */
export function textOf(file: string): Result<string, string> {
  const bytes = bytesOf(file);
  if (!bytes.ok) return bytes;
  const text = textOfBytes(bytes.value, decode);
  return text.ok ? text : fail(text.reason.sentence);
}

/** The bike in a file with what was repaired, or one line why there is none. */
export function openFile(file: string): Result<Opened, string> {
  const text = textOf(file);
  if (!text.ok) return text;
  const opened = openDocument(text.value);
  return opened.ok ? opened : fail(opened.reason.sentence);
}
