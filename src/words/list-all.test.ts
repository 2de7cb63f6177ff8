/** Tests of several names in one sentence. */
import { expect, it } from 'vitest';
import { listAll, listAny } from './list-all.ts';

it('puts one word between the last two names and commas between the others', () => {
  expect(listAll(['fork'])).toBe('fork');
  expect(listAll(['fork', 'shock'])).toBe('fork and shock');
  expect(listAll(['fork', 'shock', 'tyres'])).toBe('fork, shock and tyres');
  expect(listAny(['110', '112', '114'])).toBe('110, 112 or 114');
});

it('no names are no words', () => {
  expect(listAll([])).toBe('');
});
