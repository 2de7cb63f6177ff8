/** Tests of the advice on a bike that does not stand as asked. */
import { expect, it } from 'vitest';
import { noPose } from '../core/chassis/no-pose.ts';
import { noBalance } from '../core/springs/no-balance.ts';
import { noStandWords } from '../core/springs/no-stand.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import { standAdvice, wayToDial } from './stand-advice.ts';

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };

it('asks for a spring rate that is not known, by the name of its dial', () => {
  const problem = noBalance('rateNotAboveZero', { end: 'front' });
  expect(standAdvice(problem, 'forkSpringRate', 'chain', METRIC)).toBe(
    'Fork spring rate is not known yet. Set that dial to the rate printed on the spring; until then the bike is read topped out and as dialled only.',
  );
  // A bump stop without a rate is no dial's.
  expect(standAdvice(problem, null, 'chain', METRIC)).toBe(noStandWords(problem, METRIC));
});

it('says anything else in the core’s words, and names the way to the dial', () => {
  const problem = noBalance('frontLifts', { end: 'front', found: 1.5, limit: 0.9 });
  expect(standAdvice(problem, 'gas', 'chain', METRIC)).toBe(noStandWords(problem, METRIC));
  expect(wayToDial('gas')).toBe('Go to Gas');
});

it('speaks of a belt where there is one', () => {
  const problem = noPose('chainPitchImpossible', { found: 90, limit: 40 });
  expect(standAdvice(problem, null, 'belt', METRIC)).toMatch(
    /^A belt cannot have a pitch of .* roller chains/,
  );
  expect(standAdvice(problem, null, 'chain', METRIC)).toMatch(/^A chain cannot/);
});
