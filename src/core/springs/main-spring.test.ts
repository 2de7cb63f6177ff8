/** Tests of springs of two stages and of force tables. */
import { describe, expect, it } from 'vitest';
import type { MainSpring } from '../parts/support.ts';
import type { MainSupport } from '../standing/spring-set.ts';
import { changeoverStroke, mainForce, mainRate, mainSpring, type MadeSpring } from './main-spring.ts';

function made(spring: MainSpring, over: Partial<MainSupport> = {}, count = 1): MadeSpring {
  const support: MainSupport = { rate: 10, preload: 5, springTravel: null, air: null, spring, ...over };
  const result = mainSpring(support, count, 'front');
  if (result === null || !result.ok) throw new Error(JSON.stringify(result));
  return result;
}

const series = (firstCloses: number | null, otherCloses: number | null): MainSpring => ({
  kind: 'inSeries',
  otherRate: 40,
  firstCloses,
  otherCloses,
});

describe('two springs in series', () => {
  it('act as k1·k2/(k1 + k2) until the one that closes at the smaller force is closed, then as the other', () => {
    // 10 and 40 N/mm make 8. The first closes at 300 N, the other at 800 N: pressed 30 + 7.5 = 37.5 mm by then.
    const { spring, closesAt } = made(series(30, 20));
    expect(mainForce(spring, 15)).toBeCloseTo(8 * 20, 12);
    expect(mainForce(spring, 32.5)).toBeCloseTo(300, 12);
    expect(mainForce(spring, 40)).toBeCloseTo(300 + 40 * 7.5, 12);
    expect([mainRate(spring, 32), mainRate(spring, 33)]).toEqual([8, 40]);
    expect(changeoverStroke(spring)).toBeCloseTo(32.5, 12);
    expect(closesAt).toBe(50);
  });

  it('leave the softer one working where the stiffer one closes first', () => {
    const { spring } = made(series(30, 5));
    expect(changeoverStroke(spring)).toBeCloseTo(200 / 8 - 5, 12);
    expect(mainRate(spring, 25)).toBe(10);
  });

  it('never change over while nobody knows where either closes', () => {
    const { spring, closesAt } = made(series(null, null));
    expect(changeoverStroke(spring)).toBeNull();
    expect(mainForce(spring, 95)).toBeCloseTo(800, 12);
    expect(closesAt).toBe(Infinity);
  });
});

describe('one spring wound with two rates', () => {
  const wound: MainSpring = { kind: 'twoRates', secondRate: 14, changeover: 60 };

  it('has each of them as printed, from its changeover on', () => {
    const { spring } = made(wound, {}, 2);
    expect(mainForce(spring, 35)).toBe(2 * 10 * 40);
    expect(mainForce(spring, 75)).toBe(2 * (10 * 60 + 14 * 20));
    expect([mainRate(spring, 54), mainRate(spring, 55)]).toEqual([20, 28]);
    expect(changeoverStroke(spring)).toBe(55);
  });

  it('has passed its changeover where preload lies beyond it', () => {
    const { spring } = made(wound, { preload: 70 });
    expect(changeoverStroke(spring)).toBe(-10);
    expect(mainRate(spring, 0)).toBe(14);
    expect(mainForce(spring, 0)).toBe(10 * 60 + 14 * 10);
  });
});

describe('a force table', () => {
  const rows = [
    { pressed: 0, force: 0 },
    { pressed: 20, force: 150 },
    { pressed: 50, force: 480 },
    { pressed: 90, force: 1100 },
  ];

  it('goes through its rows, goes on straight beyond the last, and presses nothing while loose', () => {
    const { spring } = made({ kind: 'table', rows }, { preload: 0 });
    for (const { pressed, force } of rows) expect(mainForce(spring, pressed)).toBeCloseTo(force, 9);
    const slope = mainRate(spring, 90);
    expect(mainForce(spring, 110)).toBeCloseTo(1100 + 20 * slope, 9);
    expect(mainForce(spring, -3)).toBe(0);
    expect(mainRate(spring, -3)).toBe(0);
  });

  it('keeps the end as flat as its rows have it, unlike a table of travel', () => {
    const flat = [
      { pressed: 0, force: 0 },
      { pressed: 10, force: 1 },
      { pressed: 20, force: 40 },
    ];
    const { spring } = made({ kind: 'table', rows: flat }, { preload: 0 });
    expect(mainRate(spring, 0)).toBe(0);
  });
});

describe('main springs are refused', () => {
  it.each([
    [{ kind: 'twoRates', secondRate: 0, changeover: 5 }, 'rateNotAboveZero', 0],
    [{ kind: 'twoRates', secondRate: 9, changeover: -1 }, 'stageImpossible', -1],
    [{ kind: 'inSeries', otherRate: -4, firstCloses: null, otherCloses: null }, 'rateNotAboveZero', -4],
    [{ kind: 'inSeries', otherRate: 4, firstCloses: 0, otherCloses: null }, 'stageImpossible', 0],
    [{ kind: 'table', rows: [{ pressed: 0, force: 0 }] }, 'forceTableTooShort', 1],
    [
      {
        kind: 'table',
        rows: [
          { pressed: 1, force: 0 },
          { pressed: 5, force: 9 },
        ],
      },
      'forceTableNotFromZero',
      1,
    ],
    [
      {
        kind: 'table',
        rows: [
          { pressed: 0, force: 0 },
          { pressed: 5, force: 9 },
          { pressed: 9, force: 9 },
        ],
      },
      'forceTableFalls',
      3,
    ],
  ] as const)('with %j', (spring, reason, found) => {
    const support: MainSupport = { rate: 10, preload: 5, springTravel: null, air: null, spring };
    expect(mainSpring(support, 1, 'rear')).toMatchObject({ ok: false, reason, found, end: 'rear' });
  });
});
