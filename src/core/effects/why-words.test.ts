/** Tests of the explanation in sentences. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import type { Setup } from '../chassis/setup.ts';
import { standBike } from '../springs/stand-bike.ts';
import type { NumberStyle } from '../units/number-style.ts';
import { whySentences } from './why-words.ts';
import { why } from './why.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };

function told(changes: Partial<Setup>, style = metric): string[] {
  const before = standBike(plainBike, plainSetup, 'toppedOut');
  const after = standBike(plainBike, { ...plainSetup, ...changes }, 'toppedOut');
  if (!before.ok || !after.ok) throw new Error('the plain bike does not stand');
  return whySentences(why(before, after), style).map((sentence) => sentence.text);
}

describe('the explanation in sentences', () => {
  it('says nothing when nothing changed', () => {
    expect(told({})).toEqual([]);
  });

  it('tells of a raised rear in the order of cause and effect', () => {
    const sentences = told({ shockLength: 5 });
    expect(sentences[0]).toMatch(/^The swingarm pivot rose .* and the steering head rose .*\.$/);
    expect(sentences[1]).toMatch(/^The frame pitched \d\.\d\d° nose down\.$/);
    expect(sentences[2]).toMatch(
      /^Rake −.*°, from .*° to .*°: the steering quickens, all from the frame’s pitch\.$/,
    );
    expect(sentences[3]).toMatch(/^Trail .*: the steering gets lighter and quicker, all from rake\.$/);
    expect(sentences.some((text) => /^Swingarm angle .* steeper/.test(text))).toBe(true);
  });

  it('splits a change with several causes, with a sign on each', () => {
    const trail = told({ frontTyre: { diameter: 580 } }).find((text) => text.startsWith('Trail'));
    expect(trail).toMatch(/ \([+−][\d.]+\smm from the front tyre and [+−][\d.]+\smm from rake\)\.$/u);
  });

  it('writes parts that add up to the difference, and a difference that is that of the numbers written', () => {
    const number = (text: string) => Number(text.replace('−', '-'));
    for (const size of [570, 575, 583, 588, 611]) {
      const trail = told({ frontTyre: { diameter: size } }).find((text) => text.startsWith('Trail')) ?? '';
      const [whole, from, to, ...parts] = [...trail.matchAll(/[+−]?\d+\.\d/g)].map(([text]) => number(text));
      expect(to - from).toBeCloseTo(whole, 6);
      if (parts.length > 0) expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(whole, 6);
    }
  });

  it('warns when the steering no longer centres itself', () => {
    expect(told({ clampOffset: 150 }).join(' ')).toMatch(/no longer centres itself, do not ride like this/);
  });

  it('leaves out readings that moved by less than is shown', () => {
    const sentences = told({ rearTeeth: plainSetup.rearTeeth + 1 });
    expect(sentences.every((text) => /^(Anti-squat|The chain’s part)/.test(text))).toBe(true);
  });

  it('writes in the reader’s own units and decimal sign', () => {
    const trail = told({ shockLength: 5 }, { system: 'inch', decimal: ',' }).find((text) =>
      text.startsWith('Trail'),
    );
    expect(trail).toMatch(/\d,\d\d\sin/u);
  });
});
