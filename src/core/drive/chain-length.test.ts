/** Tests of the chain's length round two sprockets. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import {
  centresFor,
  handbookCentres,
  handbookLinks,
  leastCentres,
  linksAround,
  linksPerMm,
} from './chain-length.ts';
import { chainLoop } from './chain-loop.ts';

const loop = chainLoop(15, 45, 15.875);

describe('the length of a taut chain', () => {
  it('round equal sprockets is two runs of the centre distance and all teeth of one', () => {
    expect(linksAround(chainLoop(16, 16, 12.7), 508)).toBeCloseTo(2 * (508 / 12.7) + 16, 12);
  });

  it('does not care which sprocket drives', () => {
    expect(linksAround(chainLoop(45, 15, 15.875), 640)).toBeCloseTo(linksAround(loop, 640), 12);
  });

  it('grows with the centre distance as its derivative says', () => {
    for (const centres of [leastCentres(loop) + 1, 300, 660, 1200]) {
      const step = 1e-4;
      const change = (linksAround(loop, centres + step) - linksAround(loop, centres - step)) / (2 * step);
      expect(linksPerMm(loop, centres)).toBeCloseTo(change, 8);
      expect(linksPerMm(loop, centres)).toBeGreaterThan(0);
    }
  });
});

describe('the centre distance of a given chain', () => {
  it('is found again from its length within a few rounds, with what is left to find', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 60 }),
        fc.integer({ min: 6, max: 120 }),
        fc.double({ min: 1e-6, max: 2000, noNaN: true }),
        (front, rear, beyond) => {
          const drawn = chainLoop(front, rear, 15.875);
          const centres = leastCentres(drawn) + beyond;
          const found = centresFor(drawn, linksAround(drawn, centres));
          if (!found.ok) throw new Error(found.reason);
          expect(Math.abs(found.centres - centres)).toBeLessThan(1e-8);
          expect(Math.abs(found.residual)).toBeLessThan(1e-10);
          if (beyond > 100) expect(found.rounds).toBeLessThan(8);
        },
      ),
      { numRuns: cases(2000) },
    );
  });

  it('does not exist for a chain too short to go round, and the least length is told', () => {
    const found = centresFor(loop, 40);
    expect(found).toMatchObject({ ok: false, reason: 'tooShortToClose' });
    if (found.ok) return;
    expect(found.leastLinks).toBeCloseTo(linksAround(loop, leastCentres(loop)), 12);
    expect(found.residual).toBeCloseTo(found.leastLinks - 40, 12);
  });

  it('does not exist for what is no number', () => {
    for (const links of [NaN, Infinity, -Infinity])
      expect(centresFor(loop, links)).toMatchObject({ ok: false, reason: 'notANumber' });
  });
});

describe('the handbook’s form', () => {
  it('turned round gives its own centre distance again', () => {
    expect(handbookCentres(loop, handbookLinks(loop, 612))).toBeCloseTo(612, 9);
  });

  it('has no answer for a chain shorter than the wraps', () => {
    expect(handbookCentres(loop, 30)).toBeNull();
    expect(handbookCentres(loop, 36)).toBeNull();
  });
});
