/** What the side view shows, read from the picture (SVG) that it saves: the same scene as on the screen. */
import { readFile } from 'node:fs/promises';
import type { BrowserContext, Page } from '@playwright/test';

export interface WordBox {
  readonly text: string;
  readonly layer: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Opens or closes what is shown on the side view. */
export async function toggleShown(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'What is shown' }).click();
}

/** The text of the picture. */
export async function pictureText(page: Page): Promise<string> {
  await toggleShown(page);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Picture (SVG)' }).click(),
  ]);
  await toggleShown(page);
  return await readFile(await file.path(), 'utf8');
}

/** The elements of one layer of a picture; empty when the layer is not in it. */
export function layerOf(picture: string, name: string): string {
  return new RegExp(`<g class="${name}"[^>]*>([^]*?)</g>`).exec(picture)?.[1] ?? '';
}

/** How much ink a layer has: 1 unless it is dimmed, 0 when it is not there. */
export function inkOf(picture: string, name: string): number {
  const head = new RegExp(`<g class="${name}"([^>]*)>`).exec(picture);
  if (head === null) return 0;
  return Number(/opacity="([\d.]+)"/.exec(head[1] ?? '')?.[1] ?? 1);
}

/** The words of a picture as they stand in it. */
export function wordsOf(picture: string): string[] {
  return [...picture.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map((match) => plainSpaces(match[1] ?? ''));
}

/** The boxes of all words of a picture as the browser draws them, px, and the picture's own size. */
export async function wordBoxes(
  context: BrowserContext,
  picture: string,
): Promise<{ widthPx: number; heightPx: number; boxes: WordBox[] }> {
  const sheet = await context.newPage();
  await sheet.setContent(`<style>body{margin:0}</style>${picture.replace(/<\?xml[^>]*>/, '')}`);
  const found = await sheet.evaluate(() => {
    const svg = document.querySelector('svg');
    if (svg === null) throw new Error('the picture is no SVG');
    const boxes = [...svg.querySelectorAll('text')].map((text) => {
      const { x, y, width, height } = text.getBBox();
      const layer = text.closest('g')?.getAttribute('class') ?? '';
      return { text: text.textContent, layer, left: x, top: y, right: x + width, bottom: y + height };
    });
    return { widthPx: svg.viewBox.baseVal.width, heightPx: svg.viewBox.baseVal.height, boxes };
  });
  await sheet.close();
  return found;
}

function plainSpaces(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
