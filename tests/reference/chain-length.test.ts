/** Chain length against a textbook's worked examples, which use the handbook's approximate form. */
import { describe, expect, it } from 'vitest';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { handbookCentres, handbookLinks } from '../support/handbook-chain.ts';
import { centresFor, linksAround } from '../support/taut-chain.ts';

// Source: V. B. Bhandari, Design of Machine Elements, example 14.3; from memory.
describe('21 and 63 teeth, pitch 12.7, centres 500', () => {
  const loop = chainLoop(21, 63, 12.7);

  it('by the handbook’s form give the printed length and corrected centre distance', () => {
    expect(handbookLinks(loop, 500)).toBeCloseTo(121.875097, 6);
    expect(handbookCentres(loop, 122)).toBeCloseTo(500.804717, 6);
  });

  it('exactly are 0.00275 links longer, so the centres for 122 links are 0.0176 mm closer', () => {
    expect(linksAround(loop, 500) - handbookLinks(loop, 500)).toBeCloseTo(0.002749, 6);
    expect(centresFor(loop, 122)).toBeCloseTo(500.787093, 6);
  });
});

// Source: V. B. Bhandari, Design of Machine Elements, example 14.4; from memory.
describe('17 and 34 teeth, pitch 19.05, centres 40 pitches', () => {
  const loop = chainLoop(17, 34, 19.05);
  /** The example draws the centres together by this much for the chain's sag. */
  const FOR_SAG = 0.998;

  it('have the printed diameters', () => {
    expect(2 * loop.frontRadius).toBeCloseTo(103.673741, 6);
    expect(2 * loop.rearRadius).toBeCloseTo(206.462975, 6);
  });

  it('by the handbook’s form give the printed length and centre distance', () => {
    expect(handbookLinks(loop, 40 * 19.05)).toBeCloseTo(105.683011, 6);
    expect(FOR_SAG * handbookCentres(loop, 106)).toBeCloseTo(763.49616, 6);
  });

  it('exactly are 0.00007 links longer: 0.0006 mm of centre distance', () => {
    expect(linksAround(loop, 40 * 19.05) - handbookLinks(loop, 40 * 19.05)).toBeCloseTo(0.0000684, 7);
    expect(handbookCentres(loop, 106) - centresFor(loop, 106)).toBeCloseTo(0.000645, 6);
  });
});
