/** Tests of the advice given when a rear suspension cannot be. */
import { CHAIN } from '../../core/parts/drive-noun.ts';
import { expect, it } from 'vitest';
import type { NumberStyle } from '../../core/units/number-style.ts';
import { noLinkageWords } from './no-linkage-words.ts';
import { noLinkage, type NoLinkageReason, type WayEnd } from '../../core/linkage/no-linkage.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

const REASONS: readonly NoLinkageReason[] = [
  'partHasNoLength',
  'strokeImpossible',
  'drawnInLine',
  'linkageCannotClose',
  'drawnAtDeadPoint',
  'shockPulled',
  'shockTooLong',
  'shockTooShort',
  'armBeyondLinks',
  'adjusterNeedsLinks',
  'pointUnknown',
  'armNotFound',
  'travelTableUnusable',
];

const ENDS: readonly WayEnd[] = [
  'beyondStroke',
  'armUpright',
  'rodAndRockerInLine',
  'rodThroughPivot',
  'shockThroughRocker',
  'shockThroughPivot',
  'shockEndsMoveAlike',
];

it.each(REASONS)('says %s in whole sentences, with and without numbers', (reason) => {
  const full = noLinkageWords(
    noLinkage(reason, { found: 3, limit: 2, because: 'armUpright' }),
    CHAIN,
    metric,
  );
  for (const words of [full, noLinkageWords(noLinkage(reason), CHAIN, metric)]) {
    expect(words).toMatch(/^[A-Z].*\.$/);
    expect(words).not.toMatch(/undefined|NaN| {2}/);
  }
});

it.each(ENDS)('names %s where it ends the way of the links', (because) => {
  const [bare, named] = [noLinkage('shockTooLong'), noLinkage('shockTooLong', { because })];
  expect(noLinkageWords(named, CHAIN, metric).length).toBeGreaterThan(
    noLinkageWords(bare, CHAIN, metric).length + 20,
  );
});

it('tells of a shock too long by how much it is so, and why', () => {
  const no = noLinkage('shockTooLong', { found: 330, limit: 326.5, because: 'rodThroughPivot' });
  expect(spaced(noLinkageWords(no, CHAIN, metric))).toBe(
    'At 330.0 mm the shock is longer than the links allow, 326.5 mm, because the rod points at the swingarm pivot there and the rocker stands still. Fit a shorter shock or move a mount.',
  );
});

it('writes angles in degrees and lengths in the user’s unit', () => {
  const beyond = noLinkage('armBeyondLinks', { found: Math.PI / 6, limit: Math.PI / 8 });
  expect(noLinkageWords(beyond, CHAIN, metric)).toMatch(/30\.0+°.*22\.50*°/);
  const inch: NumberStyle = { system: 'inch', decimal: '.' };
  expect(spaced(noLinkageWords(noLinkage('shockTooLong', { found: 254, limit: 250 }), CHAIN, inch))).toMatch(
    /10\.0+ in/,
  );
});

it('gives two lengths that differ different digits', () => {
  const near = spaced(
    noLinkageWords(noLinkage('shockTooLong', { found: 330.001, limit: 330 }), CHAIN, metric),
  );
  expect(near).toContain('330.001 mm');
});

it('a figure that is not a number has its own sentence', () => {
  expect(noLinkage('shockTooLong', { found: NaN })).toEqual({
    ok: false,
    reason: 'inputNotANumber',
    end: 'rear',
  });
});
