/** Invented bikes whose chain is in the way: on the pivot's guide, or with a sprocket that reaches over the pivot. */
import type { Page } from '@playwright/test';
import type { Frame } from '../../../src/core/parts/bike.ts';
import { DEMO_BIKES } from '../../../src/document/demos/demo-bikes.ts';
import { newDocument } from '../../support/new-document.ts';
import { saveDocument } from '../../../src/document/save-document.ts';

async function openChanged(
  page: Page,
  name: string,
  frame: Partial<Frame>,
  frontTeeth: number,
): Promise<void> {
  const [{ bike, setup }] = DEMO_BIKES;
  const changed = newDocument(
    { ...bike, name, frame: { ...bike.frame, ...frame } },
    { ...setup, frontTeeth },
  );
  const file = {
    name: 'changed.json',
    mimeType: 'application/json',
    buffer: Buffer.from(saveDocument(changed)),
  };
  await page.getByLabel('Bike file', { exact: true }).setInputFiles(file);
  const said = page.getByRole('status').filter({ hasText: 'Opened changed.json' });
  await said.getByRole('button', { name: 'Dismiss' }).click();
}

/** Opens a bike with its countershaft low and its guide high, so that the chain lies on the guide. */
export async function openLowChain(page: Page): Promise<void> {
  await openChanged(page, 'Low chain, invented', { guideRadius: 38, countershaft: { x: 78, y: -6 } }, 13);
}

/** Opens a bike with its countershaft so near to the pivot that its front sprocket reaches over it. */
export async function openCloseCountershaft(page: Page): Promise<void> {
  await openChanged(page, 'Close countershaft, invented', { countershaft: { x: 36, y: 7 } }, 16);
}
