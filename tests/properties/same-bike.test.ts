/** One bike described in different ways reads the same: other axes, another scale, the other side. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import type { Bike } from '../../src/core/parts/bike.ts';
import type { FramePoint } from '../../src/core/parts/frame-point.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import type { Tyre } from '../../src/core/parts/tyre.ts';
import { rotate } from '../../src/core/plane/point.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { machine } from '../../src/core/standing/machine.ts';
import { stance, type Stance, type Travel } from '../../src/core/standing/stance.ts';
import { radians } from '../../src/core/units/convert.ts';
import { likelyBike, type RandomBike } from '../support/random-bikes.ts';
import { everyReading } from '../support/written.ts';

const RUNS = cases(300);

/** Readings agree to this part of themselves, or this much of mm, radians and g: a thousand roundings. */
const ROUNDING = 1e-9;

function stood(bike: Bike, setup: Setup, travel: Travel): Stance | null {
  const made = machine(bike, setup);
  const on = made.ok ? stance(made, travel) : made;
  return on.ok ? on : null;
}

/** About the slack from which on a chain counts as slack at all, mm. */
const isBarelySlack = (slack: number): boolean => slack > 1e-6 && slack < 1e-4;

/** Spare chain is what a search to 1e-6 mm of slack leaves, which is 1e-9 mm of a length in a metre of chain. */
const SEARCHED: Readonly<Partial<Record<string, number>>> = { spareLength: 1e-8, freeTravel: 1e-8 };

/**
 * Checks that bikes which stand as drawn also stand when described differently, each reading `factor(key)` times
 * itself. `but` names the readings of the part that is described differently.
 */
function describedAs(
  other: (drawn: RandomBike) => RandomBike,
  factor: (key: string) => number = () => 1,
  among: fc.Arbitrary<RandomBike> = likelyBike,
  but: readonly string[] = [],
): void {
  let compared = 0;
  fc.assert(
    fc.property(among, (drawn) => {
      // Slack below a hundred-thousandth of a millimetre counts as none, which can hold at one size and not at another.
      if (isBarelySlack(drawn.setup.chainSlack)) return;
      const before = stood(drawn.bike, drawn.setup, drawn.travel);
      if (before === null) return;
      const again = other(drawn);
      const after = stood(again.bike, again.setup, again.travel);
      if (after === null) throw new Error('stands no longer');
      const expected = everyReading(before);
      for (const [key, value] of everyReading(after)) {
        const was = expected.get(key);
        if (but.includes(key)) continue;
        if (typeof value === 'string' || typeof was !== 'number') expect(value, key).toBe(was);
        else {
          const off = Math.abs(value - was * factor(key));
          expect(off, key).toBeLessThan((SEARCHED[key] ?? ROUNDING) * Math.max(1, Math.abs(value)));
        }
      }
      compared++;
    }),
    { numRuns: RUNS },
  );
  expect(compared).toBeGreaterThan(RUNS / 2);
}

/** Every place of the frame sent elsewhere. */
function mapped(bike: Bike, to: (p: FramePoint) => FramePoint): Bike['frame'] {
  const { frame } = bike;
  return {
    ...frame,
    steeringHead: to(frame.steeringHead),
    countershaft: to(frame.countershaft),
    sprungCentre: to(frame.sprungCentre),
    seat: to(frame.seat),
    passengerSeat: to(frame.passengerSeat),
    tank: to(frame.tank),
    loadMark: to(frame.loadMark),
  };
}

describe('a bike described in other axes of the frame', () => {
  it.each([-20, -3, 0.5, 7, 30])('turned by %d° gives the same readings', (byDeg) => {
    describedAs(
      ({ bike, setup, travel }) => {
        const frame = mapped(bike, (p) => rotate(p, radians(byDeg)));
        const { swingarm } = bike;
        return {
          bike: {
            ...bike,
            frame: { ...frame, axisAngleDeg: frame.axisAngleDeg + byDeg },
            swingarm: {
              ...swingarm,
              toppedOutAngleDeg: swingarm.toppedOutAngleDeg + byDeg,
              tablePitchDeg: swingarm.tablePitchDeg - byDeg,
            },
          },
          setup,
          travel,
        };
      },
      () => 1,
      // How far the rider sits forward is counted along the frame's own x axis, so it alone turns with the axes.
      likelyBike.map((drawn) => ({ ...drawn, setup: { ...drawn.setup, riderForward: 0 } })),
    );
  });

  it('given from another origin and brought back to the pivot gives the same readings', () => {
    const origin = { x: -417.3, y: 288.1 };
    describedAs(({ bike, setup, travel }) => {
      const given = mapped(bike, (p) => ({ x: p.x - origin.x, y: p.y - origin.y }));
      const pivot = { x: -origin.x, y: -origin.y };
      const frame = mapped({ ...bike, frame: given }, (p) => ({ x: p.x - pivot.x, y: p.y - pivot.y }));
      return { bike: { ...bike, frame }, setup, travel };
    });
  });
});

