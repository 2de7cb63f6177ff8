/** Tests of refusals. */
import { expect, it } from 'vitest';
import { refuse } from './refusal.ts';

it('a refusal carries its reason and what stands in the way', () => {
  expect(refuse('forkTooShort', { found: 20, limit: 50, end: 'front' })).toEqual({
    ok: false,
    reason: 'forkTooShort',
    found: 20,
    limit: 50,
    end: 'front',
  });
  expect(refuse('noMass')).toEqual({ ok: false, reason: 'noMass' });
});

it('a refusal carries figures that only some refusals have', () => {
  expect(refuse('shockTooLong', { found: 600, because: 'rodAndRockerInLine' }).because).toBe(
    'rodAndRockerInLine',
  );
});

it('a figure that is not a number becomes the reason, so that no advice shows NaN', () => {
  expect(refuse('massNegative', { found: NaN, limit: 0 })).toEqual({ ok: false, reason: 'inputNotANumber' });
  expect(refuse('teethImpossible', { found: Infinity, end: 'rear' })).toEqual({
    ok: false,
    reason: 'inputNotANumber',
    end: 'rear',
  });
});

it('a limit that is not a number is left out', () => {
  expect(refuse('frontLifts', { found: 1, limit: NaN })).toEqual({
    ok: false,
    reason: 'frontLifts',
    found: 1,
  });
});
