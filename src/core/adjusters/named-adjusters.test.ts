/** Tests of the adjusters in the words of a drive. */
import { describe, expect, it } from 'vitest';
import type { DriveKind } from '../parts/drive-kind.ts';
import { ADJUSTERS } from './all-adjusters.ts';
import { adjusterLabel, namedAdjusters, type NamedAdjuster } from './named-adjusters.ts';

const texts = (adjuster: NamedAdjuster): string[] => [
  adjuster.label,
  adjuster.help,
  ...('more' in adjuster ? [adjuster.more, adjuster.less] : []),
];

describe.each(['chain', 'belt'] as const)('on a %s', (kind: DriveKind) => {
  const adjusters = namedAdjusters(kind);

  it('no two adjusters have one label, and each says in sentences what it is', () => {
    expect(new Set(adjusters.map(({ label }) => label)).size).toBe(ADJUSTERS.length);
    for (const { help } of adjusters) expect(help).toMatch(/^[A-Z].*\.$/);
  });

  it('no text names the other', () => {
    const other = kind === 'belt' ? /chain|links of/i : /belt/i;
    expect(adjusters.flatMap(texts).filter((text) => other.test(text))).toEqual([]);
  });

  it('every call gives the very same adjusters', () => {
    expect(namedAdjusters(kind)).toBe(adjusters);
  });
});

it('a belt has slack and length under its own name', () => {
  expect(adjusterLabel('chainSlack', 'belt')).toBe('Belt slack');
  expect(adjusterLabel('chainSlack', 'chain')).toBe('Chain slack');
  expect(adjusterLabel('shockLength', 'belt')).toBe('Shock length');
});
