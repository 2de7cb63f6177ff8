/** The taut chain against its drawn tangents, the handbook's form, and rigid links laid tooth by tooth. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { chainLoop } from '../../src/core/drive/chain-loop.ts';
import { outerTangent } from '../../src/core/plane/circle.ts';
import { distance, type Point } from '../../src/core/plane/point.ts';
import { handbookCentres } from '../support/handbook-chain.ts';
import { rigidCentres } from '../support/rigid-chain.ts';
import { centresFor } from '../support/taut-chain.ts';

describe('the handbook’s form on motorcycles', () => {
  it.each([
    { front: 15, rear: 45, links: 114, off: 0.004755 },
    { front: 13, rear: 50, links: 114, off: 0.011843 },
    { front: 16, rear: 16, links: 80, off: 0 },
  ])('gives $off mm too much with $front/$rear and $links links', ({ front, rear, links, off }) => {
    const loop = chainLoop(front, rear, 15.875);
    expect(handbookCentres(loop, links) - centresFor(loop, links)).toBeCloseTo(off, 6);
  });

  it('arcs of the pitch circles in place of teeth put a 15/45 with 114 links 0.56 mm closer', () => {
    const loop = chainLoop(15, 45, 15.875);
    const at = centresFor(loop, 114);
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
        const apart = centresFor(loop, links);
        const rearCircle = { centre: { x: 40, y: -20 }, radius: loop.rearRadius };
        const frontCentre = { x: 40 + apart * Math.cos(turn), y: -20 + apart * Math.sin(turn) };
        const frontCircle = { centre: frontCentre, radius: loop.frontRadius };
        const upper = outerTangent(rearCircle, frontCircle, 'left');
        const lower = outerTangent(rearCircle, frontCircle, 'right');
        if (upper === 'oneInsideOther' || lower === 'oneInsideOther') throw new Error('no tangents');
        const turns = (centre: Point, from: Point, to: Point): number => {
          const sweep =
            Math.atan2(to.y - centre.y, to.x - centre.x) - Math.atan2(from.y - centre.y, from.x - centre.x);
          return (((sweep / (2 * Math.PI)) % 1) + 1) % 1;
        };
        const runs = (distance(upper.from, upper.to) + distance(lower.from, lower.to)) / pitch;
        const wraps =
          rear * turns(rearCircle.centre, upper.from, lower.from) +
          front * turns(frontCentre, lower.to, upper.to);
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
          const apart = centresFor(chainLoop(front, rear, pitch), links);
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