describe('a bike built k times as large', () => {
  const scaledTyre = (tyre: Tyre, k: number, frontOrRear: number): Tyre => {
    if ('circumference' in tyre) return { circumference: tyre.circumference * k };
    return { diameter: 2 * frontOrRear * k };
  };

  const scaled = (drawn: RandomBike, k: number): RandomBike => {
    const { bike, setup, travel } = drawn;
    const made = machine(bike, setup);
    if (!made.ok) throw new Error(made.reason);
    const frame = mapped(bike, (p) => ({ x: k * p.x, y: k * p.y }));
    const { fork, swingarm } = bike;
    return {
      bike: {
        ...bike,
        frame: {
          ...frame,
          headTubeLength: k * frame.headTubeLength,
          guideRadius: frame.guideRadius === null ? null : k * frame.guideRadius,
          lowerGuideRadius: frame.lowerGuideRadius === null ? null : k * frame.lowerGuideRadius,
        },
        fork: {
          ...fork,
          length: k * fork.length,
          travel: k * fork.travel,
          axleLead: k * fork.axleLead,
          leastHeight: fork.leastHeight === null ? null : k * fork.leastHeight,
          lowerClampDepth: fork.lowerClampDepth === null ? null : k * fork.lowerClampDepth,
        },
        swingarm: {
          ...swingarm,
          length: k * swingarm.length,
          slot: k * swingarm.slot,
          wheelTravel: k * swingarm.wheelTravel,
          centreAlong: k * swingarm.centreAlong,
          centreAbove: k * swingarm.centreAbove,
          travelTable: swingarm.travelTable.map((row) => ({
            wheelTravel: k * row.wheelTravel,
            shockStroke: k * row.shockStroke,
          })),
        },
        drive: { ...bike.drive, chainPitch: k * bike.drive.chainPitch },
      },
      setup: {
        ...setup,
        forkTubes: k * setup.forkTubes,
        forkExtenders: k * setup.forkExtenders,
        shockLength: k * setup.shockLength,
        axlePosition: k * setup.axlePosition,
        chainSlack: k * setup.chainSlack,
        clampOffset: k * setup.clampOffset,
        shockMountShim: k * setup.shockMountShim,
        riderHeight: k * setup.riderHeight,
        riderForward: k * setup.riderForward,
        passengerHeight: k * setup.passengerHeight,
        loadHeight: k * setup.loadHeight,
        frontTyre: scaledTyre(setup.frontTyre, k, made.frontRadius),
        rearTyre: scaledTyre(setup.rearTyre, k, made.rearRadius),
      },
      travel: { front: k * travel.front, rear: k * travel.rear },
    };
  };

  it.each([0.5, 1.25, 2])('k = %d: lengths grow k times, angles, ratios and percentages stay', (k) => {
    const lengths = new Set(READINGS.filter((r) => r.quantity === 'length').map((r) => r.key));
    describedAs(
      (drawn) => scaled(drawn, k),
      (key) => (lengths.has(key) ? k : 1),
    );
  });
});

describe('ways of the workshop to the same place', () => {
  it('more tube above the clamp, a shorter fork, a shorter extender and used travel all let the front down alike', () => {
    const ways: ((drawn: RandomBike, by: number) => RandomBike)[] = [
      (d, by) => ({ ...d, setup: { ...d.setup, forkTubes: d.setup.forkTubes + by } }),
      (d, by) => ({ ...d, setup: { ...d.setup, forkExtenders: d.setup.forkExtenders - by } }),
      (d, by) => ({ ...d, bike: { ...d.bike, fork: { ...d.bike.fork, length: d.bike.fork.length - by } } }),
    ];
    const ofTheFork = ['frontTravel', 'frontTravelLeft', 'tyreToClampGap', 'forkTubeSpare'];
    for (const way of ways)
      describedAs(
        ({ bike, setup, travel }) => {
          const back = Math.min(5, travel.front);
          return way({ bike, setup, travel: { ...travel, front: travel.front - back } }, back);
        },
        () => 1,
        likelyBike,
        ofTheFork,
      );
  });

  it('triple-clamp offset and axle lead count alike when the legs lie along the axis', () => {
    describedAs(
      ({ bike, setup, travel }) => ({
        bike: { ...bike, fork: { ...bike.fork, axleLead: bike.fork.axleLead + 4 } },
        setup: { ...setup, clampOffset: setup.clampOffset - 4 },
        travel,
      }),
      () => 1,
      likelyBike.map((d) => ({ ...d, bike: { ...d.bike, fork: { ...d.bike.fork, legAngleDeg: 0 } } })),
    );
  });

  it('tyres grown alike at both ends raise the bike and turn nothing', () => {
    let compared = 0;
    fc.assert(
      fc.property(likelyBike, fc.double({ min: 0.5, max: 20, noNaN: true }), (drawn, by) => {
        const before = stood(drawn.bike, drawn.setup, drawn.travel);
        if (before === null) return;
        const frontTyre = { diameter: 2 * (before.machine.frontRadius + by) };
        const rearTyre = { diameter: 2 * (before.machine.rearRadius + by) };
        const after = stood(drawn.bike, { ...drawn.setup, frontTyre, rearTyre }, drawn.travel);
        if (after === null) throw new Error('stands no longer');
        expect(Math.abs(after.rake - before.rake)).toBeLessThan(ROUNDING);
        expect(Math.abs(after.swingarmAngle - before.swingarmAngle)).toBeLessThan(ROUNDING);
        expect(Math.abs(after.pose.wheelbase - before.pose.wheelbase)).toBeLessThan(ROUNDING * 1500);
        expect(Math.abs(after.pose.pivot.y - before.pose.pivot.y - by)).toBeLessThan(ROUNDING * 500);
        compared++;
      }),
      { numRuns: RUNS },
    );
    expect(compared).toBeGreaterThan(RUNS / 2);
  });
});
