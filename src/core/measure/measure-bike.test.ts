/** Tests of measuring: what is refused and why, what is exact, and what a sheet of few rows makes of a bike. */
import { describe, expect, it } from 'vitest';
import { plainBike, plainSetup } from '../../../tests/support/plain-bike.ts';
import {
  asked,
  CHASSIS,
  normalNumbers,
  originOn,
  trueValues,
  typedRows,
} from '../../../tests/support/measured-sheet.ts';
import type { MeasuredBike } from './measured-bike.ts';
import type { StartingBike } from './held/starting-bike.ts';
import { measureBike } from './measure-bike.ts';
import type { NoMeasure } from './no-measure.ts';
import type { MeasureRow } from './sheet.ts';

const START: StartingBike = { bike: plainBike, setup: plainSetup };

function outcome(rows: readonly MeasureRow[], gaugeZeroed = true): MeasuredBike | NoMeasure {
  return measureBike({ start: START, sheet: { gaugeZeroed, rows }, wanted: null });
}

function found(rows: readonly MeasureRow[], gaugeZeroed = true): MeasuredBike {
  const answer = outcome(rows, gaugeZeroed);
  if (!answer.ok) throw new Error(`row ${answer.row}: ${answer.reason}`);
  return answer;
}

const typed = (row: MeasureRow, figure: string, more: Partial<MeasureRow> = {}): MeasureRow => ({
  ...row,
  figure,
  ...more,
});

const PAPERS: readonly MeasureRow[] = [
  typed(asked('paperRake', [], 'makersPosture'), '24.5'),
  typed(asked('paperTrail', [], 'makersPosture'), '98'),
  typed(asked('paperWheelbase', [], 'makersPosture'), '1410'),
  typed(asked('tyreCode', ['frontWheel']), '120/70-17'),
  typed(asked('tyreCode', ['rearWheel']), '190/55-17'),
  typed(asked('toothCount', ['frontSprocket']), '16'),
  typed(asked('toothCount', ['rearSprocket']), '43'),
];

describe('papers alone', () => {
  it('give rake, trail and wheelbase as printed, with the ± of papers, and say what is not fixed', () => {
    const { readings, readIn, setup, unknowns } = found(PAPERS);
    expect(readIn).toBe('makersPosture');
    expect(readings.rake.value).toBeCloseTo(24.5, 9);
    expect(readings.trail.value).toBeCloseTo(98, 9);
    expect(readings.wheelbase.value).toBeCloseTo(1410, 9);
    expect(readings.rake.u).toBeCloseTo(0.25, 9);
    expect(readings.wheelbase.u).toBeCloseTo(2.5, 9);
    expect(readings.swingarmAngle).toMatchObject({ fixed: false, u: null });
    expect(setup).toMatchObject({ frontTeeth: 16, rearTeeth: 43 });
    expect(unknowns.find(({ key }) => key === 'pivotY')).toMatchObject({ assumed: true, u: null });
  });

  it('rake from horizontal is the same rake', () => {
    const other = PAPERS.map((row) =>
      row.kind === 'paperRake' ? { ...row, figure: '65.5', fromOther: true } : row,
    );
    expect(found(other).readings.rake.value).toBeCloseTo(24.5, 9);
  });

  it('no rows at all leave the starting bike', () => {
    const { status, readings, notFixed } = found([]);
    expect(status).toBe('notFixed');
    expect(notFixed).toEqual([]);
    expect(
      Object.values(readings).every(({ fixed, value, u }) => fixed === (value !== null && u !== null)),
    ).toBe(true);
    expect(readings.trail.fixed).toBe(false);
  });
});

describe('units', () => {
  it('mixed units mean what they say', () => {
    const mm = found([typed(asked('axleHeight', ['frontWheel']), '304.8')]);
    for (const [figure, unit] of [
      ['12', 'in'],
      ['12 in', ''],
      ['30,48', 'cm'],
    ])
      expect(
        found([typed(asked('axleHeight', ['frontWheel']), figure, { unit })]).readings.frontAxleHeight,
      ).toEqual(mm.readings.frontAxleHeight);
  });
});

