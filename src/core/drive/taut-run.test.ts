/** Tests of taut runs as the loop that two of them make: against the chain path, and turned upside down. */
import { describe, expect, it } from 'vitest';
import { chainLoop } from './chain-loop.ts';
import { chainPath } from './chain-path.ts';
import { tightestLoop } from '../../../tests/support/tightest-loop.ts';

const loop = chainLoop(15, 45, 15.875);
const rear = { x: -560, y: -90 };
const front = { x: 80, y: 5 };
const centre = { x: 0, y: 0 };

describe('the shortest loop', () => {
  it('is that of the chain path, free and over the upper guide', () => {
    for (const upper of [null, 20, 60, 90]) {
      const path = chainPath(loop, rear, front, { centre, upper, lower: null });
      expect(path?.onGuide ?? false).toBe(upper === 60 || upper === 90);
      expect(tightestLoop(loop, rear, front, { centre, upper, lower: null })).toBeCloseTo(
        path?.links ?? NaN,
        10,
      );
    }
  });

  it('turned upside down has the guide below, and both guides add what each adds', () => {
    const flip = ({ x, y }: { x: number; y: number }) => ({ x, y: -y });
    const length = (upper: number | null, lower: number | null): number =>
      tightestLoop(loop, rear, front, { centre, upper, lower }) ?? NaN;
    const turned = tightestLoop(loop, flip(rear), flip(front), { centre, upper: 90, lower: null });
    expect(length(null, 90)).toBeCloseTo(turned ?? NaN, 10);
    const free = length(null, null);
    expect(length(60, null)).toBeGreaterThan(free);
    expect(length(null, 90)).toBeGreaterThan(free);
    expect(length(60, 90) - free).toBeCloseTo(length(60, null) - free + (length(null, 90) - free), 10);
  });

  it('is not there where the sprockets overlap or one covers the guide', () => {
    expect(tightestLoop(loop, rear, { x: -500, y: -90 }, { centre, upper: null, lower: null })).toBeNull();
    expect(tightestLoop(loop, rear, front, { centre, upper: 200, lower: null })).toBeNull();
  });
});
