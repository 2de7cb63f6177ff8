/** Tests of standing two wheels on the ground. */
import { describe, expect, it } from 'vitest';
import { inFrame, onGround, poseOnGround } from './pose.ts';

describe('a pose', () => {
  it('of level axles on equal wheels leaves the frame as described, its origin over the patch', () => {
    expect(poseOnGround(-500, -100, 900, -100, 320, 320)).toEqual({
      ok: true,
      pitch: 0,
      cos: 1,
      sin: 0,
      pivot: { x: 500, y: 420 },
      wheelbase: 1400,
    });
  });

  it('tips nose down on a smaller front wheel and nose up on a larger', () => {
    const small = poseOnGround(0, 0, 1400, 0, 320, 300);
    const large = poseOnGround(0, 0, 1400, 0, 300, 320);
    if (!small.ok || !large.ok) throw new Error('no pose');
    expect(small.pitch).toBeLessThan(0);
    expect(large.pitch).toBeCloseTo(-small.pitch, 14);
  });

  it('has sine and cosine of its pitch', () => {
    const pose = poseOnGround(0, 0, 1400, 80, 320, 300);
    if (!pose.ok) throw new Error(pose.reason);
    expect(pose.sin).toBe(Math.sin(pose.pitch));
    expect(pose.cos).toBe(Math.cos(pose.pitch));
  });

  it('is refused when the axles are closer than the radii differ', () => {
    expect(poseOnGround(0, 0, 15, 0, 320, 300)).toEqual({
      ok: false,
      reason: 'axlesTooClose',
      found: 15,
      limit: 20,
    });
    expect(poseOnGround(0, 0, 20, 0, 320, 300).ok).toBe(false);
    expect(poseOnGround(3, 3, 3, 3, 300, 300)).toMatchObject({ reason: 'axlesTooClose' });
  });

  it('is refused when the frame would stand on its head', () => {
    expect(poseOnGround(0, 0, -1400, 0, 300, 300)).toMatchObject({ reason: 'upsideDown' });
    expect(poseOnGround(0, 0, 10, 1400, 300, 300)).toMatchObject({ reason: 'upsideDown' });
  });
});

it('from frame to ground is a turn by the pitch about the pivot, and back is the same place', () => {
  const pose = poseOnGround(-500, -90, 900, -100, 320, 300);
  if (!pose.ok) throw new Error('no pose');
  expect(onGround(pose, { x: 0, y: 0 })).toEqual(pose.pivot);
  const ahead = onGround(pose, { x: 100, y: 0 });
  expect(Math.atan2(ahead.y - pose.pivot.y, ahead.x - pose.pivot.x)).toBeCloseTo(pose.pitch, 12);
  const above = onGround(pose, { x: 0, y: 100 });
  expect(Math.atan2(above.y - pose.pivot.y, above.x - pose.pivot.x)).toBeCloseTo(
    pose.pitch + Math.PI / 2,
    12,
  );
  for (const p of [
    { x: 520, y: 530 },
    { x: -300, y: 12.5 },
  ]) {
    const back = inFrame(pose, onGround(pose, p));
    expect(back.x).toBeCloseTo(p.x, 10);
    expect(back.y).toBeCloseTo(p.y, 10);
  }
});