describe('rows that cannot be', () => {
  it.each<[string, MeasureRow, Partial<NoMeasure>]>([
    [
      'a word for a number',
      typed(asked('height', ['pivot']), 'high'),
      { reason: 'figureUnreadable', unread: 'notANumber' },
    ],
    [
      'a weight in mm',
      typed(asked('weight', ['frontWheel']), '100 mm'),
      { reason: 'figureUnreadable', unread: 'wrongUnit' },
    ],
    [
      'an empty figure',
      typed(asked('height', ['pivot']), ''),
      { reason: 'figureUnreadable', unread: 'empty' },
    ],
    [
      'a pivot 9 m up',
      typed(asked('height', ['pivot']), '9 m'),
      { reason: 'figureImpossible', found: 9000, limit: 2500 },
    ],
    [
      'a sprocket counted otherwise than before',
      typed(asked('toothCount', ['frontSprocket']), '15'),
      { reason: 'countedTwice' },
    ],
    ['half a tooth', typed(asked('toothCount', ['frontSprocket']), '15.5'), { reason: 'figureImpossible' }],
    [
      'a tyre of no size',
      typed(asked('tyreCode', ['frontWheel']), 'big'),
      { reason: 'figureUnreadable', unread: 'tyreCodeUnreadable' },
    ],
    ['the height of a wheel', typed(asked('height', ['frontWheel']), '300'), { reason: 'partsWrong' }],
    [
      'a distance from a place to itself',
      typed(asked('distance', ['pivot', 'pivot']), '300'),
      { reason: 'partsWrong' },
    ],
    [
      'a bolt that the bike has not',
      typed(asked('height', ['rockerPivot']), '300'),
      { reason: 'partMissing', part: 'rockerPivot' },
    ],
    ['the shock of a table', typed(asked('eyeToEye'), '300'), { reason: 'partMissing' }],
    [
      'scales with the rider on',
      typed(asked('weight', ['frontWheel'], 'riderOn'), '100'),
      { reason: 'notWeighedSo' },
    ],
    [
      'a change in one state',
      typed(asked('distanceChange', ['rearAxle', 'seat']), '30'),
      { reason: 'statesWrong' },
    ],
    ['no deviation at all', typed(asked('height', ['pivot']), '390', { sd: 0 }), { reason: 'sdWrong' }],
    [
      'a second reference for a length',
      typed(asked('height', ['pivot']), '390', { fromOther: true }),
      { reason: 'otherReferenceWrong' },
    ],
  ])('%s is refused with its row and reason', (_, row, no) => {
    expect(outcome([...PAPERS, row])).toMatchObject({ ok: false, row: PAPERS.length, ...no });
    expect(outcome([...PAPERS, { ...row, off: true }]).ok).toBe(true);
  });

  it('three distances that make no triangle are named, the longest first', () => {
    const sides = [
      typed(asked('distance', ['rearAxle', 'pivot']), '560'),
      typed(asked('distance', ['pivot', 'seat']), '430'),
      typed(asked('distance', ['rearAxle', 'seat']), '1400'),
    ];
    expect(outcome(sides)).toMatchObject({
      ok: false,
      reason: 'triangleImpossible',
      row: 2,
      withRows: [0, 1],
    });
    expect(outcome(sides.map((row, i) => (i === 2 ? { ...row, off: true } : row))).ok).toBe(true);
  });
});

