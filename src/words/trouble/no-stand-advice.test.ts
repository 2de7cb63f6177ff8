/** Tests of the advice on a bike that does not stand as asked. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { refuse } from '../../core/numeric/refusal.ts';
import { expect, it } from 'vitest';
import { noStandWords } from './no-stand-words.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { noStandAdvice } from './no-stand-advice.ts';
import { wayToAdjuster } from '../way-to-adjuster.ts';

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };

it('says which spring rate to give, by the name of its adjuster', () => {
  const problem = refuse('rateNotAboveZero', { end: 'front' });
  expect(noStandAdvice(problem, 'forkSpringRate', 'chain', METRIC)).toBe(
    'Fork spring rate is not known yet. Set that adjuster to the rate printed on the spring; until then only these ride states have readings: topped out and travel set by hand.',
  );
  // A bump stop without a rate is no adjuster's.
  expect(noStandAdvice(problem, null, 'chain', METRIC)).toBe(noStandWords(problem, CHAIN, METRIC));
});

it('says anything else in the core’s words, and names the way to the adjuster', () => {
  const problem = refuse('frontLifts', { end: 'front', found: 1.5, limit: 0.9 });
  expect(noStandAdvice(problem, 'acceleration', 'chain', METRIC)).toBe(noStandWords(problem, CHAIN, METRIC));
  expect(wayToAdjuster('acceleration', 'chain')).toBe('Go to Acceleration');
  expect(wayToAdjuster('chainSlack', 'belt')).toBe('Go to Belt slack');
});

it('speaks of a belt where there is one', () => {
  const problem = refuse('chainPitchImpossible', { found: 90, limit: 40 });
  expect(noStandAdvice(problem, null, 'belt', METRIC)).toMatch(
    /^A belt cannot have a pitch of .* roller chains/,
  );
  expect(noStandAdvice(problem, null, 'chain', METRIC)).toMatch(/^A chain cannot/);
});
