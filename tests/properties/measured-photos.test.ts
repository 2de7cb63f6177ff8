/** Holds that photos find the bike they were taken of, within the bounds of a careful hand, and say honestly how well. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Camera } from '../../src/core/measure/photo/camera.ts';
import { holdBike, postureOf } from '../../src/core/measure/held/hold-bike.ts';
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import type { MeasuredBike } from '../../src/core/measure/measured-bike.ts';
import type { MeasurePartKey } from '../../src/core/measure/held/measure-parts.ts';
import type { MeasurePhoto } from '../../src/core/measure/photo/photo.ts';
import { readValues } from '../../src/core/measure/measured-readings.ts';
import type { MeasureRow } from '../../src/core/measure/sheet.ts';
import { READINGS } from '../../src/core/readings/all-readings.ts';
import { degrees } from '../../src/core/units/convert.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { cases } from '../support/cases.ts';
import { asked, CHASSIS, normalNumbers, originOn, trueValues, typedRows } from '../support/measured-sheet.ts';
import {
  aimed,
  besideLeaning,
  CAMERA,
  EXACT,
  FOCAL_SD,
  pictured,
  RIM_RADIUS,
  type Doubts,
} from '../support/pictured-bike.ts';

const [ROAD] = DEMO_BIKES;
const origin = originOn(ROAD);
const truth = trueValues(origin, 7, 10);
const TRUE = Object.fromEntries(
  (readValues(origin, truth, READINGS) ?? []).map((value, i) => [READINGS[i].key, value]),
);
const seeds = fc.noBias(fc.integer({ min: 0, max: 0xffffffff }));
/** What the long form draws, so that a per cent is more than chance. */
const REFITS = 1000;
/** The long form takes this long on a slow machine that is busy, ms. */
const LONGEST = 7_200_000;
const WATCHED = ['wheelbase', 'rake', 'trail', 'swingarmAngle'] as const;

/** Radii and offset known as well as they can be. */
const KNOWN: readonly MeasureRow[] = [
  { ...asked('axleHeight', ['frontWheel']), sd: 0.01 },
  { ...asked('axleHeight', ['rearWheel']), sd: 0.01 },
  { ...asked('offset'), sd: 0.01 },
];

function fromPhoto(
  seed: number,
  camera: Camera,
  { doubts = EXACT, rows = KNOWN }: { readonly doubts?: Doubts; readonly rows?: readonly MeasureRow[] } = {},
): MeasuredBike {
  const normal = normalNumbers(seed);
  const photo = pictured(origin, truth, camera, normal, doubts);
  const sheet = { gaugeZeroed: true, rows: typedRows(origin, rows, truth, normal), photos: [photo] };
  const found = measureBike({ start: ROAD, sheet, wanted: null });
  if (!found.ok) throw new Error(found.reason);
  return found;
}

const away = (found: MeasuredBike, key: string): number =>
  Math.abs((found.readings[key].value ?? NaN) - (TRUE[key] ?? NaN));

describe('with radii, depths and offset exact and no bulge', () => {
  it(
    '95 % of errors lie within 1.5 mm of wheelbase, 0.12° of rake, 1 mm of trail and 0.15° of the arm',
    () => {
      const bounds = { wheelbase: 1.5, rake: 0.12, trail: 1, swingarmAngle: 0.15 };
      const beyond = { wheelbase: 0, rake: 0, trail: 0, swingarmAngle: 0 };
      const stated = { wheelbase: 0, rake: 0, trail: 0, swingarmAngle: 0 };
      const camera = aimed(CAMERA, 5000);
      const runs = cases(10, REFITS);
      fc.assert(
        fc.property(seeds, (seed) => {
          const found = fromPhoto(seed, camera);
          for (const key of WATCHED) {
            stated[key] += (1.96 * (found.readings[key].u ?? NaN)) / runs;
            if (!(away(found, key) < bounds[key])) beyond[key]++;
          }
        }),
        { numRuns: runs },
      );
      // As many as 5 % by three standard errors of the draw; the stated ± itself keeps the bound without any leeway.
      const most = Math.max(2, 0.05 * runs + 3 * Math.sqrt(0.05 * 0.95 * runs));
      for (const key of WATCHED) {
        expect([key, beyond[key] <= most]).toEqual([key, true]);
        expect(stated[key], key).toBeLessThan(bounds[key]);
      }
    },
    LONGEST,
  );

  it.each([
    ['square, at 8 m', aimed({ ...CAMERA, yaw: 0, pitch: 0, roll: 0 }, 8000)],
    ['from the left, at 3 m', aimed({ ...CAMERA, mirrored: true }, 3000)],
    ['close by, at 1.5 m', aimed({ ...CAMERA, yaw: 0.05 }, 1500)],
    ['leaning by 10° on its side stand', besideLeaning(aimed(CAMERA, 5000), (10 * Math.PI) / 180)],
  ])('%s, the bike is found', (_, camera) => {
    const found = fromPhoto(5, camera);
    for (const key of WATCHED) expect(away(found, key)).toBeLessThan(5 * (found.readings[key].u ?? 0));
    expect(found.readings.wheelbase.u).toBeLessThan(2);
  });
});

