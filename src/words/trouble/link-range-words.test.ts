/** Tests of the words for the links' way beyond the travel. */
import { describe, expect, it } from 'vitest';
import { rockerOnArm, rockerToFrame, rearLayouts, twoShocks } from '../../../tests/support/rear-layouts.ts';
import { madeRear } from '../../../tests/support/rear-made.ts';
import type { LinkLayout } from '../../core/parts/rear-layout.ts';
import { shockAt } from '../../core/linkage/links.ts';
import type { LinkSuspension } from '../../core/linkage/suspension.ts';
import { WAY_END_WORDS, wayBeyond, linkRangeWords } from './link-range-words.ts';

const metric = { system: 'metric', decimal: '.' } as const;

function made(layout: LinkLayout): LinkSuspension {
  const of = madeRear(layout);
  if (of.kind !== 'links') throw new Error('no links');
  return of;
}

describe('the way of the links beyond the travel', () => {
  it.each(rearLayouts)(
    '$name: goes on while they close and press the shock, and no further',
    ({ layout }) => {
      const of = made(layout);
      const beyond = wayBeyond(of);
      if (beyond === null) throw new Error('no way');
      // Stepped along by the closed form alone, without the search that found the ends.
      const closes = (travel: number): boolean => {
        const sine = of.toppedOutSine - travel / of.arm;
        if (Math.abs(sine) >= 0.999) return false;
        const at = shockAt(of.links, Math.asin(sine) - of.framePitch);
        return at !== null && at.slope > 0;
      };
      let up = of.wheelTravel;
      while (closes(up + 0.01)) up += 0.01;
      let down = 0;
      while (closes(down - 0.01)) down -= 0.01;
      expect(Math.abs(up - of.wheelTravel - beyond.above.mm)).toBeLessThan(0.021);
      expect(Math.abs(-down - beyond.below.mm)).toBeLessThan(0.021);
      expect(beyond.above.mm).toBeGreaterThan(0);
    },
  );

  it('names the figure and the reason at each end', () => {
    for (const layout of [twoShocks, rockerToFrame, rockerOnArm]) {
      const of = made(layout);
      const words = linkRangeWords(of, metric);
      expect(words).toMatch(
        /^The links have [\d.]+\smm left when the shock is closed: .*\. Below hanging they have [\d.]+\smm: .*\.$/,
      );
      const beyond = wayBeyond(of);
      if (beyond === null) throw new Error('no way');
      expect(words).toContain(WAY_END_WORDS[beyond.above.why]);
      expect(words).toContain(WAY_END_WORDS[beyond.below.why]);
    }
  });

  it('says so when the links end before the shock has closed', () => {
    const short = { ...rockerOnArm, shock: { ...rockerOnArm.shock, closedLength: 60 } };
    expect(made(short).endsBy).not.toBe('shockClosed');
    expect(linkRangeWords(made(short), metric)).toMatch(
      /^The links end the travel before the shock closes: /,
    );
  });
});
