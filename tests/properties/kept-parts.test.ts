/** Tests of the parts that a machine keeps from the setup before. */
import { describe, expect, it } from 'vitest';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { ADJUSTERS } from '../../src/core/adjusters/all-adjusters.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { keptLaws, keptParts } from '../../src/core/plan/kept-parts.ts';
import type { Tyre } from '../../src/core/parts/tyre.ts';
import { sprungMachine } from '../../src/core/springs/sprung-machine.ts';
import { machine } from '../../src/core/standing/machine.ts';

/** Each adjuster turned a little, whatever its range. */
function turned(setup: Setup): Setup[] {
  const other: Tyre = { diameter: 641 };
  return ADJUSTERS.map(({ key, holds }): Setup => {
    if (holds === 'tyre') return { ...setup, [key]: other };
    const now = setup[key];
    return { ...setup, [key]: typeof now === 'number' ? now + 1 : 112 };
  });
}

describe('a machine with parts kept from another setup', () => {
  it.each(DEMO_BIKES.map((demo) => [demo.bike.name, demo] as const))(
    'is the machine made anew, whichever adjuster turns: %s',
    (_, { bike, setup }) => {
      const [parts, laws] = [keptParts(), keptLaws()];
      for (const asked of turned(setup)) {
        const before = machine(bike, setup, parts);
        if (before.ok) sprungMachine(before, before.springs, before.brake, laws);
        const [kept, fresh] = [machine(bike, asked, parts), machine(structuredClone(bike), asked)];
        expect(kept).toEqual(fresh);
        if (kept.ok && fresh.ok)
          expect(sprungMachine(kept, kept.springs, kept.brake, laws)).toEqual(sprungMachine(fresh));
      }
    },
  );
});
