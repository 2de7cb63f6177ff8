/** Tests of the shares in what one step does. */
import { describe, expect, it } from 'vitest';
import { whatMovesWhat, whyStep } from '../../src/core/plan/what-moves-what.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { causeShares } from '../../src/words/why/cause-shares.ts';
import { movedWords } from '../../src/words/plan/plan-words.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;
const SPLIT = ['rake', 'trail', 'wheelbase', 'swingarmAngle', 'antiSquat'] as const;

/** The figures with a sign in a text, added up in hundredths. */
function sumOf(words: string): number {
  const figures = words.replaceAll('\u2212', '-').match(/[+-]\d+(?:\.\d+)?/gu) ?? [];
  return Math.round(figures.reduce((sum, figure) => sum + 100 * Number(figure), 0));
}

describe.each(DEMO_BIKES)('on $bike.name', ({ bike, setup }) => {
  it('the shares of the causes add up to the change that is written, for every step', () => {
    let told = 0;
    for (const step of whatMovesWhat(bike, setup, 'riderUp')) {
      const explained = whyStep(bike, setup, 'riderUp', step);
      if (explained === null) throw new Error(step.adjuster);
      for (const key of SPLIT) {
        const moved = step.moved.find(({ reading }) => reading === key);
        if (moved === undefined) continue;
        const words = causeShares(key, explained, STYLE);
        expect(sumOf(words), `${step.adjuster} ${key}: ${words}`).toBe(sumOf(movedWords(moved, STYLE)));
        if (words.includes(',')) told++;
      }
      expect(causeShares('seatHeight', explained, STYLE)).toBe('');
    }
    expect(told).toBeGreaterThan(10);
  });
});
