/** Opens the text of a saved bike, or says why not. */
import type { Result } from '../core/numeric/result.ts';
import { openJson, type Opened } from './open-json.ts';
import type { OpenReason } from './json/open-reason.ts';
import { readJson } from './json/read-json.ts';

/** Reads the text and opens what it holds; text that is no JSON is refused with the line where it goes wrong. Never throws. */
export function openDocument(text: string): Result<Opened, OpenReason> {
  const json = readJson(text);
  return json.ok ? openJson(json.value) : json;
}
