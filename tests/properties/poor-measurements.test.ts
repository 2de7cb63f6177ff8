/** Holds that poor clicks, missing sizes and long sheets give a reason and a next step, and that nothing typed is lost. */
import { describe, expect, it } from 'vitest';
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import { LEAST_RIM_POINTS, type MeasurePhoto } from '../../src/core/measure/photo/photo.ts';
import { findRimEdge, type GreyWindow } from '../../src/core/measure/photo/rim-edge.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { openDocument } from '../../src/document/open-document.ts';
import { saveDocument } from '../../src/document/save-document.ts';
import { fitRows } from '../../src/session/measure/tape-fit.ts';
import { noPictureWords, noRimEdgeWords, photoStatus } from '../../src/words/measure/photo-words.ts';
import { nextAdvice } from '../../src/words/measure/tape-words.ts';
import { CHASSIS, normalNumbers, originOn, trueValues, typedRows } from '../support/measured-sheet.ts';
import { aimed, CAMERA, pictured } from '../support/pictured-bike.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;
const [ROAD] = DEMO_BIKES;
const origin = originOn(ROAD);
const truth = trueValues(origin, 7, 10);
const photo = pictured(origin, truth, aimed(CAMERA, 5000), normalNumbers(5));

function measured(photos: readonly MeasurePhoto[], wanted: string | null = null) {
  const found = measureBike({ start: ROAD, sheet: { gaugeZeroed: true, rows: [], photos }, wanted });
  if (!found.ok) throw new Error(found.reason);
  return found;
}

/** What tells a person to do something. */
const NEXT_STEP = /\b(Click|Take|Save|Open|Choose)\b/;

describe('clicks that make no ring', () => {
  const flat: GreyWindow = { leftPx: 0, topPx: 0, widthPx: 9, heightPx: 9, light: new Uint8Array(81) };
  const at = (x: number, y: number) => ({ x, y });
  it.each([
    ['on one spot', [at(50, 50), at(50, 50), at(50, 50)], 'tooFew'],
    ['two of three on one spot', [at(50, 50), at(50, 50), at(90, 50)], 'tooFew'],
    ['on a line', [at(10, 10), at(50, 20), at(90, 30), at(130, 40)], 'collinear'],
    ['of a few pixels', [at(9, 9), at(14, 9), at(11, 14)], 'tooSmall'],
    ['where there is no edge', [at(200, 100), at(100, 200), at(0, 100)], 'noEdge'],
  ] as const)('%s say what to do', (_, clicks, reason) => {
    const found = findRimEdge(flat, clicks);
    if (found.ok) throw new Error('there is no edge');
    expect(found.reason).toBe(reason);
    expect(noRimEdgeWords(found)).toMatch(NEXT_STEP);
  });

  it.each(['notAPicture', 'notRead', 'tooLarge', 'tooSmall'] as const)(
    'a file refused as %s is named, with what to do',
    (reason) => {
      expect(noPictureWords(reason, 'bike.heic')).toMatch(/^bike\.heic was not opened: /);
      expect(noPictureWords(reason, 'bike.heic')).toMatch(NEXT_STEP);
    },
  );
});

describe('few points on a rim', () => {
  const thinned = (least: number): MeasurePhoto => ({
    ...photo,
    rims: (['frontWheel', 'rearWheel'] as const).flatMap((key) => {
      const on = photo.rims.filter(({ wheel }) => wheel === key);
      return on.filter((_, i) => i % Math.floor(on.length / least) === 0).slice(0, least);
    }),
  });

  it('count where radius and camera are known, from three on, and more points make it surer', () => {
    const [few, all] = [measured([thinned(3)]), measured([photo])];
    expect(few.photos[0]?.away).toBeGreaterThan(4500);
    expect(few.photos[0]?.away).toBeLessThan(5500);
    const leg = (found: typeof few) => found.unknowns.find(({ key }) => key === 'legLength')?.u ?? NaN;
    expect(leg(few)).toBeLessThan(5);
    expect(leg(few)).toBeGreaterThan(leg(all));
  });

  it('are no place by themselves, and the photo says what else to click', () => {
    const bare = { ...thinned(LEAST_RIM_POINTS - 1), clicks: [] };
    const sheet = { gaugeZeroed: true, rows: [], photos: [bare] };
    expect(measureBike({ start: ROAD, sheet, wanted: null })).toMatchObject({ reason: 'photoImpossible' });
    expect(photoStatus(null, 0, false, STYLE)).toContain('Three places to click');
  });
});

it('a photo without the sizes of tyres leaves these near the starting bike’s, and says that they are not fixed', () => {
  const { unknowns, notFixed } = measured([photo]);
  for (const key of ['frontRadius', 'rearRadius']) {
    const start = origin.unknowns.find((each) => each.key === key)?.start ?? NaN;
    const value = unknowns.find((each) => each.key === key)?.value ?? NaN;
    expect([key, Math.abs(value - start) < 30]).toEqual([key, true]);
    expect(notFixed.some(({ moves }) => moves.some((move) => move.key === key))).toBe(true);
  }
});

it('a photo without any size leaves lengths not fixed and angles known, and one length is advised', () => {
  const found = measured([{ ...photo, rims: [] }], 'wheelbase');
  expect(found.status).toBe('notFixed');
  expect(found.readings.wheelbase.fixed).toBe(false);
  const advice = nextAdvice(found.next, { label: 'Wheelbase', quantity: 'length' }, null, STYLE);
  expect(advice.length).toBeGreaterThan(0);
  expect(advice[0].text).toMatch(/wheelbase ± ?\d.*now not fixed\.$/);
});

it('500 rows in mixed units are fitted, saved and opened again as they were typed', () => {
  const units = ['mm', 'in', 'cm', 'm'] as const;
  const per = { mm: 1, in: 25.4, cm: 10, m: 1000 } as const;
  const typed = typedRows(origin, Array.from({ length: 20 }, () => CHASSIS).flat(), truth, normalNumbers(4));
  const rows = typed.map((row, i) => {
    const unit = units[i % units.length];
    const mixed = row.kind === 'angle' ? {} : { unit, figure: (Number(row.figure) / per[unit]).toFixed(8) };
    return { ...row, ...mixed, note: '' };
  });
  const measure = { gaugeZeroed: true, setup: ROAD.setup, rows };
  const { found, fates } = fitRows(measure, ROAD);
  if (found?.ok !== true) throw new Error(found?.reason);
  expect(fates.filter(({ kind }) => kind === 'counted')).toHaveLength(500);
  const plain = fitRows({ ...measure, rows: typed.map((row) => ({ ...row, note: '' })) }, ROAD).found;
  expect(plain?.ok === true && plain.readings.trail.value).toBeCloseTo(found.readings.trail.value ?? NaN, 4);
  const opened = openDocument(saveDocument({ ...ROAD, measure }));
  expect(opened.ok && opened.value.document.measure?.rows).toEqual(rows);
  expect(opened.ok && opened.value.repairs).toEqual([]);

  // One row that cannot be read is put aside with its reason; the other 499 count.
  const worse = rows.map((row, i) => (i === 123 ? { ...row, figure: 'twelve' } : row));
  const { fates: after } = fitRows({ ...measure, rows: worse }, ROAD);
  expect(after[123]).toMatchObject({ kind: 'refused', why: { reason: 'figureUnreadable', row: 123 } });
  expect(after.filter(({ kind }) => kind === 'counted')).toHaveLength(499);
});
