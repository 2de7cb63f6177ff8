/** Tests of what a trial found, in words: no direction beside two figures that read alike. */
import { describe, expect, it } from 'vitest';
import { axleHeld } from '../../src/core/effects/turn.ts';
import { trialFigure, tryOut, type Trial } from '../../src/core/effects/trial.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { SAYINGS } from '../../src/sayings/all-sayings.ts';
import { figureWords, triedWords } from '../../src/words/why/trial-words.ts';

const metric = { system: 'metric', decimal: '.' } as const;
const plain = (text: string): string => text.replace(/\s/gu, ' ');

describe('a trial in words', () => {
  it('names what is turned, from where to where, and the ride state', () => {
    const [{ bike, setup }] = DEMO_BIKES;
    const trial: Trial = {
      turns: [{ adjuster: 'shockLength', by: 2 }],
      state: 'riderUp',
      figure: 'rake',
    };
    const tried = tryOut(axleHeld({ bike, setup }), trial);
    if (!tried.ok) throw new Error(tried.reason);
    expect(plain(triedWords(trial, tried, 'chain', metric))).toBe(
      'Shock length 0.0 mm → 2.0 mm, rider on board',
    );
    const still = tryOut(axleHeld({ bike, setup }), { ...trial, turns: [] });
    if (!still.ok) throw new Error(still.reason);
    expect(triedWords({ ...trial, turns: [] }, still, 'chain', metric)).toBe('Rider on board');
  });

  it('says about the same of two figures that read alike, in every saying on every demonstration bike', () => {
    let alike = 0;
    for (const { bike, setup } of DEMO_BIKES)
      for (const trial of SAYINGS.flatMap(({ trials }) => trials))
        for (const system of ['metric', 'inch'] as const) {
          const tried = tryOut(axleHeld({ bike, setup }), trial);
          const figure = trialFigure(trial.figure);
          if (!tried.ok || figure === null || figure.isChange) continue;
          const told = plain(figureWords(figure, tried, { system, decimal: '.' }));
          const [, from, to, said] = /: (\S+).* before, (\S+).* after\. (.*)\.$/u.exec(told) ?? [];
          expect(said, told).toBeDefined();
          if (from !== to) continue;
          alike += 1;
          expect(said.toLowerCase(), told).toBe(figure.same);
        }
    expect(alike).toBeGreaterThan(3);
  });
});
