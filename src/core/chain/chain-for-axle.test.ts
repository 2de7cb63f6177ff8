/** Tests of the chain that an axle place needs. */
import { describe, expect, it } from 'vitest';
import { chainsThatFit } from '../../../tests/support/chains-that-fit.ts';
import { made } from '../../../tests/support/standing.ts';
import { chainLoop } from '../drive/chain-loop.ts';
import { axleForChain, type AxleSlot } from '../standing/axle-in-slot.ts';
import { chainAt } from '../standing/chain-in-frame.ts';
import { chainForAxle } from './chain-for-axle.ts';

const loop = chainLoop(15, 45, 15.875);
const slot: AxleSlot = { slot: 30, slack: 0, rearTravel: 0, rule: { halfLink: false } };

describe('a chain for a given axle place', () => {
  it('is given exactly, and as the whole chains next to it, nearer one first', () => {
    const found = chainForAxle(made(), loop, slot, 12);
    if (!found.ok) throw new Error(found.reason);
    const path = chainAt(made(), loop, 0, 12);
    expect('links' in path && path.links).toBeCloseTo(found.exactLinks, 12);
    expect(found.choices.map((c) => c.links % 2)).toEqual([0, 0]);
    const [near, far] = found.choices.map((c) => Math.abs((c.axlePosition ?? NaN) - 12));
    expect(near).toBeLessThan(far);
  });

  it('of a place that a whole chain gives is that chain, at the same place', () => {
    const [links] = chainsThatFit(made(), loop, slot) as number[];
    const place = axleForChain(made(), loop, slot, links);
    if (!place.ok) throw new Error(place.reason);
    const again = chainForAxle(made(), loop, slot, place.axlePosition);
    if (!again.ok) throw new Error(again.reason);
    expect(again.choices).toHaveLength(1);
    expect(again.choices[0]).toMatchObject({ ok: true, links });
  });

  it('is none with slack that no run can have', () => {
    for (const slack of [NaN, 900])
      expect(chainForAxle(made(), loop, { ...slot, slack }, 12)).toMatchObject({ reason: 'slackImpossible' });
  });
});
