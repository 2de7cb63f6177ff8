/** Tests of the note on wear. */
import { expect, it } from 'vitest';
import { huntingToothWords } from './hunting-tooth-words.ts';

it('tells of a pair that shares factors with itself and the chain', () => {
  expect(huntingToothWords(15, 45, 114)).toBe(
    'Tooth wear: uneven. A tooth meets only every 3rd link. ' +
      'A front tooth meets only every 3rd link, and the same one again 38 turns later: 15 teeth and the number of links can both be divided by 3. ' +
      'A rear tooth meets only every 3rd link, and the same one again 38 turns later: 45 teeth and the number of links can both be divided by 3.',
  );
});

it('tells of a pair that shares none', () => {
  expect(huntingToothWords(17, 43, 110)).toBe(
    'Tooth wear: even (hunting tooth). ' +
      'A front tooth meets every link once before it meets the same one again, 110 turns later. ' +
      'A rear tooth meets every link once before it meets the same one again, 110 turns later.',
  );
});

it('writes ordinals as people do, and says nothing about what is no whole number', () => {
  expect(huntingToothWords(12, 44, 132)).toMatch(/every 12th link.*every 44th link/);
  expect(huntingToothWords(16, 42, 112)).toMatch(/every 16th link.*every 14th link/);
  expect(huntingToothWords(22, 44, 110)).toMatch(/every 22nd link.*every 22nd link/);
  expect(huntingToothWords(15.5, 45, 114)).toBeNull();
});
