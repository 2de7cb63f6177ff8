/** A bike whose chain lies on the pivot's guide: an invented one with its countershaft low and its guide high. */
import type { Page } from '@playwright/test';
import { DEMO_BIKES } from '../../../src/document/demo-bikes.ts';
import { newDocument } from '../../../src/document/document.ts';
import { saveDocument } from '../../../src/document/save-document.ts';

export const LOW_CHAIN_NAME = 'Low chain, invented';

/** Opens the bike from a file. */
export async function openLowChain(page: Page): Promise<void> {
  const [{ bike, setup }] = DEMO_BIKES;
  const low = newDocument(
    {
      ...bike,
      name: LOW_CHAIN_NAME,
      frame: { ...bike.frame, guideRadius: 38, countershaft: { x: 78, y: -6 } },
    },
    { ...setup, frontTeeth: 13 },
  );
  const file = { name: 'low.json', mimeType: 'application/json', buffer: Buffer.from(saveDocument(low)) };
  await page.getByLabel('Bike file', { exact: true }).setInputFiles(file);
  const said = page.getByRole('status').filter({ hasText: 'Opened low.json' });
  await said.getByRole('button', { name: 'Dismiss' }).click();
}
