/** Tests of the command that fits a bike to a sheet of measurements. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { MEASURE_KINDS } from '../core/measure/kinds/all-kinds.ts';
import { measureBike } from '../core/measure/measure-bike.ts';
import { MEASURE_PART_KEYS } from '../core/measure/held/measure-parts.ts';
import { DEMO_BIKES } from '../document/demos/demo-bikes.ts';
import { measureCommand } from './measure.ts';
import { readMeasureFile } from './read-measure-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'measure-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

function written(value: unknown): string {
  const file = join(folder, 'sheet.json');
  writeFileSync(file, typeof value === 'string' ? value : JSON.stringify(value));
  return file;
}

const sheet = (...rows: readonly object[]) => ({ format: 'sidestance-measure', schema: 1, rows });
const fixture = (name: string): string =>
  new URL(`../../fixtures/measure/${name}.json`, import.meta.url).pathname;

interface Printed {
  readonly status: string;
  readonly readings: Record<string, { value: number; unit: string; u: number | null; fixed: boolean }>;
  readonly rows: readonly Record<string, unknown>[];
  readonly notFixed: readonly unknown[];
  readonly next: readonly unknown[];
  readonly bike: { name: string };
}

describe('an answer', () => {
  it.each(['counter', 'chassis', 'whole-bike', 'photo'])(
    '%s is solved, in JSON, with exit code 0',
    (name) => {
      const { code, out, err } = measureCommand([fixture(name)]);
      expect([code, err]).toEqual([0, '']);
      const printed = JSON.parse(out) as Printed;
      expect(['solved', 'notFixed']).toContain(printed.status);
      expect(printed.readings.trail).toMatchObject({ unit: 'mm', fixed: true });
      expect(printed.next.length).toBeGreaterThan(0);
      const [first] = printed.rows;
      expect(Object.keys(first)).toEqual(
        expect.arrayContaining(['residual', 'redundancy', 'smallestSlipRevealed', 'suspected']),
      );
      expect(printed.bike.name).toBe(DEMO_BIKES[0].bike.name);
    },
  );

  it('is what the page gets from the same rows', () => {
    const read = readMeasureFile(readFileSync(fixture('chassis'), 'utf8'));
    if (!read.ok) throw new Error(read.reason);
    const found = measureBike({ start: read.value.start, sheet: read.value.sheet, wanted: 'rake' });
    if (!found.ok) throw new Error(found.reason);
    const printed = JSON.parse(measureCommand([fixture('chassis'), '--for', 'rake']).out) as Printed;
    expect(printed.readings).toEqual(JSON.parse(JSON.stringify(found.readings)));
    expect(printed.next).toEqual(JSON.parse(JSON.stringify(found.next)));
  });

  it('says by how much readings change with adjusters set, far surer than the readings themselves', () => {
    const { code, out } = measureCommand([fixture('chassis'), '--set', 'forkTubes=13']);
    const { change, readings } = JSON.parse(out) as Printed & { change: Printed['readings'] };
    expect(code).toBe(0);
    expect(change.rake.value).toBeLessThan(-0.1);
    expect(change.rake.u).toBeLessThan((readings.rake.u ?? NaN) / 20);
    expect(measureCommand([fixture('chassis'), '--set', 'forkTube=13']).code).toBe(1);
  });

  it('takes the rows that a saved bike was measured by', () => {
    const bike = new URL('../../fixtures/documents/v4/taped.json', import.meta.url).pathname;
    const { code, out, err } = measureCommand([bike]);
    expect([code, err]).toEqual([0, '']);
    const { rows } = (JSON.parse(readFileSync(bike, 'utf8')) as { measure: { rows: unknown[] } }).measure;
    expect((JSON.parse(out) as Printed).rows).toHaveLength(rows.length);
  });

  it('counts the photo that is kept with a bike, and says which one does not count and what was mended', () => {
    const json = (name: string) =>
      JSON.parse(readFileSync(new URL(`../../fixtures/${name}.json`, import.meta.url), 'utf8')) as Record<
        string,
        unknown
      >;
    const bike = json('documents/v4/taped');
    const [photo] = json('measure/photo').photos as Record<string, unknown>[];
    const measure = bike.measure as { rows: unknown[] };
    const withPhotos = (photos: unknown[]) => {
      const { code, out, err } = measureCommand([
        written({ ...bike, measure: { ...measure, rows: [], photos } }),
      ]);
      expect([code, err]).toEqual([0, '']);
      return JSON.parse(out) as Printed & { photos: unknown[]; repairs?: string[] };
    };
    const counted = withPhotos([photo]);
    expect(counted.photos).toHaveLength(1);
    expect(counted.photos[0]).toMatchObject({ suspected: null });
    expect(counted.repairs).toBeUndefined();
    const few = withPhotos([photo, { ...photo, clicks: [], rims: [] }, 7]);
    expect(few.photos).toHaveLength(1);
    expect(few.readings).toEqual(counted.readings);
    expect(few.repairs).toEqual([
      '1 of 3 measured photos cannot be used and was left out.',
      'Photo 2 shows fewer than 3 places of this bike; left out.',
    ]);
  });

  it('starts from a saved bike too', () => {
    const start = JSON.parse(
      readFileSync(new URL('../../fixtures/bikes/plain.json', import.meta.url), 'utf8'),
    ) as { bike: { name: string } };
    const row = { kind: 'axleHeight', parts: ['rearWheel'], figure: '12 1/2 in' };
    const { code, out } = measureCommand([written({ ...sheet(row), start })]);
    const printed = JSON.parse(out) as Printed;
    expect(code).toBe(0);
    expect(printed.bike.name).toBe(start.bike.name);
    expect(printed.readings.rearAxleHeight.value).toBeCloseTo(317.5, 9);
  });
});

const PHOTO = { widthPx: 4000, heightPx: 3000, focalPx: 3000 };

describe('one line and exit code 1', () => {
  const distance = { kind: 'distance', parts: ['pivot', 'rearAxle'], figure: 560 };
  it.each<[string, unknown, RegExp]>([
    [
      'a bike that nobody measured',
      JSON.parse(readFileSync(new URL('../../fixtures/bikes/plain.json', import.meta.url), 'utf8')),
      /^This bike has no rows/,
    ],
    ['no JSON', '{"format": ', /^The file is no JSON: .*\.$/],
    ['another format', { format: 'other' }, /^The file is no sheet of measurements/],
    ['a newer schema', { ...sheet(), schema: 2 }, /"schema": 1\.$/],
    ['rows that are no list', { ...sheet(), rows: 3 }, /^"rows" has to be a list\.$/],
    ['a start that there is not', { ...sheet(), start: 'road' }, /nearest is “roadSport”/],
    ['a field that there is not', { ...sheet(), gageZeroed: true }, /nearest is “gaugeZeroed”/],
    ['a kind that there is not', sheet({ ...distance, kind: 'distanze' }), /^Row 1: .*nearest is “distance”/],
    [
      'a part that there is not',
      sheet(distance, { ...distance, parts: ['pivott', 'rearAxle'] }),
      /^Row 2: there is no part “pivott”; the nearest is “pivot”\.$/,
    ],
    ['a state that there is not', sheet({ ...distance, state: 'onwheel' }), /nearest is “onWheels”/],
    [
      'a figure that is no number',
      sheet({ ...distance, figure: 'long' }),
      /^Row 1: the figure cannot be read/,
    ],
    ['a figure that is a list', sheet({ ...distance, figure: [1] }), /^Row 1: "figure" has to be/],
    [
      'a length that cannot be',
      sheet({ ...distance, figure: '9 m' }),
      /^Row 1: no motorcycle has 9000; the limit is 4000\.$/,
    ],
    ['photos that are no list', { ...sheet(distance), photos: 1 }, /^"photos" has to be a list\.$/],
    ['a photo without a size', { ...sheet(), photos: [{}] }, /^Photo 1: "widthPx" has to be a number\.$/],
    [
      'a click on no part',
      { ...sheet(), photos: [{ ...PHOTO, clicks: [{ part: 'pivott', xPx: 1, yPx: 1 }] }] },
      /^Photo 1: there is no part “pivott”; the nearest is “pivot”\.$/,
    ],
    [
      'a photo with one part',
      { ...sheet(), photos: [{ ...PHOTO, clicks: [{ part: 'pivot', xPx: 1, yPx: 1 }] }] },
      /^A photo needs .* three different parts/,
    ],
    [
      'a row in inches',
      JSON.parse(readFileSync(fixture('slip'), 'utf8')),
      /^Row 5: .*it looks like inches read as mm\.$/,
    ],
  ])('%s', (_, value, line) => {
    const { code, out, err } = measureCommand([written(value)]);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/^[^\n]*\n$/);
    expect(err.trimEnd()).toMatch(line);
  });

  it('a triangle that cannot be names its three rows', () => {
    const rows = [
      { kind: 'distance', parts: ['rearAxle', 'pivot'], figure: 560 },
      { kind: 'distance', parts: ['pivot', 'seat'], figure: 430 },
      { kind: 'distance', parts: ['rearAxle', 'seat'], figure: 1400 },
    ];
    expect(measureCommand([written(sheet(...rows))]).err).toMatch(
      /^Row 3: with rows 1 and 2 it makes no triangle/,
    );
  });

  it.each<[string, string[], RegExp]>([
    ['no file', [], /^Which file\?/],
    [
      'a file that is not there',
      ['nowhere.json'],
      /^The file nowhere\.json cannot be read: there is no such file\./,
    ],
    ['two files', ['a.json', 'b.json'], /^One file at a time/],
    ['an option that there is not', ['--kind'], /^There is no option --kind/],
    ['a reading that there is not', [fixture('counter'), '--for', 'trial'], /nearest is “trail”/],
  ])('%s', (_, args, line) => {
    const { code, err } = measureCommand(args);
    expect(code).toBe(1);
    expect(err).toMatch(line);
  });
});

it('--kinds lists every kind and part with unit and standard deviation', () => {
  const { code, out } = measureCommand(['--kinds']);
  expect(code).toBe(0);
  for (const { key, label } of MEASURE_KINDS) {
    expect(out).toContain(`\n  ${key} `);
    expect(out).toContain(label);
  }
  for (const key of MEASURE_PART_KEYS) expect(out).toContain(`\n  ${key} `);
  expect(out).toMatch(/paperRake\s+deg\s+0\.25/);
});

it('--help and --schema describe the file', () => {
  expect(measureCommand(['--help']).out).toContain('npm run measure');
  expect(JSON.parse(measureCommand(['--schema']).out)).toHaveProperty('properties.rows');
});
