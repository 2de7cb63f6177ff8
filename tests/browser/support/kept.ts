/** What the browser's store holds in a test, and waiting until it does. */
import { expect, type Page } from '@playwright/test';
import { openDocument } from '../../../src/document/open-document.ts';

export interface KeptBike {
  readonly name: string;
  readonly revision: number;
  readonly forkTubes: number;
  readonly text: string;
}

/** Every bike in the store or every version kept beside one, the latest saved first. */
export async function kept(page: Page, shelf: 'bikes' | 'revisions' = 'bikes'): Promise<readonly KeptBike[]> {
  const rows = await page.evaluate(
    (name) =>
      new Promise<{ name: string; revision: number; savedAt: number; text: string }[]>((done, failed) => {
        const asked = indexedDB.open('sidestance');
        asked.onerror = () => failed(new Error(String(asked.error)));
        asked.onsuccess = () => {
          const rows = asked.result.transaction(name).objectStore(name).getAll();
          rows.onerror = () => failed(new Error(String(rows.error)));
          rows.onsuccess = () => {
            asked.result.close();
            done(rows.result);
          };
        };
      }),
    shelf,
  );
  return rows
    .sort((a, b) => b.savedAt - a.savedAt)
    .map(({ name, revision, text }) => {
      const opened = openDocument(text);
      if (!opened.ok) throw new Error(opened.reason.sentence);
      return { name, revision, text, forkTubes: opened.value.document.setup.forkTubes };
    });
}

/** Waits until the bike saved last has this fork height, mm. */
export async function expectKeptFork(page: Page, forkTubes: number): Promise<void> {
  await expect.poll(async () => (await kept(page))[0]?.forkTubes).toBe(forkTubes);
}
