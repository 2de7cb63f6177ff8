/** Tests of the advice given when a bike cannot stand. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { refuse } from '../../core/numeric/refusal.ts';
import { expect, it } from 'vitest';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { noPoseWords } from './no-pose-words.ts';
import type { NoPoseReason } from '../../core/chassis/no-pose.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };
const inch: NumberStyle = { system: 'inch', decimal: '.' };
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

/** One of each, so that a new reason does not compile without words and a test. */
const REASONS: Readonly<Record<NoPoseReason, true>> = {
  tyreCodeUnreadable: true,
  tyreRateNotAboveZero: true,
  tyreSizeImpossible: true,
  inputNotANumber: true,
  inputTooLarge: true,
  axlesTooClose: true,
  axleOutOfSlot: true,
  upsideDown: true,
  axisFlat: true,
  forkTooShort: true,
  forkTravelBeyond: true,
  rearTravelBeyond: true,
  travelTableUnusable: true,
  swingarmCannotReach: true,
  pivotBehindPatch: true,
  sprocketsOverlap: true,
  teethImpossible: true,
  chainPitchImpossible: true,
  guideImpossible: true,
  countershaftBehindAxle: true,
  massNegative: true,
  torqueArmCannotClose: true,
  torqueArmInLine: true,
};

it.each(Object.keys(REASONS) as NoPoseReason[])(
  'says %s in whole sentences, with and without numbers',
  (reason) => {
    const full = noPoseWords(refuse(reason, { found: 3, limit: 2, end: 'rear' }), CHAIN, metric);
    const bare = noPoseWords(refuse(reason), CHAIN, metric);
    for (const words of [full, bare]) {
      expect(words).toMatch(/^[A-Z].*\.$/);
      expect(words).not.toMatch(/undefined|NaN| {2}/);
    }
  },
);

it('gives the numbers in the user’s own units', () => {
  const refusal = refuse('forkTravelBeyond', { end: 'front', found: 150, limit: 120 });
  expect(spaced(noPoseWords(refusal, CHAIN, metric))).toBe(
    'Fork travel used is 150.0 mm, but the fork has 0 to 120.0 mm. Set it within that.',
  );
  expect(spaced(noPoseWords(refusal, CHAIN, inch))).toContain('5.91 in, but the fork has 0 to 4.72 in');
});

it('turns the core’s radians into degrees', () => {
  const refusal = refuse('axisFlat', { found: 1.4, limit: 1.3 });
  expect(noPoseWords(refusal, CHAIN, metric)).toContain(
    'lean 80.21°, nearly flat; it must lean less than 74.48°',
  );
});

it('adds digits until the number found can be told from its limit', () => {
  const refusal = refuse('forkTravelBeyond', { found: 120.004, limit: 120 });
  expect(spaced(noPoseWords(refusal, CHAIN, metric))).toContain(
    '120.004 mm, but the fork has 0 to 120.000 mm',
  );
});

it('names the end it concerns', () => {
  expect(noPoseWords(refuse('tyreCodeUnreadable', { end: 'rear' }), CHAIN, metric)).toContain(
    'The rear tyre’s size code',
  );
  expect(noPoseWords(refuse('teethImpossible', { end: 'front', found: 15.5 }), CHAIN, metric)).toBe(
    'The front sprocket cannot have 15.5 teeth. It needs a whole number of teeth that a chain can run on.',
  );
});
