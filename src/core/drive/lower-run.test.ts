/** Tests of the taut lower run. */
import { describe, expect, it } from 'vitest';
import { outerTangent } from '../plane/circle.ts';
import { distance } from '../plane/point.ts';
import { lowerRun, frontTouch, rearTouch, runMiddle, spareOf, type LowerRun } from './lower-run.ts';
import { linksAround } from '../../../tests/support/taut-chain.ts';
import { chainLoop } from './chain-loop.ts';

const rear = { x: 10, y: 320 };
const front = { x: 655, y: 431 };
const loop = chainLoop(15, 45, 15.875);

function taut(): LowerRun {
  const run = lowerRun(loop, rear, front);
  if (run === null) throw new Error('The sprockets overlap');
  return run;
}

describe('the taut lower run', () => {
  it('is the lower outer tangent of both pitch circles', () => {
    const run = taut();
    const circles = [
      { centre: rear, radius: loop.rearRadius },
      { centre: front, radius: loop.frontRadius },
    ] as const;
    const tangent = outerTangent(...circles, 'right');
    if (tangent === 'oneInsideOther') throw new Error(tangent);
    expect(distance(rearTouch(run, run.angle), tangent.from)).toBeLessThan(1e-9);
    expect(distance(frontTouch(run, run.angle), tangent.to)).toBeLessThan(1e-9);
    expect(run.length).toBeCloseTo(distance(tangent.from, tangent.to), 9);
    expect(distance(runMiddle(run), tangent.from)).toBeCloseTo(run.length / 2, 9);
  });

  it('has no spare chain, and sprockets that overlap have no run', () => {
    const run = taut();
    expect(spareOf(run, run.length, run.angle, run.angle)).toBe(0);
    expect(lowerRun(loop, rear, { x: 100, y: 320 })).toBeNull();
    expect(lowerRun(loop, rear, { x: NaN, y: 320 })).toBeNull();
  });

  it('counts what leaves the wraps in teeth: a run that leaves a tooth sooner at each end frees two links', () => {
    const run = taut();
    const [rearTooth, frontTooth] = [(2 * Math.PI) / loop.rearTeeth, (2 * Math.PI) / loop.frontTeeth];
    expect(spareOf(run, run.length + 40, run.angle - rearTooth, run.angle + frontTooth)).toBeCloseTo(
      40 - 2 * loop.pitch,
      10,
    );
    expect(linksAround(loop, distance(rear, front))).toBeGreaterThan((2 * run.length) / loop.pitch);
  });
});
