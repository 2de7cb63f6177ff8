/** Holds that links get a shock that hangs the arm where it is wanted, or none. */
import { describe, expect, it } from 'vitest';
import type { LinkLayout } from '../../src/core/parts/rear-layout.ts';
import { degrees, radians } from '../../src/core/units/convert.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { AS_DELIVERED } from '../../src/core/linkage/link-adjustments.ts';
import { hangShock } from '../../src/core/linkage/hang-shock.ts';
import { suspension } from '../../src/core/linkage/suspension.ts';

/** Arm's line while it hangs, degrees below the frame's x axis. */
function hangingDeg(layout: LinkLayout, shockLength: number): number {
  const made = suspension(layout, 555, { ...AS_DELIVERED, shockLength });
  if (!made.ok) throw new Error(made.reason);
  return degrees(Math.asin(made.toppedOutSine) - made.framePitch);
}

describe('a shock for a wanted hang of the arm', () => {
  it.each(DEMO_BIKES.filter(({ bike }) => bike.swingarm.links !== null))(
    'hangs it there on $bike.name, wherever the links let it',
    ({ bike: { swingarm } }) => {
      if (swingarm.links === null) throw new Error('no links');
      let hung = 0;
      for (let wanted = -10; wanted <= 40; wanted += 0.5)
        for (const shockLength of [-5, 0, 16.5]) {
          const found = hangShock(swingarm.links, radians(wanted), shockLength);
          if ('ok' in found) continue;
          expect(hangingDeg(found, shockLength)).toBeCloseTo(wanted, 7);
          hung++;
        }
      expect(hung).toBeGreaterThan(60);
    },
  );

  it('is refused beyond a dead point, where the arm would hang at another angle', () => {
    const { links } = DEMO_BIKES[1].bike.swingarm;
    if (links === null) throw new Error('no links');
    const found = hangShock(links, radians(24), 0);
    expect(found).toMatchObject({ ok: false, reason: 'armBeyondLinks' });
  });
});
