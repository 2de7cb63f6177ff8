/** Holds what is said to be unsure about a measured bike: its points, its curves, and its readings among bikes drawn by lot. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { asked, CHASSIS, originOn, trueValues, typedRows } from '../support/measured-sheet.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { normalNumbers } from '../../src/core/numeric/normal-numbers.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { drawnRange } from '../../src/core/measure/spread/drawn-bikes.ts';
import type { Setup } from '../../src/core/adjusters/setup.ts';
import { buildBike } from '../../src/core/measure/held/build-bike.ts';
import { postureOf } from '../../src/core/measure/held/hold-bike.ts';
import type { StartingBike } from '../../src/core/measure/held/starting-bike.ts';
import { changeSpreads } from '../../src/core/measure/spread/measured-change.ts';
import { SPRING_DOUBT } from '../../src/core/measure/spread/spring-doubt.ts';
import { metricReading } from '../../src/core/readings/metric-reading.ts';
import type { RideStateKey } from '../../src/core/riding/states/all-ride-states.ts';
import { groundClearance } from '../../src/core/readings/ground-clearance.ts';
import { lowestUpright } from '../../src/core/standing/touch-height.ts';
import { standBike, type StandingBike } from '../../src/core/riding/stand-bike.ts';
import { fitSheet } from '../../src/core/measure/fit-sheet.ts';
import type { Fit } from '../../src/core/measure/fit-values.ts';
import { measuredBand } from '../../src/core/measure/spread/measured-band.ts';
import { measuredPlaces } from '../../src/core/measure/spread/measured-places.ts';
import { measuredReadings, readValues } from '../../src/core/measure/measured-readings.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';

const [start] = DEMO_BIKES;
const origin = originOn(start);
const truth = trueValues(origin, 3, 3);

/** The bike with springs so much stiffer at each end, preloaded so that it rests on its wheels as it was built. */
function restedAs(built: StartingBike, setup: Setup, front: number, rear: number): StartingBike {
  const { frontTravelUsed, rearTravelUsed, frontTyre, rearTyre } = built.setup;
  let now: Setup = {
    ...setup,
    ...{ frontTravelUsed, rearTravelUsed, frontTyre, rearTyre },
    forkSpringRate: setup.forkSpringRate * front,
    shockSpringRate: setup.shockSpringRate * rear,
  };
  for (let round = 0; round < 40; round++) {
    const rested = standBike(built.bike, now, 'noRider');
    if (!rested.ok) throw new Error(rested.reason);
    const { travel } = rested;
    now = {
      ...now,
      forkPreload: now.forkPreload + 0.7 * (travel.front - frontTravelUsed),
      shockPreload: now.shockPreload + 0.25 * (travel.rear - rearTravelUsed),
    };
  }
  return { bike: built.bike, setup: now };
}

function fitOf(rows: readonly MeasureRow[]): Fit {
  const fitted = fitSheet(start, { gaugeZeroed: true, rows: typedRows(origin, rows, truth) });
  if (!fitted.ok) throw new Error(fitted.reason);
  return fitted.fit;
}

const fit = fitOf(CHASSIS);

function standAsBuilt(): StandingBike {
  const built = buildBike(postureOf(origin, truth));
  const stood = built === null ? null : standBike(built.bike, built.setup, 'travelByHand');
  if (stood?.ok !== true) throw new Error('the bike cannot be built');
  return stood;
}

describe('the points of a measured bike', () => {
  it('stand as surely as the readings they make: the front axle along as the wheelbase', () => {
    const places = measuredPlaces(fit);
    const front = places.find(({ key }) => key === 'frontAxle');
    expect(Math.sqrt(front?.along ?? NaN)).toBeCloseTo(measuredReadings(fit)?.wheelbase.u ?? NaN, 6);
    const rear = places.find(({ key }) => key === 'rearAxle');
    expect(rear?.along).toBeCloseTo(0, 9);
    for (const { along, up, both } of places) expect(both ** 2).toBeLessThanOrEqual(along * up + 1e-9);
  });

  it('that no row has reached are left out', () => {
    const keys = measuredPlaces(fitOf(CHASSIS.slice(0, 5))).map(({ key }) => key);
    expect(keys).toContain('frontAxle');
    expect(keys).not.toContain('steeringHead');
    expect(keys).not.toContain('seat');
  });
});

