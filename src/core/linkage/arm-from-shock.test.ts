/** Tests of the arm's angle from the shock's length, and back again. */
import { describe, expect, it } from 'vitest';
import { rockerToArm, rockerToFrame, rearLayouts, twoShocks } from '../../../tests/support/rear-layouts.ts';
import { evenly, madeLinks, madeRange, madeShock } from '../../../tests/support/rear-made.ts';
import type { LinkLayout } from '../parts/rear-layout.ts';
import { angleAtLength } from './arm-from-shock.ts';

/** Both ways agree to this, mm and radians. */
const AGREED = 1e-9;

describe.each(rearLayouts)('$name', ({ layout }) => {
  const of = madeLinks(layout);
  const range = madeRange(layout);

  it('gives back the arm’s angle from the shock’s length, over the whole range', () => {
    for (const angle of evenly(range.low.angle + 1e-3, range.high.angle - 1e-3, 500)) {
      const back = angleAtLength(of, range, madeShock(of, angle).length);
      if (!back.ok) throw new Error(back.reason);
      expect(Math.abs(back.angle - angle)).toBeLessThan(AGREED);
      expect(Math.abs(back.residual)).toBeLessThan(AGREED);
    }
  });

  it('gives back the shock’s length from the arm’s angle, over the whole stroke', () => {
    for (const length of evenly(of.closedLength, of.fullLength, 200)) {
      const arm = angleAtLength(of, range, length);
      if (!arm.ok) throw new Error(arm.reason);
      expect(Math.abs(madeShock(of, arm.angle).length - length)).toBeLessThan(AGREED);
    }
  });

  it('is closed form unless both ends of the shock move with different parts of the loop', () => {
    const arm = angleAtLength(of, range, (of.closedLength + of.fullLength) / 2);
    const searched =
      layout.kind !== 'direct' && (layout.kind === 'rockerOnFrame') !== (layout.shockFarEnd.on === 'frame');
    expect(arm).toMatchObject({ ok: true, how: searched ? 'bracketed' : 'closedForm' });
  });
});

it('the arm’s angle is closed form whichever way the frame’s axes point', () => {
  const turn = Math.PI;
  const { x, y } = twoShocks.shockOnFrame;
  const about: LinkLayout = {
    ...twoShocks,
    drawnAngleDeg: twoShocks.drawnAngleDeg + 180,
    framePitchDeg: -180,
    shockOnFrame: { x: -x, y: -y },
  };
  const [of, range] = [madeLinks(about), madeRange(about)];
  for (const length of evenly(of.closedLength, of.fullLength, 20)) {
    const plain = angleAtLength(madeLinks(twoShocks), madeRange(twoShocks), length);
    const turned = angleAtLength(of, range, length);
    if (!plain.ok || !turned.ok) throw new Error('The shock fits');
    expect(turned.how).toBe('closedForm');
    expect(turned.angle - turn).toBeCloseTo(plain.angle, 10);
  }
});

describe('a shock length is refused', () => {
  it('when the links cannot reach it, with what stops them and how far they go', () => {
    for (const layout of [rockerToFrame, rockerToArm]) {
      const [of, range] = [madeLinks(layout), madeRange(layout)];
      expect(angleAtLength(of, range, 600)).toMatchObject({
        reason: 'shockTooLong',
        limit: madeShock(of, range.high.angle).length,
        because: range.high.why,
      });
      expect(angleAtLength(of, range, 40)).toMatchObject({
        reason: 'shockTooShort',
        limit: madeShock(of, range.low.angle).length,
        because: range.low.why,
      });
    }
  });
});
