/** Holds that every random case comes from the seed, so that a failure can be drawn again. */
import { expect, it } from 'vitest';
import { filesBelow, textOf } from './source-files.ts';

it('R11: every test that draws random cases takes seed and number from tests/support/cases.ts', () => {
  const drawing = [...filesBelow('src'), ...filesBelow('tests')].filter(
    (file) => file.endsWith('.test.ts') && textOf(file).includes("from 'fast-check'"),
  );
  expect(drawing.length).toBeGreaterThan(20);
  expect(drawing.filter((file) => !textOf(file).includes('support/cases.ts'))).toEqual([]);
  expect(drawing.filter((file) => /\b(seed|numRuns): \d/.test(textOf(file)))).toEqual([]);
});