describe('what rows say of one another', () => {
  const origin = originOn(START);
  const truth = trueValues(origin, 4, 6);

  it('the same figure twice halves its variance and checks itself', () => {
    const once = typed(asked('axleHeight', ['frontWheel']), '300');
    const one = found([once]).rows[0];
    const [two] = found([once, once]).rows;
    expect(one).toMatchObject({ redundancy: 0, smallestSlipRevealed: null });
    expect(two.redundancy).toBeCloseTo(0.5, 9);
    expect(two.smallestSlipRevealed).toBeCloseTo(4.93 * Math.SQRT2, 9);
    expect(found([once, once]).readings.frontAxleHeight.u).toBeCloseTo(Math.SQRT1_2, 9);
  });

  it('two rows that contradict each other are both named, since nothing tells them apart', () => {
    const rows = [
      typed(asked('axleHeight', ['frontWheel']), '300'),
      typed(asked('axleHeight', ['frontWheel']), '330'),
    ];
    const { status, rows: outcomes } = found(rows);
    expect(status).toBe('disagrees');
    expect(outcomes.map(({ suspected }) => suspected?.place)).toEqual([1, 1]);
    expect(outcomes.map(({ suspected }) => suspected?.alike)).toEqual([[1], [0]]);
  });

  it('a row that is switched off counts for nothing and stays in its place', () => {
    const rows = typedRows(origin, CHASSIS, truth);
    const off = rows.map((row, i) => (i === 3 ? { ...row, figure: '1', off: true } : row));
    const { rows: outcomes, agreement } = found(off);
    expect(outcomes[3]).toMatchObject({ measured: null, residual: null, redundancy: null });
    expect(agreement.chiSquare).toBeLessThan(1e-9);
  });

  it('a floor that is not level is found where the gauge was not zeroed', () => {
    const sloped = originOn(START, false);
    const values = [...truth];
    values[sloped.places.get('slope') ?? NaN] = 5;
    const rows = typedRows(sloped, CHASSIS, values);
    const level = found(rows);
    const known = found(rows, false);
    const slope = known.unknowns.find(({ key }) => key === 'slope');
    // The floor was taken to be level to half a degree, which draws it back a little.
    expect(slope?.value).toBeGreaterThan(0.2);
    expect(slope?.value).toBeLessThan((5 * 180) / 1000 / Math.PI);
    expect(known.agreement.chiSquare).toBeLessThan(level.agreement.chiSquare);
  });

  it('a distance out of plane is taken off the tape', () => {
    const flat = found([typed(asked('distance', ['rearAxle', 'pivot']), '560')]);
    const slanted = found([
      typed(asked('distance', ['rearAxle', 'pivot']), String(Math.hypot(560, 90)), { outOfPlane: 90 }),
    ]);
    expect(slanted.bike.swingarm.length).toBeCloseTo(flat.bike.swingarm.length, 6);
  });

  it('a sprocket placed by two distances alone has a second place, and the row that would decide is named', () => {
    const rows = typedRows(
      origin,
      CHASSIS.filter(({ kind, parts }) => kind !== 'height' || parts[0] !== 'countershaft'),
      truth,
    );
    const { status, second } = found(rows);
    expect(status).toBe('twoAnswers');
    expect(second?.mirrored).toBe('Front sprocket');
    expect(second?.decide).not.toBeNull();
    expect(Math.abs((second?.decide?.here ?? 0) - (second?.decide?.there ?? 0))).toBeGreaterThan(5);
  });

  it('500 rows are one sheet', () => {
    const noise = normalNumbers(8);
    const rows = Array.from({ length: 20 }, () => typedRows(origin, CHASSIS, truth, noise)).flat();
    const { rows: outcomes, agreement } = found(rows);
    expect(outcomes).toHaveLength(500);
    expect(agreement.toSpare).toBeGreaterThan(470);
    expect(agreement.chance).toBeGreaterThan(0.001);
  });

  it('a slip among 500 rows is named first, without a fit for each row', () => {
    const noise = normalNumbers(8);
    const rows = Array.from({ length: 20 }, () => typedRows(origin, CHASSIS, truth, noise)).flat();
    const slipped = rows.map((row, i) =>
      i === 129 ? { ...row, figure: `${Number(row.figure) + 60}` } : row,
    );
    const { rows: outcomes, status } = found(slipped);
    expect(status).toBe('disagrees');
    expect(outcomes[129].suspected?.place).toBe(1);
  });

  it('more rows than any sheet has are refused', () => {
    const many = Array.from({ length: 2001 }, () => PAPERS[0]);
    expect(outcome(many)).toMatchObject({ ok: false, reason: 'tooManyRows', found: 2001 });
  });
});
