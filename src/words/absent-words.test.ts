/** Tests of the words for readings that have no number. */
import { expect, it } from 'vitest';
import { absent, type AbsentReason } from '../core/readings/absent.ts';
import { absentWords } from './absent-words.ts';

/** Every reason, once. */
const REASONS: Readonly<Record<AbsentReason, true>> = {
  noMass: true,
  centreOnGround: true,
  neverSquats: true,
  noSprings: true,
  notCarried: true,
  coilsClosed: true,
  linksSilent: true,
  deadPoint: true,
  noClampDepth: true,
  noLeastHeight: true,
  throttleOpen: true,
  slackImpossible: true,
  noRun: true,
  stayCannotClose: true,
  stayThroughAxle: true,
  nothingMeasured: true,
  noCrown: true,
  nothingTouches: true,
};

it('every reason for having no number has its own words', () => {
  const words = (Object.keys(REASONS) as AbsentReason[]).map((reason) => absentWords(absent(reason)));
  expect(new Set(words).size).toBe(words.length);
  for (const sentence of words) expect(sentence.length).toBeGreaterThan(10);
});