describe('what may touch the ground', () => {
  const clearance = (rows: readonly MeasureRow[]) => measuredReadings(fitOf(rows))?.groundClearance;
  const lowest = lowestUpright(standAsBuilt())?.key ?? 'footrest';

  it('has no ± until it is measured, and then about that of its height over the floor', () => {
    expect(clearance(CHASSIS)?.fixed).toBe(false);
    const height = { ...asked('height', [lowest]), sd: 1.5 };
    const found = clearance([...CHASSIS, height]);
    expect(found?.u).toBeGreaterThan(1);
    expect(found?.u).toBeLessThan(1.51);
  });

  it('is found where it was measured, and has its place on the side view', () => {
    const rows = [asked('height', [lowest]), asked('horizontal', ['rearAxle', lowest])];
    const measuredFit = fitOf([...CHASSIS, ...rows]);
    const place = measuredPlaces(measuredFit).find(({ key }) => key === lowest);
    expect(Math.sqrt(place?.up ?? NaN)).toBeGreaterThan(0.5);
    const [found, truly] = [measuredFit.values, truth].map(
      (values) => readValues(origin, values, [groundClearance])?.[0] ?? NaN,
    );
    expect(found).toBeCloseTo(truly, 6);
  });
});

describe('a curve of a measured bike', () => {
  const along = (rows: Fit, reading: string) =>
    measuredBand(rows, {
      start,
      reading,
      ride: 'riderUp',
      places: [0, 40, 80].map((rear) => ({ setup: start.setup, travel: { front: 20, rear } })),
    });

  it('has a ± at each travel, and none where it hangs on what no row fixes', () => {
    for (const u of along(fit, 'trail')) expect(u).toBeGreaterThan(0.5);
    expect(along(fit, 'antiSquat')).toEqual([null, null, null]);
    expect(along(fitOf(CHASSIS.slice(0, 19)), 'rake')).toEqual([null, null, null]);
  });

  it('over an adjuster is less sure where springs carry the bike, and the springs themselves are not fixed', () => {
    const places = [{ setup: start.setup, travel: null }];
    const at = (reading: string, ride: RideStateKey) =>
      measuredBand(fit, { start, reading, ride, places })[0];
    expect(at('rake', 'toppedOut')).toBeGreaterThan(0);
    expect(at('rake', 'riderUp')).toBeGreaterThan(at('rake', 'noRider') ?? NaN);
    expect(at('rake', 'braking')).toBeGreaterThan(at('rake', 'riderUp') ?? NaN);
    for (const key of ['frontWheelRate', 'frontWheelLoad', 'antiSquat'])
      expect([key, at(key, 'riderUp')]).toEqual([key, null]);
  });
});

