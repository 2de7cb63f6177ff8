/** Tests of refusals. */
import { expect, it } from 'vitest';
import { noPose } from './no-pose.ts';

it('a refusal carries its reason and what stands in the way', () => {
  expect(noPose('forkTooShort', { found: 20, limit: 50, end: 'front' })).toEqual({
    ok: false,
    reason: 'forkTooShort',
    found: 20,
    limit: 50,
    end: 'front',
  });
});

it('what is no number is told as such, so that no advice ever shows NaN', () => {
  expect(noPose('massNegative', { found: NaN, limit: 0 })).toEqual({ ok: false, reason: 'inputNotANumber' });
  expect(noPose('teethImpossible', { found: Infinity, end: 'rear' })).toEqual({
    ok: false,
    reason: 'inputNotANumber',
    end: 'rear',
  });
});
