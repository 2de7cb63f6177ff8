/** Tests of what is said of a sag. */
import { describe, expect, it } from 'vitest';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { SAG_RANGES, SAG_USES } from '../../core/riding/sag-ranges.ts';
import { judgeSag, sagNowWords, sagPlace, sagSentence } from './sag-words.ts';

const METRIC: NumberStyle = { system: 'metric', decimal: '.' };
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

describe('a sag', () => {
  it('is written in mm and in per cent of the travel, beside what is common', () => {
    expect(plain(sagSentence(33, 132.5, 'rear', 'rider', 'road', METRIC))).toBe(
      'Rear rider sag 33.0 mm, 25 % of the travel, within 25 to 40 mm common on the road',
    );
    expect(plain(sagSentence(9.4, 120, 'front', 'free', 'track', METRIC))).toBe(
      'Front free sag 9.4 mm, 8 % of the travel, less than the 15 to 25 mm common on the track',
    );
    expect(plain(judgeSag(120, 'rear', 'rider', 'offRoad', METRIC))).toBe(
      'more than the 90 to 110 mm common off the road',
    );
    expect(plain(judgeSag(33, 'rear', 'rider', 'road', { system: 'inch', decimal: ',' }))).toBe(
      'within 0,98 to 1,57 in common on the road',
    );
  });

  it('at either end of a range is within it', () => {
    for (const { key } of SAG_USES)
      for (const end of ['front', 'rear'] as const)
        for (const kind of ['free', 'rider'] as const) {
          const { least, most } = SAG_RANGES[key][end][kind];
          expect(most).toBeGreaterThan(least);
          expect([least - 0.1, least, most, most + 0.1].map((mm) => sagPlace(mm, end, kind, key))).toEqual([
            'below',
            'within',
            'within',
            'above',
          ]);
        }
  });

  it('with a rider is more than without, and off the road more than on it', () => {
    for (const end of ['front', 'rear'] as const) {
      for (const { key } of SAG_USES)
        expect(SAG_RANGES[key][end].rider.least).toBeGreaterThan(SAG_RANGES[key][end].free.least);
      expect(SAG_RANGES.offRoad[end].rider.least).toBeGreaterThan(SAG_RANGES.road[end].rider.most);
    }
  });
});

it('stands beside that of the baseline where the two differ as written', () => {
  const now = { free: { front: 20, rear: 8 }, rider: { front: 33, rear: 30 } } as Parameters<
    typeof sagNowWords
  >[0];
  const before = { ...now, rider: { front: 33.01, rear: 34.2 } };
  expect(plain(sagNowWords(now, null, 'rear', METRIC))).toBe('It sags 8.0 mm free, 30.0 mm with the rider.');
  expect(plain(sagNowWords(now, before, 'front', METRIC))).toBe(
    'It sags 20.0 mm free, 33.0 mm with the rider.',
  );
  expect(plain(sagNowWords(now, before, 'rear', METRIC))).toBe(
    'It sags 8.0 mm free, 30.0 mm with the rider. At the baseline: 8.0 mm and 34.2 mm.',
  );
});
