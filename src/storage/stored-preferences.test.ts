/** Tests of reading stored preferences. */
import { expect, it } from 'vitest';
import { readPreferences } from './stored-preferences.ts';

it('takes of stored preferences what can be used and leaves out the rest', () => {
  expect(readPreferences({ theme: 'sun', decimal: ';', shown: ['rake'], lastBike: 'x', old: 1 })).toEqual({
    theme: 'sun',
    shown: ['rake'],
    lastBike: 'x',
  });
  for (const odd of [null, undefined, 3, 'x', []]) expect(readPreferences(odd)).toEqual({});
});
