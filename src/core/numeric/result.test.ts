/** Tests of outcomes: a value or a reason, never both. */
import { expect, it } from 'vitest';
import { refused, solved } from './result.ts';

it('a solved outcome carries its value and a refused one its reason', () => {
  expect(solved(3)).toEqual({ ok: true, value: 3 });
  expect(refused('tooFewPoints')).toEqual({ ok: false, reason: 'tooFewPoints' });
});
