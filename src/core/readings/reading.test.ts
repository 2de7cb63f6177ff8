/** Tests of the words for readings that have no number. */
import { expect, it } from 'vitest';
import { ABSENT_WORDS } from './reading.ts';

it('every reason for having no number is told in words of its own', () => {
  const words = Object.values(ABSENT_WORDS);
  expect(new Set(words).size).toBe(words.length);
  for (const sentence of words) expect(sentence.length).toBeGreaterThan(10);
});
