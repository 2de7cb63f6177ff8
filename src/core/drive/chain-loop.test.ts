/** Tests of loops of chain and belt. */
import { expect, it } from 'vitest';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { beltLoop, beltPitchRadius, chainLoop, whyNoLoop } from './chain-loop.ts';

it('a belt’s pitch line goes once round its pulley in as many pitches as there are teeth', () => {
  expect(2 * Math.PI * beltPitchRadius(30, 11)).toBeCloseTo(330, 12);
  expect(beltPitchRadius(30, 11)).toBeLessThan(chainLoop(30, 30, 11).frontRadius);
});

it('a belt round two equal pulleys is two runs and one round', () => {
  expect(linksAround(beltLoop(30, 30, 11), 550)).toBeCloseTo(130, 12);
});

it('a worn chain lies further out by as much as it is longer', () => {
  const fresh = chainLoop(15, 45, 15.875);
  const worn = chainLoop(15, 45, 15.875, 2);
  expect(worn.rearRadius / fresh.rearRadius).toBeCloseTo(1.02, 12);
  expect(linksAround(worn, 1.02 * 660)).toBeCloseTo(linksAround(fresh, 660), 10);
});

it('teeth and pitches that no loop can have are refused with their number', () => {
  expect(whyNoLoop(15, 45, 15.875)).toBeNull();
  expect(whyNoLoop(5, 45, 15.875)).toMatchObject({ reason: 'teethImpossible', end: 'front', found: 5 });
  expect(whyNoLoop(15, 45.5, 15.875)).toMatchObject({ reason: 'teethImpossible', end: 'rear' });
  expect(whyNoLoop(15, 45, 3)).toMatchObject({ reason: 'chainPitchImpossible', found: 3, limit: 4 });
  expect(whyNoLoop(15, 45, 50)).toMatchObject({ reason: 'chainPitchImpossible', limit: 40 });
});
