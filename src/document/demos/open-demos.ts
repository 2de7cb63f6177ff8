/** Opens demonstration bikes through the reader of every saved bike. */
import type { BikeDocument } from '../document.ts';
import type { Json } from '../json/json.ts';
import { openJson } from '../open-json.ts';

/** What a file leaves out takes its default; one that is no bike is left out. */
export function openDemos(files: readonly Json[]): BikeDocument[] {
  return files.flatMap((file) => {
    const opened = openJson(file);
    return opened.ok ? [opened.value.document] : [];
  });
}
