/** Tests of the advice given when a bike does not come to rest. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { refuse } from '../../core/numeric/refusal.ts';
import { expect, it } from 'vitest';
import type { NoLinkageReason } from '../../core/linkage/no-linkage.ts';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { noEquilibriumWords } from './no-equilibrium-words.ts';
import type { NoEquilibrium, NoEquilibriumReason } from '../../core/standing/no-equilibrium.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };
const inch: NumberStyle = { system: 'inch', decimal: '.' };
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

/** One of each, so that a new reason does not compile without words and a test. */
const REASONS: Readonly<Record<Exclude<NoEquilibriumReason, NoLinkageReason>, true>> = {
  rateNotAboveZero: true,
  tyreFlat: true,
  springCountImpossible: true,
  preloadBeyondSpring: true,
  noStroke: true,
  bumpStopImpossible: true,
  topOutImpossible: true,
  stageImpossible: true,
  forceTableTooShort: true,
  forceTableNotFromZero: true,
  forceTableFalls: true,
  nothingHolds: true,
  airSizeImpossible: true,
  airExponentImpossible: true,
  balanceChamberImpossible: true,
  airPressureImpossible: true,
  noAirLeft: true,
  balanceTooStrong: true,
  noMass: true,
  massBehindRearAxle: true,
  massAheadOfFrontAxle: true,
  unsprungTooHeavy: true,
  frontLifts: true,
  rearLifts: true,
  neverLifts: true,
  leanImpossible: true,
  brakeShareImpossible: true,
  throttleOpenAndClosed: true,
  dragImpossible: true,
  readingBeyondMass: true,
  liftImpossible: true,
  uncertaintyNegative: true,
  centreHeightImpossible: true,
  fuelTooHeavy: true,
  sagImpossible: true,
  noRateFits: true,
  stayCannotClose: true,
  stayThroughAxle: true,
  notConverged: true,
};

it.each(Object.keys(REASONS) as NoEquilibriumReason[])(
  'says %s in whole sentences, with and without numbers',
  (reason) => {
    const told = [
      noEquilibriumWords(refuse(reason, { found: 3, limit: 2, end: 'rear' }), CHAIN, metric),
      noEquilibriumWords(refuse(reason, { end: 'front' }), CHAIN, metric),
      noEquilibriumWords(refuse(reason), CHAIN, metric),
    ];
    for (const words of told) {
      expect(words).toMatch(/^[A-Z].*\. [A-Z].*\.$|^[A-Z].*\.$/);
      expect(words).not.toMatch(/undefined|NaN| {2}/);
    }
  },
);

it('gives the numbers in the user’s own units, and apart when they differ', () => {
  const lifts = refuse('frontLifts', { end: 'front', found: 1.3, limit: 1.084 });
  expect(spaced(noEquilibriumWords(lifts, CHAIN, metric))).toContain(
    'At 1.30 g the front wheel lifts; it stays on the ground up to 1.08 g.',
  );
  const close = refuse('frontLifts', { end: 'front', found: 1.084, limit: 1.0837 });
  expect(spaced(noEquilibriumWords(close, CHAIN, metric))).toContain(
    'At 1.0840 g the front wheel lifts; it stays on the ground up to 1.0837 g.',
  );
  const preload = refuse('preloadBeyondSpring', { end: 'rear', found: 70, limit: 65 });
  expect(spaced(noEquilibriumWords(preload, CHAIN, inch))).toContain(
    'A preload of 2.76 in makes the shock spring coil-bound',
  );
});

it('tells a lean in degrees', () => {
  const lean = refuse('leanImpossible', { found: Math.PI / 2, limit: 1.3962634015954636 });
  expect(noEquilibriumWords(lean, CHAIN, metric)).toContain('A lean of 90.00° is more than any tyre holds');
});

it('tells a bike without a pose as that', () => {
  const beyond = refuse('forkTravelBeyond', { end: 'front', found: 150, limit: 120 });
  expect(spaced(noEquilibriumWords(beyond, CHAIN, metric))).toContain('Fork travel used is 150.0 mm');
});

it('never carries NaN', () => {
  expect(refuse('frontLifts', { found: NaN, end: 'front' })).toEqual({
    ok: false,
    reason: 'inputNotANumber',
    end: 'front',
  });
  expect(refuse('frontLifts', { found: 1, limit: Infinity })).toEqual({
    ok: false,
    reason: 'frontLifts',
    found: 1,
  });
});

it('says of an impossible centre of gravity on which side of the ground it would be', () => {
  const high = noEquilibriumWords(
    refuse('centreHeightImpossible', { found: 1300, limit: 1000 }),
    CHAIN,
    metric,
  );
  expect(spaced(high)).toContain('would be 1300.0 mm above the ground, which no motorcycle has');
  const low = noEquilibriumWords(refuse('centreHeightImpossible', { found: -40, limit: 150 }), CHAIN, metric);
  expect(spaced(low)).toContain('would be 40.0 mm below the ground');
});

it('says at which mm a leg locks, which pressure is too little, and which row of a table falls', () => {
  const told = (no: NoEquilibrium): string => spaced(noEquilibriumWords(no, CHAIN, metric));
  expect(told(refuse('noAirLeft', { end: 'front', found: 103.24, limit: 120 }))).toContain(
    'is used up at 103.2 mm of 120.0 mm: it locks there.',
  );
  expect(told(refuse('airPressureImpossible', { end: 'rear', found: -0.12, limit: -0.101325 }))).toContain(
    'A pressure of −1.20 bar at the rear end is less than no air at all. Set more than −1.01 bar.',
  );
  expect(told(refuse('noAirLeft', { end: 'front', leg: 'other', found: 99, limit: 120 }))).toBe(
    'The air in the other fork leg is used up at 99.0 mm of 120.0 mm: it locks there. Make the air gap larger, or check the steel volume. Its figures are under Springs.',
  );
  expect(told(refuse('forceTableFalls', { end: 'front', found: 4 }))).toContain(
    'Row 4 of the front force table',
  );
});
