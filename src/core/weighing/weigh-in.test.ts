/** Tests of the centre of gravity from a weigh-in. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { weighIn, type Measured, type WeighIn } from './weigh-in.ts';

interface Real {
  readonly wheelbase: number;
  readonly frontRadius: number;
  readonly rearRadius: number;
  readonly mass: number;
  readonly x: number;
  readonly y: number;
}

const exactly = (value: number, uncertainty = 0): Measured => ({ value, uncertainty });

/**
 * What the front scale shows when the bike is turned nose up by `turn` about the rear axle: the centre and the front
 * axle are turned as points, and the patches lie straight below the axles.
 */
function frontReading({ wheelbase, frontRadius, rearRadius, mass, x, y }: Real, turn: number): number {
  const turnedX = (px: number, py: number): number => Math.cos(turn) * px - Math.sin(turn) * py;
  return (mass * turnedX(x, y - rearRadius)) / turnedX(wheelbase, frontRadius - rearRadius);
}

/** The weigh-in of a bike with this centre, made by turning it, without the formula under test. */
function weighed(
  real: Real,
  how: Pick<WeighIn, 'first' | 'raised' | 'read'>,
  turnDeg: number,
  uncertainty: number = 0,
): WeighIn {
  const rise = real.frontRadius - real.rearRadius;
  const apart = Math.hypot(real.wheelbase, rise);
  const line = Math.atan2(rise, real.wheelbase);
  const firstTurn = how.first === 'axlesLevel' ? -line : 0;
  const secondTurn = firstTurn + (turnDeg * Math.PI * (how.raised === 'front' ? 1 : -1)) / 180;
  const front = frontReading(real, firstTurn);
  const then = frontReading(real, secondTurn);
  const lift = Math.abs(apart * (Math.sin(line + secondTurn) - Math.sin(line + firstTurn)));
  return {
    wheelbase: exactly(real.wheelbase, uncertainty),
    frontRadius: exactly(real.frontRadius, uncertainty),
    rearRadius: exactly(real.rearRadius, uncertainty),
    front: exactly(front, uncertainty / 10),
    rear: exactly(real.mass - front, uncertainty / 10),
    ...how,
    lift: exactly(lift, uncertainty),
    raisedReading: exactly(how.read === 'front' ? then : real.mass - then, uncertainty / 10),
  };
}

const real: Real = { wheelbase: 1400, frontRadius: 300, rearRadius: 320, mass: 200, x: 690, y: 560 };
const usual = { first: 'wheelsLevel', raised: 'rear', read: 'front' } as const;

describe('a weigh-in', () => {
  it('gives back the centre it was made from, whichever axle is raised or read, on unequal wheels', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          wheelbase: between(1200, 1700),
          frontRadius: between(250, 360),
          rearRadius: between(250, 360),
          mass: between(80, 350),
          x: between(500, 800),
          y: between(400, 700),
        }),
        fc.record({
          first: fc.constantFrom('wheelsLevel' as const, 'axlesLevel' as const),
          raised: fc.constantFrom('front' as const, 'rear' as const),
          read: fc.constantFrom('front' as const, 'rear' as const),
        }),
        between(3, 20),
        (bike, how, turnDeg) => {
          const found = weighIn(weighed(bike, how, turnDeg));
          if (!found.ok) throw new Error(JSON.stringify(found));
          expect(found.mass).toBeCloseTo(bike.mass, 9);
          expect(found.x).toBeCloseTo(bike.x, 7);
          expect(found.y).toBeCloseTo(bike.y, 7);
        },
      ),
      { numRuns: cases(1000) },
    );
  });

  it('would be wrong by more than a millimetre were the radii taken as equal', () => {
    const tall: Real = { ...real, frontRadius: 350, rearRadius: 310 };
    const given = weighed(tall, usual, 10);
    const equal = weighIn({ ...given, frontRadius: exactly(330), rearRadius: exactly(330) });
    if (!equal.ok) throw new Error(JSON.stringify(equal));
    expect(Math.abs(equal.y - tall.y)).toBeGreaterThan(1);
  });

  it('carries the uncertainty of scale and lift as many repeated weighings scatter', () => {
    const given = weighed(real, usual, 10, 1);
    const found = weighIn(given);
    if (!found.ok) throw new Error(JSON.stringify(found));
    // A fixed stream of normal numbers: sums of twelve even ones (mulberry32).
    let state = 1;
    const even = (): number => {
      state = (state + 0x6d2b79f5) | 0;
      let t = Math.imul(state ^ (state >>> 15), 1 | state);
      t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
      return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
    };
    const normal = (): number => Array.from({ length: 12 }, even).reduce((a, b) => a + b, -6);
    const shaken = ({ value, uncertainty }: Measured): Measured => exactly(value + uncertainty * normal());
    const centres: { mass: number; x: number; y: number }[] = [];
    for (let i = 0; i < 20000; i++) {
      const again = weighIn({
        ...given,
        wheelbase: shaken(given.wheelbase),
        frontRadius: shaken(given.frontRadius),
        rearRadius: shaken(given.rearRadius),
        front: shaken(given.front),
        rear: shaken(given.rear),
        lift: shaken(given.lift),
        raisedReading: shaken(given.raisedReading),
      });
      if (again.ok) centres.push(again);
    }
    expect(centres).toHaveLength(20000);
    const mean = (of: (c: (typeof centres)[0]) => number): number =>
      centres.reduce((sum, c) => sum + of(c), 0) / centres.length;
    const [mx, my] = [mean((c) => c.x), mean((c) => c.y)];
    expect(Math.sqrt(mean((c) => (c.x - mx) ** 2)) / found.xUncertainty).toBeCloseTo(1, 1);
    expect(Math.sqrt(mean((c) => (c.y - my) ** 2)) / found.yUncertainty).toBeCloseTo(1, 1);
    const scattered = mean((c) => (c.x - mx) * (c.y - my)) / (found.xUncertainty * found.yUncertainty);
    expect(scattered).toBeCloseTo(found.covariance[1][2] / (found.xUncertainty * found.yUncertainty), 1);
    expect(found.massUncertainty).toBeCloseTo(0.1 * Math.SQRT2, 9);
  });

  it('knows the height better the higher the axle is raised', () => {
    const low = weighIn(weighed(real, usual, 4, 1));
    const high = weighIn(weighed(real, usual, 16, 1));
    if (!low.ok || !high.ok) throw new Error('no centre');
    expect(high.yUncertainty).toBeLessThan(low.yUncertainty / 3);
  });
});

describe('a weigh-in is refused', () => {
  const given = weighed(real, usual, 10, 1);
  const refusal = (change: Partial<WeighIn>) => weighIn({ ...given, ...change });

  it.each([
    [{ front: exactly(-1) }, 'massNegative'],
    [{ front: exactly(0), rear: exactly(0), raisedReading: exactly(0) }, 'noMass'],
    [{ raisedReading: exactly(500) }, 'readingBeyondMass'],
    [{ wheelbase: exactly(-5) }, 'axlesTooClose'],
    [{ lift: exactly(1500) }, 'liftImpossible'],
    [{ lift: exactly(0.5) }, 'liftImpossible'],
    [{ lift: exactly(200, -1) }, 'uncertaintyNegative'],
    [{ lift: exactly(NaN) }, 'inputNotANumber'],
    [{ rear: exactly(100, Infinity) }, 'inputNotANumber'],
  ] as const)('with %j', (change, reason) => {
    expect(refusal(change)).toMatchObject({ ok: false, reason });
  });
});
