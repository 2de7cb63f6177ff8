/** Tests of outcomes: a value or a reason, never both. */
import { expect, it } from 'vitest';
import { fail, succeed } from './result.ts';

it('a solved outcome carries its value and a refused one its reason', () => {
  expect(succeed(3)).toEqual({ ok: true, value: 3 });
  expect(fail('tooFewPoints')).toEqual({ ok: false, reason: 'tooFewPoints' });
});
