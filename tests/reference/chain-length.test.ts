/** Chain length against a textbook's worked examples and against rigid links laid tooth by tooth. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import {
  centresFor,
  handbookCentres,
  handbookLinks,
  linksAround,
  type Centres,
} from '../../src/core/drive/chain-length.ts';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { outerTangent } from '../../src/core/plane/circle.ts';
import { distance, type Point } from '../../src/core/plane/point.ts';
import { rigidCentres } from '../support/rigid-chain.ts';

function centres(...[loop, links]: Parameters<typeof centresFor>): Centres {
  const found = centresFor(loop, links);
  if (!found.ok) throw new Error(found.reason);
  return found;
}

describe('Bhandari, Design of Machine Elements, example 14.3 (21 and 63 teeth, pitch 12.7, centres 500)', () => {
  const loop = chainLoop(21, 63, 12.7);

  it('by the handbook’s form gives the printed length and corrected centre distance', () => {
    expect(handbookLinks(loop, 500)).toBeCloseTo(121.875097, 6);
    expect(handbookCentres(loop, 122)).toBeCloseTo(500.804717, 6);
  });

  it('exactly is 0.00275 links longer, so the centres for 122 links are 0.0176 mm closer', () => {
    expect(linksAround(loop, 500) - handbookLinks(loop, 500)).toBeCloseTo(0.002749, 6);
    expect(centres(loop, 122).centres).toBeCloseTo(500.787093, 6);
  });
});

describe('Bhandari, Design of Machine Elements, example 14.4 (17 and 34 teeth, pitch 19.05, centres 40 pitches)', () => {
  const loop = chainLoop(17, 34, 19.05);
  /** The example draws the centres together by this much for the chain's sag. */
  const FOR_SAG = 0.998;

  it('by the handbook’s form gives the printed diameters, length and centre distance', () => {
    expect(2 * loop.frontRadius).toBeCloseTo(103.673741, 6);
    expect(2 * loop.rearRadius).toBeCloseTo(206.462975, 6);
    expect(handbookLinks(loop, 40 * 19.05)).toBeCloseTo(105.683011, 6);
    expect(FOR_SAG * (handbookCentres(loop, 106) ?? 0)).toBeCloseTo(763.49616, 6);
  });

  it('exactly is 0.00007 links longer: 0.0006 mm of centre distance', () => {
    expect(linksAround(loop, 40 * 19.05) - handbookLinks(loop, 40 * 19.05)).toBeCloseTo(0.0000684, 7);
    expect((handbookCentres(loop, 106) ?? 0) - centres(loop, 106).centres).toBeCloseTo(0.000645, 6);
  });
});

describe('the handbook’s form on motorcycles', () => {
  it.each([
    { front: 15, rear: 45, links: 114, off: 0.004755 },
    { front: 13, rear: 50, links: 114, off: 0.011843 },
    { front: 16, rear: 16, links: 80, off: 0 },
  ])('asks for $off mm too much with $front/$rear and $links links', ({ front, rear, links, off }) => {
    const loop = chainLoop(front, rear, 15.875);
    expect((handbookCentres(loop, links) ?? 0) - centres(loop, links).centres).toBeCloseTo(off, 6);
  });

  it('arcs of the pitch circles in place of teeth put a 15/45 with 114 links 0.56 mm closer', () => {
    const loop = chainLoop(15, 45, 15.875);
    const at = centres(loop, 114).centres;
    const wedge = Math.asin((loop.rearRadius - loop.frontRadius) / at);
    const arcs =
      (loop.rearRadius * (Math.PI + 2 * wedge) + loop.frontRadius * (Math.PI - 2 * wedge)) / loop.pitch;
    const teeth = 30 + (30 * wedge) / Math.PI;
    expect(((arcs - teeth) * loop.pitch) / 2).toBeCloseTo(0.56, 2);
  });
});

/** Sprockets and chains of motorcycles, long enough to leave the sprockets a hand's breadth apart. */
const likely = fc.record({
  front: fc.integer({ min: 10, max: 20 }),
  rear: fc.integer({ min: 10, max: 60 }),
  pitch: fc.constantFrom(12.7, 15.875),
  links: fc.integer({ min: 90, max: 140 }),
  turn: fc.double({ min: -3, max: 3, noNaN: true }),
});

describe('a chain found by its links', () => {
  it('closes: two runs along the tangents in pitches and the wraps in teeth are its links to 1e-9', () => {
    fc.assert(
      fc.property(likely, ({ front, rear, pitch, links, turn }) => {
        const loop = chainLoop(front, rear, pitch);
        const apart = centres(loop, links).centres;
        const rearCircle = { centre: { x: 40, y: -20 }, radius: loop.rearRadius };
        const frontCentre = { x: 40 + apart * Math.cos(turn), y: -20 + apart * Math.sin(turn) };
        const frontCircle = { centre: frontCentre, radius: loop.frontRadius };
        const top = outerTangent(rearCircle, frontCircle, 'left');
        const bottom = outerTangent(rearCircle, frontCircle, 'right');
        if (top === 'oneInsideOther' || bottom === 'oneInsideOther') throw new Error('no tangents');
        const turns = (centre: Point, from: Point, to: Point): number => {
          const sweep =
            Math.atan2(to.y - centre.y, to.x - centre.x) - Math.atan2(from.y - centre.y, from.x - centre.x);
          return (((sweep / (2 * Math.PI)) % 1) + 1) % 1;
        };
        const runs = (distance(top.from, top.to) + distance(bottom.from, bottom.to)) / pitch;
        const wraps =
          rear * turns(rearCircle.centre, top.from, bottom.from) +
          front * turns(frontCentre, bottom.to, top.to);
        expect(Math.abs(runs + wraps - links)).toBeLessThan(1e-9);
      }),
      { numRuns: cases(1000) },
    );
  });

  it('is within 0.1 mm of a chain of rigid links laid tooth by tooth, wherever the sprockets stand', () => {
    let most = 0;
    fc.assert(
      fc.property(
        likely,
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ front, rear, pitch, links }, part) => {
          const apart = centres(chainLoop(front, rear, pitch), links).centres;
          const phase = (2 * Math.PI * part) / front;
          const rigid = rigidCentres({ front, rear, pitch }, links, phase, [apart - 2, apart + 2]);
          most = Math.max(most, Math.abs(rigid - apart));
        },
      ),
      { numRuns: cases(60) },
    );
    expect(most).toBeLessThan(0.1);
    expect(most).toBeGreaterThan(0.001);
  });
});