describe('a bike on springs that nobody measured', () => {
  const ride = 'riderUp';
  const spreadsOf = (rows: readonly MeasureRow[]) =>
    changeSpreads(fitOf(rows), { start, from: null, to: start.setup, ride, stepSd: 0 });
  const papers = (['paperRake', 'paperTrail', 'paperWheelbase'] as const)
    .map((kind) => asked(kind, [], 'makersPosture'))
    .concat(
      (['frontWheel', 'rearWheel'] as const).map((part) => asked('axleHeight', [part], 'makersPosture')),
    );

  it('has a ± by its papers alone, wider than theirs, and none where the papers are silent', () => {
    const { rake, trail, wheelbase, swingarmAngle, seatHeight, frontTravel } = spreadsOf(papers);
    expect(2 * (rake.u ?? NaN)).toBeGreaterThan(0.5);
    expect(2 * (rake.u ?? NaN)).toBeLessThan(0.8);
    expect(2 * (trail.u ?? NaN)).toBeLessThan(7);
    expect(2 * (wheelbase.u ?? NaN)).toBeLessThan(7);
    for (const { fixed } of [swingarmAngle, seatHeight, frontTravel]) expect(fixed).toBe(false);
  });

  it('is surer once the rider’s weight on it was measured', () => {
    const rider = [
      asked('exposedTube'),
      asked('exposedTube', [], 'riderOn'),
      asked('angle', ['swingarm'], 'riderOn'),
      asked('height', ['pivot'], 'riderOn'),
    ].map((row) => ({ ...row, sd: row.kind === 'angle' ? 0.02 : 0.2 }));
    const [without, measured] = [spreadsOf(CHASSIS), spreadsOf([...CHASSIS, ...rider])];
    for (const key of ['rake', 'pivotHeight', 'swingarmAngle'])
      expect([key, (measured[key].u ?? NaN) < (without[key].u ?? NaN)]).toEqual([key, true]);
  });

  it('lies within its ± in about 95 of 100, its springs off by 15 % from those that it starts with', () => {
    const watched = ['rake', 'trail', 'wheelbase', 'pivotHeight', 'swingarmAngle'] as const;
    let inside = 0;
    let all = 0;
    fc.assert(
      fc.property(fc.noBias(fc.integer({ min: 0, max: 0xffffffff })), (seed) => {
        const normal = normalNumbers(seed);
        const rows = typedRows(origin, CHASSIS, truth, normal);
        const fitted = fitSheet(start, { gaugeZeroed: true, rows });
        const built = buildBike(postureOf(origin, truth));
        if (!fitted.ok || built === null) throw new Error('the bike can be measured and built');
        const real = restedAs(built, start.setup, 1 + SPRING_DOUBT * normal(), 1 + SPRING_DOUBT * normal());
        const stood = standBike(real.bike, real.setup, ride);
        if (!stood.ok) throw new Error(stood.reason);
        const stated = changeSpreads(fitted.fit, { start, from: null, to: start.setup, ride, stepSd: 0 });
        for (const key of watched) {
          const reading = READINGS.find((each) => each.key === key);
          const value = reading === undefined ? NaN : metricReading(reading, stood);
          all++;
          const { value: found, u } = stated[key];
          if (Math.abs(Number(value) - (found ?? NaN)) < 1.96 * (u ?? NaN)) inside++;
        }
      }),
      { numRuns: cases(12, 400) },
    );
    // Springs are taken to be off in the way that they move the bike, which a softer one does by a little more.
    const leeway = 3 * Math.sqrt((0.95 * 0.05) / (all / 4));
    expect(inside / all).toBeGreaterThan(Math.min(0.9, 0.95 - leeway));
  });
});

describe('bikes drawn by lot', () => {
  it('read by a surface as they read when each is stood', () => {
    const [trail] = READINGS.filter(({ key }) => key === 'trail');
    const normal = normalNumbers(7);
    const { values, touched, parts, rank } = fit;
    const stood = Array.from({ length: 1500 }, () => {
      const drawn = [...values];
      for (let k = 0; k < rank; k++) {
        const step = normal() / parts.values[k];
        for (const [j, place] of touched.entries()) drawn[place] += step * parts.right[k][j];
      }
      return readValues(origin, drawn, [trail])?.[0] ?? NaN;
    }).sort((a, b) => a - b);
    const range = drawnRange(fit, { reading: 'trail', count: 1500 }, normalNumbers(7));
    const width = stood[1462] - stood[37];
    expect(Math.abs((range?.least ?? NaN) - stood[37])).toBeLessThan(0.01 * width);
    expect(Math.abs((range?.most ?? NaN) - stood[1462])).toBeLessThan(0.01 * width);
  });

  it('lie in 95 of 100 within the stated ± of a reading that bends little', () => {
    const { value, u } = measuredReadings(fit)?.wheelbase ?? { value: NaN, u: NaN };
    const range = drawnRange(fit, { reading: 'wheelbase', count: 10_000 }, normalNumbers(1));
    expect(((range?.most ?? NaN) - (range?.least ?? NaN)) / (2 * 1.96 * (u ?? NaN))).toBeCloseTo(1, 1);
    expect(Math.abs((range?.middle ?? NaN) - (value ?? NaN))).toBeLessThan(0.05 * (u ?? NaN));
  });
});
