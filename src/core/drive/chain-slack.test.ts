/** Tests of the slack at the middle of the run, against tangents drawn from the held link to both sprockets. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { outerTangent } from '../plane/circle.ts';
import { distance, type Point } from '../plane/point.ts';
import { lowerRun, runMiddle, type LowerRun } from './lower-run.ts';
import { chainByHull } from '../../../tests/support/chain-by-hull.ts';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { chainLoop } from './chain-loop.ts';
import { bentRun, chainSlack } from './chain-slack.ts';
import { spareForAside, spareForSlack } from './run-slack.ts';

function taut(front: Point = { x: 640, y: 110 }, frontTeeth = 15): LowerRun {
  const run = lowerRun(chainLoop(frontTeeth, 45, 15.875), { x: 0, y: 0 }, front);
  if (run === null) throw new Error('The sprockets overlap');
  return run;
}

/** Links of the whole loop with the lower run bent at `held`, by tangents and by turns of their touching points. */
function linksBentAt(run: LowerRun, held: Point): number {
  const { loop } = run;
  const rear = { centre: run.rear, radius: loop.rearRadius };
  const front = { centre: run.front, radius: loop.frontRadius };
  const top = outerTangent(rear, front, 'left');
  const behind = outerTangent(rear, { centre: held, radius: 0 }, 'right');
  const ahead = outerTangent({ centre: held, radius: 0 }, front, 'right');
  if (top === 'oneInsideOther' || behind === 'oneInsideOther' || ahead === 'oneInsideOther')
    throw new Error('The held link lies within a sprocket');
  const turns = (centre: Point, from: Point, to: Point): number => {
    const sweep =
      Math.atan2(to.y - centre.y, to.x - centre.x) - Math.atan2(from.y - centre.y, from.x - centre.x);
    return (((sweep / (2 * Math.PI)) % 1) + 1) % 1;
  };
  const straight =
    distance(top.from, top.to) + distance(behind.from, behind.to) + distance(ahead.from, ahead.to);
  return (
    straight / loop.pitch +
    loop.rearTeeth * turns(run.rear, top.from, behind.from) +
    loop.frontTeeth * turns(run.front, ahead.to, top.to)
  );
}

describe('slack at the middle of the run', () => {
  it('uses up exactly the spare chain, up and down', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        fc.double({ min: -150, max: 200, noNaN: true }),
        (spare, y) => {
          const run = taut({ x: 640, y });
          const slack = chainSlack(run, spare);
          if (!slack.ok) throw new Error(slack.reason);
          const middle = runMiddle(run);
          for (const aside of [slack.down, -slack.up]) {
            const held = {
              x: middle.x + aside * Math.sin(run.angle),
              y: middle.y - aside * Math.cos(run.angle),
            };
            const links = linksAround(run.loop, distance(run.rear, run.front)) + spare / run.loop.pitch;
            expect(Math.abs(linksBentAt(run, held) - links)).toBeLessThan(1e-9);
          }
          expect(slack.total).toBeCloseTo(slack.up + slack.down, 12);
        },
      ),
      { numRuns: cases(300) },
    );
  });

  it('is near the rule of thumb for a short length of string: √(length·spare/2) each way', () => {
    const run = taut();
    const slack = chainSlack(run, 1);
    if (!slack.ok) throw new Error(slack.reason);
    const string = Math.sqrt(run.length / 2);
    expect(Math.abs(slack.down / string - 1)).toBeLessThan(0.03);
    expect(Math.abs(slack.up / string - 1)).toBeLessThan(0.03);
  });

  it('is zero without spare, and refused with too little or far too much chain', () => {
    expect(chainSlack(taut(), 0)).toEqual({ ok: true, up: 0, down: 0, total: 0 });
    expect(chainSlack(taut(), -0.1)).toEqual({ ok: false, reason: 'tooTight', spare: -0.1 });
    expect(chainSlack(taut(), 900)).toEqual({ ok: false, reason: 'tooSlack', spare: 900 });
    expect(chainSlack(taut(), NaN)).toMatchObject({ reason: 'notANumber' });
  });

  it('gives back the spare chain', () => {
    for (const total of [1, 25, 35, 90]) {
      const spare = spareForSlack(taut(), total);
      if (!spare.ok) throw new Error(spare.reason);
      const slack = chainSlack(taut(), spare.spare);
      if (!slack.ok) throw new Error(slack.reason);
      expect(slack.total).toBeCloseTo(total, 7);
    }
    expect(spareForSlack(taut(), 0)).toEqual({ ok: true, spare: 0 });
    expect(spareForSlack(taut(), NaN)).toMatchObject({ reason: 'notANumber' });
    expect(spareForSlack(taut(), 2000)).toMatchObject({ reason: 'tooSlack' });
  });

  it('is refused with the middle inside a sprocket', () => {
    expect(spareForAside(taut({ x: 160, y: 0 }), -60)).toBeNull();
  });

  it('bent for drawing is as long as the taut run and the spare chain, less what the wraps give up', () => {
    const run = taut();
    for (const aside of [14, -14]) {
      const bent = bentRun(run, aside);
      if (bent === null) throw new Error('no bend');
      const [from, held, to] = bent;
      expect(distance(from, run.rear)).toBeCloseTo(run.loop.rearRadius, 10);
      expect(distance(to, run.front)).toBeCloseTo(run.loop.frontRadius, 10);
      const middle = runMiddle(run);
      expect(distance(middle, held)).toBeCloseTo(14, 10);
      expect(Math.sign(middle.y - held.y)).toBe(Math.sign(aside));
      // Square to the radius where it touches: a tangent.
      for (const [centre, touch] of [
        [run.rear, from],
        [run.front, to],
      ])
        expect(
          (touch.x - centre.x) * (held.x - touch.x) + (touch.y - centre.y) * (held.y - touch.y),
        ).toBeCloseTo(0, 7);
    }
    expect(bentRun(taut({ x: 160, y: 0 }), -60)).toBeNull();
  });
});

