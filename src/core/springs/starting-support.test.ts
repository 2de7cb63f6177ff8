/** Tests of the figures with which springs and air begin. */
import { describe, expect, it } from 'vitest';
import { SPRUNG_BIKES } from '../../../tests/support/sprung-bikes.ts';
import { machine } from '../standing/machine.ts';
import { springForce } from './spring-law.ts';
import { sprungMachine } from './sprung-machine.ts';
import { startingSupport } from './starting-support.ts';

describe.each(SPRUNG_BIKES.map((sprung, i) => [i, sprung] as const))('on bike %i', (_, { bike, setup }) => {
  const standing = (of: 'fork' | 'shock', kind: Parameters<typeof startingSupport>[0]) => {
    const { support, pressure } = startingSupport(kind, of, bike, setup);
    const key = of === 'fork' ? 'forkAirPressure' : 'shockAirPressure';
    const set = pressure === null ? setup : { ...setup, [key]: pressure };
    const made = machine({ ...bike, [of]: { ...bike[of], support } }, set);
    const sprung = made.ok ? sprungMachine(made) : made;
    if (!sprung.ok) throw new Error(sprung.reason);
    return of === 'fork' ? sprung.fork : sprung.shock;
  };

  it.each(['oneRate', 'inSeries', 'twoRates', 'table', 'none'] as const)(
    '%s begins with figures that work',
    (kind) => {
      for (const of of ['fork', 'shock'] as const)
        expect(springForce(standing(of, kind), 40)).toBeGreaterThan(0);
    },
  );

  it('a table and air alone hold at a third of the stroke about what the spring held', () => {
    for (const of of ['fork', 'shock'] as const) {
      const spring = standing(of, 'oneRate');
      const at = spring.stroke / 3;
      const held = springForce(spring, at);
      for (const kind of ['table', 'none'] as const)
        expect(Math.abs(springForce(standing(of, kind), at) / held - 1)).toBeLessThan(0.05);
    }
  });
});
