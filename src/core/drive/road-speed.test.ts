/** Tests of road speed from engine speed. */
import { expect, it } from 'vitest';
import { engineSpeedChange, speedPerThousand } from './road-speed.ts';

const gearing = { primaryRatio: 1.6, gearboxRatio: 1.25, finalDriveRatio: 3, circumference: 2000 };

it('at 1000 turns a minute is what the wheel rolls in an hour of its own turns', () => {
  // 1000 turns of the crank are 1000/6 of the wheel, 2 m each: 333.33 m a minute, 20 km/h.
  expect(speedPerThousand(gearing)).toEqual({ ok: true, value: 20 });
});

it('is refused where a number is missing', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    for (const key of ['primaryRatio', 'gearboxRatio', 'finalDriveRatio', 'circumference'] as const)
      expect(speedPerThousand({ ...gearing, [key]: bad })).toEqual({
        ok: false,
        reason: 'gearingImpossible',
      });
  }
});

it('one tooth more behind turns the engine faster by that part, a bigger tyre slower', () => {
  const before = { finalDriveRatio: 45 / 15, circumference: 2000 };
  expect(engineSpeedChange(before, { finalDriveRatio: 46 / 15, circumference: 2000 })).toBeCloseTo(2.2222, 4);
  expect(engineSpeedChange(before, { finalDriveRatio: 3, circumference: 2020 })).toBeCloseTo(-0.990099, 6);
  expect(engineSpeedChange(before, before)).toBe(0);
});