describe('slack of a run that passes under a guide', () => {
  const rear = { x: -560, y: -90 };
  const front = { x: 80, y: 5 };
  const loop = chainLoop(15, 45, 15.875);
  const under = (radius: number): LowerRun => {
    const run = lowerRun(loop, rear, front, { centre: { x: 0, y: 0 }, radius });
    if (run === null) throw new Error('The sprockets overlap');
    return run;
  };
  const heldAt = (run: LowerRun, aside: number): Point => {
    const middle = runMiddle(run);
    return { x: middle.x + aside * Math.sin(run.angle), y: middle.y - aside * Math.cos(run.angle) };
  };

  it('uses up the spare chain beyond the bent one, up and down, by the hull of all that it touches', () => {
    for (const radius of [60, 75, 95, 112])
      for (const spare of [0.5, 4, 15]) {
        const run = under(radius);
        const guide = { centre: { x: 0, y: 0 }, radius };
        const slack = chainSlack(run, spare);
        if (!slack.ok) throw new Error(slack.reason);
        const taut =
          run.bentBy === 0 ? linksAround(loop, distance(rear, front)) : chainByHull(loop, rear, front, guide);
        for (const aside of [slack.down, -slack.up]) {
          const links = chainByHull(loop, rear, front, guide, heldAt(run, aside));
          expect(Math.abs((links - taut) * loop.pitch - spare)).toBeLessThan(1e-3);
        }
        expect(slack.total).toBeCloseTo(slack.up + slack.down, 9);
        const back = spareForSlack(run, slack.total);
        expect(back.ok && back.spare).toBeCloseTo(spare, 6);
      }
  });

  it('lies below the straight line where the guide presses it down, and has none without spare', () => {
    const run = under(112);
    expect(run.gap).toBeLessThan(0);
    expect(run.rest).toBeGreaterThan(2);
    expect(Math.abs(spareForAside(run, run.rest) ?? NaN)).toBeLessThan(1e-9);
    expect(chainSlack(run, 0)).toEqual({ ok: true, up: -run.rest, down: run.rest, total: 0 });
    const slack = chainSlack(run, 0.01);
    expect(slack.ok && slack.up < 0).toBe(true);
  });

  it('is that of a free run as long as neither hand nor rest brings it to the guide', () => {
    const free = lowerRun(loop, rear, front);
    if (free === null) throw new Error('The sprockets overlap');
    expect(under(20).bentBy).toBe(0);
    expect(chainSlack(under(20), 3)).toEqual(chainSlack(free, 3));
  });
});
