/** Tests of the parts that a machine keeps from the setup before. */
import { describe, expect, it } from 'vitest';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { ADJUSTERS } from '../../src/core/adjusters/all-adjusters.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { keptLaws, keptMachine, keptParts, SPRING_KEYS } from '../../src/core/plan/kept-parts.ts';
import { standQuickly } from '../../src/core/plan/stand-quickly.ts';
import type { Tyre } from '../../src/core/parts/tyre.ts';
import { standBike } from '../../src/core/riding/stand-bike.ts';
import { loadCase } from '../../src/core/riding/states/all-ride-states.ts';
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

/** What a thread of a search stands: the machine it keeps while springs alone turn, with its springs put in. */
function standWith(of: ReturnType<typeof keptMachine>, laws: ReturnType<typeof keptLaws>, setup: Setup) {
  const kept = of(setup);
  if (!kept.ok) return kept;
  const sprung = sprungMachine(kept.machine, kept.springs, kept.machine.brake, laws);
  return standQuickly(kept.machine, loadCase('riderUp', setup), sprung);
}

describe('a machine kept while springs alone turn', () => {
  const TURNED = ADJUSTERS.filter(({ kind, holds }) => kind === 'part' && holds === 'number').map(
    ({ key }) => key,
  );

  it.each(DEMO_BIKES.map((demo) => [demo.bike.name, demo] as const))(
    'stands to the last digit as one made anew: %s',
    (_, { bike, setup }) => {
      const [of, laws] = [keptMachine(bike, TURNED), keptLaws()];
      let stood = 0;
      for (const other of TURNED)
        for (const spring of [null, ...SPRING_KEYS]) {
          const bent = { ...setup, [other]: Number(setup[other]) + 1 };
          const asked = spring === null ? bent : { ...bent, [spring]: Number(bent[spring]) + 1 };
          const [now, anew] = [standWith(of, laws, asked), standBike(bike, asked, 'riderUp')];
          expect(now.ok).toBe(anew.ok);
          if (!now.ok || !anew.ok) continue;
          stood += 1;
          const { sprung: _, machine: __, equilibrium: ours, ...numbers } = now;
          const { sprung: ___, machine: ____, equilibrium: theirs, ...same } = anew;
          expect(numbers).toEqual(same);
          expect([ours?.front, ours?.rear, ours?.loads]).toEqual([
            theirs?.front,
            theirs?.rear,
            theirs?.loads,
          ]);
        }
      expect(stood).toBeGreaterThan(TURNED.length);
    },
  );
});

describe('a machine with parts kept from another setup', () => {
  it.each(DEMO_BIKES.map((demo) => [demo.bike.name, demo] as const))(
    'is the machine made anew, whichever adjuster turns: %s',
    (_, { bike, setup }) => {
      const [parts, laws] = [keptParts(ADJUSTERS.map(({ key }) => key)), keptLaws()];
      for (const asked of turned(setup)) {
        const before = machine(bike, setup, parts);
        if (before.ok) sprungMachine(before, before.springs, before.brake, laws);
        const [kept, fresh] = [machine(bike, asked, parts), machine(structuredClone(bike), asked)];
        expect(kept).toEqual(fresh);
        if (kept.ok && fresh.ok) {
          const [one, other] = [sprungMachine(kept, kept.springs, kept.brake, laws), sprungMachine(fresh)];
          // One of them gives back stances that it has made before.
          expect({ ...one, standAt: null }).toEqual({ ...other, standAt: null });
        }
      }
    },
  );
});
