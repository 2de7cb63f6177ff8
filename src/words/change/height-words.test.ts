/** Tests of the sentences about heights. */
import { expect, it } from 'vitest';
import { antiSquat } from '../../core/readings/anti-squat.ts';
import { seatHeight } from '../../core/readings/seat-height.ts';
import { trail } from '../../core/readings/trail.ts';
import { heightPlace } from '../../core/effects/height-places.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import {
  bothReachedWords,
  bringBackWords,
  movedAlongWords,
  notReachedWords,
  reachedWords,
} from './height-reached-words.ts';
import { effectWords, sinceWords, stepEffectWords } from './height-words.ts';

const mm = { system: 'metric', decimal: '.' } as const;
const inch = { system: 'inch', decimal: ',' } as const;
const front = heightPlace('front');
const seat = heightPlace('seat');
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

it('name the place, the rise with its sign, and where a tape is held', () => {
  expect(plain(effectWords({ place: front, before: 640, after: 635.06 }, mm))).toBe(
    'Front end −4.9 mm, straight above the axle',
  );
  expect(plain(effectWords({ place: seat, before: 815, after: 834.02 }, mm))).toBe('Seat +19.0 mm');
  expect(
    plain(
      effectWords({ place: seat, before: 815, after: 834.02 }, mm, true, {
        place: seat,
        before: 815,
        after: 832.5,
      }),
    ),
  ).toBe('This alone: seat +19.0 mm, in all +17.5 mm');
  expect(plain(effectWords({ place: seat, before: 800, after: 825.4 }, inch))).toBe('Seat +1,00 in');
});

it('say what one step would do', () => {
  expect(
    plain(
      stepEffectWords(
        { amount: 0.5, quantity: 'length', word: 'longer' },
        { place: seat, before: 815, after: 815.93 },
        mm,
      ),
    ),
  ).toBe('0.5 mm longer: seat +0.93 mm');
  const tubes = { amount: 1, quantity: 'length', word: 'tubes up', wordFirst: true } as const;
  expect(plain(stepEffectWords(tubes, { place: front, before: 640, after: 639.04 }, mm))).toBe(
    'Tubes up 1 mm: front end −0.96 mm, straight above the axle',
  );
});

it('say what a typed change of height is counted from, and where a tape is held', () => {
  expect(sinceWords(front)).toBe('Since the baseline, measured straight above the axle.');
  expect(sinceWords(seat)).toBe('Since the baseline.');
});

it('name the reading that an adjuster changes, by the difference of its written figures, and count a tooth', () => {
  const squat = { reading: antiSquat, before: 96.44, after: 97.66 };
  expect(plain(effectWords({ reading: trail, before: 100.14, after: 98.96 }, mm))).toBe('Trail −1.1 mm');
  expect(plain(effectWords({ reading: seatHeight, before: 812.4, after: 811.1 }, mm))).toBe('Seat −1.3 mm');
  expect(plain(stepEffectWords({ amount: 1, quantity: 'teeth', word: 'bigger' }, squat, mm))).toBe(
    '1 tooth bigger: anti-squat +1.3 points',
  );
  expect(
    plain(stepEffectWords({ amount: 5, quantity: 'percent', word: 'more at the front' }, squat, mm)),
  ).toBe('5 points more at the front: anti-squat +1.3 points');
});

it('say what a wanted height was rounded to, and the next step', () => {
  // Written, 800.0 and 810.3, though the rise itself would be written 10.4.
  const step = { value: 5.5, rise: 10.38, before: 799.96, after: 810.34 };
  expect(
    plain(
      reachedWords(
        { ok: true, step, other: { ...step, value: 5, rise: 9.4, after: 809.36 } },
        seat,
        'Shock length',
        mm,
      ),
    ),
  ).toBe('Shock length 5.5 mm gives seat +10.3 mm. The next step, 5.0 mm, gives +9.4 mm.');
  expect(plain(reachedWords({ ok: true, step, other: null }, seat, 'Shock length', mm))).toBe(
    'Shock length 5.5 mm gives seat +10.3 mm.',
  );
});

it('say what a typed height did to the other end, and how to have both', () => {
  expect(plain(movedAlongWords(front, -4.9, -5.3, mm))).toBe(
    'Front end −5.3 mm now, −4.9 mm before: it moved along.',
  );
  expect(movedAlongWords(front, -4.9, -4.9, mm)).toBe('');
  expect(plain(bringBackWords(front, -4.9, mm))).toBe('Front end back to −4.9 mm');
  const met = [
    { place: seat, wanted: 10.3, value: 5.5, before: 799.96, after: 810.34 },
    { place: front, wanted: -5, value: 9, before: 640, after: 635.1 },
  ];
  expect(plain(bothReachedWords(met, ({ adjuster }) => adjusterLabel(adjuster, 'chain'), mm))).toBe(
    'Seat +10.3 mm with shock length 5.5 mm. Front end −4.9 mm with fork tubes above clamp [yoke] 9.0 mm, the step nearest to −5.0 mm.',
  );
});

it('say how far a range reaches', () => {
  expect(
    plain(notReachedWords({ ok: false, reason: 'heightOutOfReach', limit: -34.2 }, front, 'Fork tubes', mm)),
  ).toBe(
    'The most it can do is front end −34.2 mm, straight above the axle: the range of fork tubes ends there.',
  );
  expect(notReachedWords({ ok: false, reason: 'noHeight' }, seat, 'Shock length', mm)).toContain(
    'does not stand',
  );
});
