/** The page's scripts stay as small as they have become, compressed as servers send them. */
import { expect, it } from 'vitest';
import { builtPage } from '../support/built-page.ts';
import { scriptSizes } from '../support/script-sizes.ts';

/**
 * kB (1000 bytes) of gzip, a little above what was measured. A part that grows beyond its ceiling has to give something
 * back or come later; where neither can be, its ceiling rises by what was measured, and the commit says what for.
 *
 * Of all scripts, the thread that searches for a setup and works out
 * every ± is the largest: it carries the core a second time, because a thread shares no script with the page. A file
 * that only one late part needs compresses for itself; what three or more need lies in one file, which is 23 less.
 */
const CEILINGS = { firstSight: 140.9, all: 591.4, shared: 65.7, panel: 19 };
/** What paints where no thread can, and makes pictures to save: one library, and no panel. */
const NO_PANELS = ['konva-canvas.ts', 'save-picture.ts'];

it('R17: scripts before the first sight, all scripts, what late parts share and each later panel keep below their ceilings', async () => {
  const page = await builtPage();
  try {
    const { firstSight, all, shared, late } = scriptSizes(page);
    expect(firstSight).toBeLessThanOrEqual(CEILINGS.firstSight);
    expect(all).toBeLessThanOrEqual(CEILINGS.all);
    expect(shared).toBeLessThanOrEqual(CEILINGS.shared);
    const panels = late.filter(({ name }) => !NO_PANELS.includes(name));
    expect(panels.length).toBeGreaterThanOrEqual(7);
    expect(panels.filter(({ size }) => size > CEILINGS.panel)).toEqual([]);
  } finally {
    page.remove();
  }
}, 300_000);
