/** Runs every long trial once in its short form, so that none breaks unseen. */
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { benchNames, ENDURANCE } from '../../src/commands/benches.js';
import { builtPage, type BuiltPage } from '../support/built-page.ts';

interface Trial {
  readonly default: (short: boolean, page: BuiltPage) => readonly string[] | Promise<readonly string[]>;
}

/** A build of the page and a browser are among what a trial may need, ms. */
const LONGEST_MS = 180_000;
/** Comes with `npm run endure` alone: an engine of its own is more than every test run should ask for. */
const APART = ['webkit'];

const trial = async (name: string): Promise<Trial> => (await import(`./${name}.endure.ts`)) as Trial;

let page: BuiltPage;
beforeAll(async () => {
  page = await builtPage();
}, LONGEST_MS);
afterAll(() => page.remove());

for (const name of benchNames(fileURLToPath(new URL('.', import.meta.url)), ENDURANCE).filter(
  (each) => !APART.includes(each),
))
  it(
    `${name} runs through, and what has to hold does`,
    async () => {
      const lines = await (await trial(name)).default(true, page);
      const headings = lines.findIndex((line) => line.startsWith('what '));
      expect(headings).toBeGreaterThanOrEqual(0);
      const rows = lines.slice(headings + 1);
      expect(rows.some((row) => row.endsWith(' met'))).toBe(true);
      expect(rows.filter((row) => row.endsWith(' MISSED'))).toEqual([]);
    },
    LONGEST_MS,
  );

it('where WebKitGTK is not there, the count of its stories says that they are left out', async () => {
  const before = process.env.WEBKIT_DRIVER;
  process.env.WEBKIT_DRIVER = '';
  try {
    expect(await (await trial('webkit')).default(true, page)).toEqual([
      expect.stringMatching(/^WebKitGTK is not on this machine, so its \d+ stories are left out; /),
    ]);
  } finally {
    if (before === undefined) delete process.env.WEBKIT_DRIVER;
    else process.env.WEBKIT_DRIVER = before;
  }
});
