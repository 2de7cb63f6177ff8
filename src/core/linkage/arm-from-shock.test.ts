/** Tests of both ways between arm angle and shock length. */
import { describe, expect, it } from 'vitest';
import { rockerToArm, rockerToFrame, rearLayouts, twoShocks } from '../../../tests/support/rear-layouts.ts';
import { evenly, madeLinks, madeRange, madeShock } from '../../../tests/support/rear-made.ts';
import type { LinkLayout } from '../chassis/rear-layout.ts';
import { angleAtLength, armFromShock, shockFromArm } from './arm-from-shock.ts';

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
      const arm = armFromShock(of, range, length);
      if (!arm.ok) throw new Error(arm.reason);
      const shock = shockFromArm(of, range, arm.angle);
      if ('ok' in shock) throw new Error(shock.reason);
      expect(Math.abs(shock.length - length)).toBeLessThan(AGREED);
    }
  });

  it('is closed form unless both ends of the shock move with different parts of the loop', () => {
    const arm = armFromShock(of, range, (of.closedLength + of.fullLength) / 2);
    const floating =
      layout.kind !== 'direct' && (layout.kind === 'rockerOnFrame') !== (layout.shockFarEnd.on === 'frame');
    expect(arm).toMatchObject({ ok: true, how: floating ? 'bracketed' : 'closedForm' });
  });
});

it('is closed form in whatever direction the frame’s axes lie', () => {
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
    const plain = armFromShock(madeLinks(twoShocks), madeRange(twoShocks), length);
    const turned = armFromShock(of, range, length);
    if (!plain.ok || !turned.ok) throw new Error('The shock fits');
    expect(turned.how).toBe('closedForm');
    expect(turned.angle - turn).toBeCloseTo(plain.angle, 10);
  }
});

describe('an arm angle is refused', () => {
  const of = madeLinks(rockerToFrame);
  const range = madeRange(rockerToFrame);

  it('beyond the links’ range, with what ends it', () => {
    expect(shockFromArm(of, range, range.low.angle - 0.01)).toMatchObject({
      reason: 'armBeyondLinks',
      because: range.low.why,
      limit: range.low.angle,
    });
    expect(shockFromArm(of, range, range.high.angle + 0.01)).toMatchObject({
      reason: 'armBeyondLinks',
      because: range.high.why,
    });
    expect(shockFromArm(of, range, NaN)).toMatchObject({ reason: 'inputNotANumber' });
  });

  it('where the shock would be longer than its full length or shorter than its closed length', () => {
    const full = armFromShock(of, range, of.fullLength);
    const closed = armFromShock(of, range, of.closedLength);
    if (!full.ok || !closed.ok) throw new Error('The shock fits');
    expect(shockFromArm(of, range, full.angle + 0.01)).toMatchObject({
      reason: 'shockBeyondFull',
      limit: of.fullLength,
    });
    expect(shockFromArm(of, range, closed.angle - 0.01)).toMatchObject({
      reason: 'shockBelowClosed',
      limit: of.closedLength,
    });
  });
});

describe('a shock length is refused', () => {
  it('outside the shock’s own stroke', () => {
    const [of, range] = [madeLinks(rockerToFrame), madeRange(rockerToFrame)];
    expect(armFromShock(of, range, 299.1)).toMatchObject({
      reason: 'shockBeyondFull',
      found: 299.1,
      limit: 299,
    });
    expect(armFromShock(of, range, 238)).toMatchObject({ reason: 'shockBelowClosed' });
    expect(armFromShock(of, range, NaN)).toMatchObject({ reason: 'inputNotANumber' });
  });

  it('which the links cannot reach, with what ends their way and how far they go', () => {
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
