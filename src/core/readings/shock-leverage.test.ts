/** Tests of the reading shockLeverage: the worked number, and no number at a dead point. */
import { expect, it } from 'vitest';
import { stanceWith } from '../../../tests/support/standing.ts';
import { standing } from '../../../tests/support/standing.ts';
import { shockLeverage } from './shock-leverage.ts';
import { absent } from './absent.ts';

const at = (lever: number) => stanceWith({ arm: { ...standing().arm, lever }, pose: { pivot: { x: 570 } } });

it('of a motion ratio of 0.4 is 2.5', () => {
  expect(shockLeverage.read(at(228))).toBeCloseTo(2.5, 12);
});

it('has no number where the shock stands still', () => {
  expect(shockLeverage.read(at(0))).toBe(absent('deadPoint'));
});