describe('with every radius, depth and the lens in doubt', () => {
  const doubts: Doubts = { focalSd: FOCAL_SD, depthSd: 2.5, radiusSd: 0.25, bulgeSd: 0.25 };

  it.each([
    ['of the photo alone', KNOWN],
    ['of photo and tape together', CHASSIS],
  ])(
    'the stated ± %s holds the truth in 93 to 97 %% of refits',
    (_, rows) => {
      const camera = aimed(CAMERA, 5000);
      let inside = 0;
      let all = 0;
      fc.assert(
        fc.property(seeds, (seed) => {
          const found = fromPhoto(seed, camera, { doubts, rows });
          for (const key of WATCHED) {
            all++;
            if (away(found, key) < 1.96 * (found.readings[key].u ?? 0)) inside++;
          }
        }),
        { numRuns: cases(10, REFITS) },
      );
      const leeway = 3 * Math.sqrt((0.95 * 0.05) / (all / 2));
      expect(inside / all).toBeGreaterThan(Math.min(0.93, 0.95 - leeway));
      expect(inside / all).toBeLessThan(Math.max(0.97, 0.95 + leeway));
    },
    LONGEST,
  );

  it('is larger than without doubts, and a taped wheelbase brings the scale back', () => {
    const camera = aimed(CAMERA, 5000);
    const taped = { ...asked('horizontal', ['rearAxle', 'frontAxle']), sd: 0.5 };
    const sure = fromPhoto(3, camera).readings.wheelbase.u ?? NaN;
    const unsure = fromPhoto(3, camera, { doubts }).readings.wheelbase.u ?? NaN;
    const both = fromPhoto(3, camera, { doubts, rows: [...KNOWN, taped] }).readings.wheelbase.u ?? NaN;
    expect(unsure).toBeGreaterThan(1.5 * sure);
    expect(both).toBeLessThan(0.5);
  });

  it('without a measured offset trail is known to 2 or 3 mm', () => {
    const found = fromPhoto(4, aimed(CAMERA, 5000), { doubts, rows: KNOWN.slice(0, 2) });
    expect(1.96 * (found.readings.trail.u ?? NaN)).toBeGreaterThan(1);
    expect(1.96 * (found.readings.trail.u ?? NaN)).toBeLessThan(6);
  });
});

it('a photo with two parts clicked and no rim says what it needs, and with its rims it counts', () => {
  const photo = pictured(origin, truth, CAMERA, () => 0);
  const few = { ...photo, clicks: photo.clicks.filter(({ part }) => part === 'pivot' || part === 'seat') };
  const sheet = (photos: readonly MeasurePhoto[]) => ({ gaugeZeroed: true, rows: [], photos });
  const bare = { ...few, rims: [] };
  expect(measureBike({ start: ROAD, sheet: sheet([bare]), wanted: null })).toMatchObject({
    reason: 'photoImpossible',
  });
  expect(measureBike({ start: ROAD, sheet: sheet([few]), wanted: null })).toMatchObject({ ok: true });
});

/** What a ruler on the picture gives: levelled by the axles, its scale from the front rim's width, no camera. */
function readFlat({ clicks, rims }: MeasurePhoto): Readonly<Record<(typeof WATCHED)[number], number>> {
  const held = holdBike(postureOf(origin, truth), 'onWheels');
  if (held === null) throw new Error('the bike cannot be held so');
  const mean = (all: readonly number[]): number => all.reduce((sum, each) => sum + each, 0) / all.length;
  const at = (part: MeasurePartKey) => {
    const of = clicks.filter((click) => click.part === part);
    return { x: mean(of.map(({ xPx }) => xPx)), y: -mean(of.map(({ yPx }) => yPx)) };
  };
  const across = rims.filter(({ wheel }) => wheel === 'frontWheel').map(({ xPx }) => xPx);
  const perPx = (2 * RIM_RADIUS) / (Math.max(...across) - Math.min(...across));
  const line = (from: MeasurePartKey, to: MeasurePartKey) => ({
    x: (at(to).x - at(from).x) * perPx,
    y: (at(to).y - at(from).y) * perPx,
  });
  const axles = line('rearAxle', 'frontAxle');
  const long = Math.hypot(axles.x, axles.y);
  const rise = held.freeRadius.front - held.freeRadius.rear;
  const level = Math.atan2(axles.y, axles.x) - Math.asin(rise / long);
  const steering = line('axisFoot', 'steeringHead');
  const rake = Math.atan2(steering.y, steering.x) - level - Math.PI / 2;
  const arm = line('rearAxle', 'pivot');
  return {
    wheelbase: Math.sqrt(long ** 2 - rise ** 2),
    rake: degrees(rake),
    trail: (held.freeRadius.front * Math.sin(rake) - held.offset) / Math.cos(rake),
    swingarmAngle: degrees(Math.atan2(arm.y, arm.x) - level),
  };
}

describe('without a camera fit, a ruler on the same picture', () => {
  it.each([
    // Seen square from afar the ruler reads the rake right.
    ['square, at 8 m', { ...CAMERA, yaw: 0, pitch: 0, roll: 0 }, 8000, { wheelbase: 15 }],
    ['turned, tipped and rolled, at 5 m', CAMERA, 5000, { wheelbase: 30, rake: 0.1 }],
    ['the same at 1.5 m', CAMERA, 1500, { wheelbase: 100, rake: 2 }],
  ] as readonly (readonly [string, Camera, number, Partial<Record<(typeof WATCHED)[number], number>>])[])(
    'is wrong by far more than the stated ±: %s',
    (_, camera, distance, least) => {
      const here = aimed(camera, distance);
      const read = readFlat(pictured(origin, truth, here, normalNumbers(5)));
      const off = (key: (typeof WATCHED)[number]): number => Math.abs(read[key] - (TRUE[key] ?? NaN));
      const found = fromPhoto(5, here);
      expect(least.wheelbase).toBeGreaterThan(0);
      for (const key of WATCHED) {
        const bound = least[key];
        if (bound === undefined) continue;
        expect([key, off(key) > bound]).toEqual([key, true]);
        expect([key, off(key) > 3 * away(found, key)]).toEqual([key, true]);
      }
    },
  );
});
