/** Before the tests under node: a folder for pages that each worker builds once, removed with them when all have ended. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export default function sharedPages(): () => void {
  const shelf = mkdtempSync(join(tmpdir(), 'sidestance-pages-'));
  process.env.SIDESTANCE_PAGES = shelf;
  return () => rmSync(shelf, { recursive: true, force: true });
}
