/** Tests of the hanging lower run: its ends, its length, and what cannot hang. */
import { describe, expect, it } from 'vitest';
import { distance } from '../plane/point.ts';
import { lowerRun, frontTouch, rearTouch, spareOf, type LowerRun } from './lower-run.ts';
import { chainLoop } from './chain-loop.ts';
import { hangingPoints, hangingRun, type HangingRun } from './hanging-run.ts';

function taut(): LowerRun {
  const run = lowerRun(chainLoop(15, 45, 15.875), { x: 0, y: 315 }, { x: 650, y: 430 });
  if (run === null) throw new Error('The sprockets overlap');
  return run;
}

function hung(spare: number): HangingRun {
  const found = hangingRun(taut(), spare);
  if (!found.ok) throw new Error(found.reason);
  return found;
}

describe('a hanging run', () => {
  it('begins and ends on the pitch circles, along them', () => {
    const hanging = hung(4);
    const points = hangingPoints(hanging, 4001);
    expect(distance(points[0], rearTouch(hanging.run, hanging.rearAngle))).toBeLessThan(1e-9);
    expect(distance(points[4000], frontTouch(hanging.run, hanging.frontAngle))).toBeLessThan(1e-9);
    const first = Math.atan2(points[1].y - points[0].y, points[1].x - points[0].x);
    expect(first).toBeCloseTo(hanging.rearAngle, 3);
  });

  it('is longer than the taut run by the spare chain, measured along its points', () => {
    const hanging = hung(4);
    const points = hangingPoints(hanging, 2001);
    const length = points.slice(1).reduce((sum, p, i) => sum + distance(points[i], p), 0);
    expect(spareOf(hanging.run, length, hanging.rearAngle, hanging.frontAngle)).toBeCloseTo(4, 5);
  });

  it('drops more with more spare, from nothing on without a jump', () => {
    let before = 0;
    for (const spare of [0, 1e-7, 2e-6, 1e-4, 0.01, 0.1, 1, 10, 100]) {
      const { drop, residual } = hung(spare);
      expect(drop).toBeGreaterThanOrEqual(before);
      expect(Math.abs(residual)).toBeLessThan(1e-6);
      before = drop;
    }
    expect(hung(2e-6).drop).toBeLessThan(0.01);
  });

  it('without spare is the straight run', () => {
    const hanging = hung(0);
    expect(hanging).toMatchObject({ drop: 0, parameter: null });
    const points = hangingPoints(hanging, 3);
    expect(distance(points[0], points[2])).toBeCloseTo(hanging.run.length, 9);
    expect(distance(points[0], points[1])).toBeCloseTo(hanging.run.length / 2, 9);
  });

  it('is refused when the chain is too short, when it would hang like a bag, and when the spare is not a number', () => {
    expect(hangingRun(taut(), -0.5)).toEqual({ ok: false, reason: 'tooTight', spare: -0.5 });
    expect(hangingRun(taut(), 2000)).toEqual({ ok: false, reason: 'tooSlack', spare: 2000 });
    expect(hangingRun(taut(), NaN)).toMatchObject({ reason: 'notANumber' });
  });
});
