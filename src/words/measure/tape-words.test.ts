/** Tests of measurements in words. */
import { describe, expect, it } from 'vitest';
import type { MeasuredBike, NextMeasurement, RowOutcome } from '../../core/measure/measured-bike.ts';
import { noMeasure, type NoMeasureReason } from '../../core/measure/no-measure.ts';
import type { MeasureRow } from '../../core/measure/sheet.ts';
import { CHAIN } from '../../core/parts/drive-noun.ts';
import {
  assumedNames,
  assumedWords,
  checkWords,
  fitHeadline,
  fixedWords,
  inOrderOfSuspicion,
  measuredReading,
  nextAdvice,
  noMeasureSentence,
  rowName,
  secondWords,
  stateName,
  suspicionWords,
  uncheckedWords,
  type JudgedRow,
} from './tape-words.ts';
import { plusMinus, writePlusMinus } from '../plus-minus.ts';

const style = { system: 'metric', decimal: '.' } as const;
const inch = { system: 'inch', decimal: '.' } as const;
const plain = (text: string): string => text.replace(/\u00a0/g, ' ');
const row: MeasureRow = {
  kind: 'distance',
  parts: ['rearAxle', 'pivot'],
  state: 'onWheels',
  otherState: null,
  figure: '22 3/8',
  unit: 'in',
  sd: null,
  outOfPlane: 0,
  fromOther: false,
  off: false,
};
const outcome: RowOutcome = {
  measured: 568,
  residual: 1.2,
  sd: 1,
  redundancy: 0.5,
  smallestSlipRevealed: 7,
  suspected: null,
};
const judged = (place: number, changes: Partial<RowOutcome> = {}): JudgedRow => ({
  place,
  row,
  outcome: { ...outcome, ...changes },
});
const unknown = (label: string, assumed: boolean, u: number | null) => ({
  key: label,
  label,
  unit: 'mm' as const,
  value: 0,
  u,
  assumed,
});

describe('a row in words', () => {
  it('names what is measured between what, and how the bike is held', () => {
    expect(rowName(row)).toBe('Distance, rear axle to swingarm pivot');
    expect(rowName({ kind: 'height', parts: ['markA'] })).toBe('Height over the floor, Mark A');
    expect(rowName({ kind: 'paperRake', parts: [] })).toBe('Rake, from its papers');
    expect(stateName({ state: 'bothHanging', otherState: 'onWheels' })).toBe(
      'Both ends hanging, less on its wheels',
    );
  });

  it('says how far it is from the bike found and what slip would be noticed, or that nothing checks it', () => {
    expect(plain(checkWords(judged(0), style))).toBe(
      '+1.2 mm from the bike found; a slip of 7.0 mm would be noticed.',
    );
    expect(checkWords(judged(0, { redundancy: 0.01 }), style)).toBe('Nothing checks this row.');
    expect(checkWords(judged(0, { redundancy: null }), style)).toBe('');
    expect(uncheckedWords([judged(0), judged(1, { redundancy: 0 }), judged(3, { redundancy: 0 })])).toBe(
      'Nothing checks rows 2 and 4: a slip there would not be noticed.',
    );
    expect(uncheckedWords([judged(0)])).toBeNull();
    expect(uncheckedWords([judged(0, { redundancy: null }), judged(1, { redundancy: 0 })])).toBe(
      'No row checks another yet: a slip would not be noticed.',
    );
  });

  it('is suspected with what the others make of it, and which rows are no better', () => {
    const suspicion = { place: 1, alike: [1], likely: 'inchForMm', expected: 568.3 } as const;
    const [first, second] = inOrderOfSuspicion([
      judged(4, { suspected: { ...suspicion, place: 2, alike: [], likely: null } }),
      judged(2, { suspected: suspicion }),
    ]);
    expect([first.place, second.place]).toEqual([2, 4]);
    expect(plain(suspicionWords(first, [0, 5], style))).toBe(
      'Row 3, distance, rear axle to swingarm pivot, is suspected first: it says 22 3/8 in, and the other rows make it 568.3 mm. It looks like inches noted as mm. The slip may be in row 6 instead.',
    );
    expect(suspicionWords(second, [], style)).toContain('is suspected next');
  });
});

describe('a number with its ±', () => {
  it.each([
    [98.4321, 2.5, 'length', '98 ± 5 mm'],
    [98.4321, 0.25, 'length', '98.4 ± 0.5 mm'],
    [98.4321, 0.02, 'length', '98.4 ± 0.0 mm'],
    [24.4567, 0.25, 'angle', '24.5 ± 0.5°'],
    [24.4567, 0.05, 'angle', '24.46 ± 0.10°'],
    [2.8667, 0, 'ratio', '2.867'],
  ] as const)('%s with u %s has the digits that its ± supports', (value, u, quantity, text) => {
    if (text === '98.4 ± 0.0 mm') expect(plain(writePlusMinus(value, u, quantity, style))).toBe('98.4 mm');
    else expect(plain(writePlusMinus(value, u, quantity, style))).toBe(text);
  });

  it('is written in the unit shown', () => {
    expect(plain(writePlusMinus(98.4321, 2.5, 'length', inch))).toBe('3.88 ± 0.20 in');
    expect(plain(plusMinus(2.5, 'length', style))).toBe('± 5 mm');
    expect(plusMinus(0, 'teeth', style)).toBe('exact');
  });

  it('gives way to words where no row fixes it or the bike has none', () => {
    expect(measuredReading({ value: 3, unit: 'mm', u: null, fixed: false }, 'length', style)).toBe(
      'not fixed',
    );
    expect(measuredReading({ value: null, unit: 'mm', u: null, fixed: false }, 'length', style)).toBe(
      'not on this bike',
    );
  });
});

describe('what the rows make of the bike', () => {
  const found = (changes: object): MeasuredBike =>
    ({
      status: 'solved',
      agreement: { chiSquare: 0, toSpare: 1, chance: 1 / 340 },
      unknowns: [],
      notFixed: [],
      ...changes,
    }) as unknown as MeasuredBike;

  it('is said in one sentence first', () => {
    expect(fitHeadline(found({}))).toBe('The rows fix everything they speak of.');
    expect(fitHeadline(found({ status: 'disagrees' }))).toBe(
      'Rows contradict one another; by chance that happens once in 340 times.',
    );
    expect(fitHeadline(found({ status: 'notFixed' }))).toBe('Part of the bike is not fixed yet.');
    expect(fitHeadline(found({ status: 'twoAnswers' }))).toContain('Two different bikes');
  });

  it('names what is solved, what moves together and what is assumed, each place once', () => {
    const unknowns = [
      unknown('Rake', false, 0.2),
      unknown('Pivot, ahead of the axle', false, null),
      unknown('Seat mark, ahead of the pivot', true, null),
      unknown('Seat mark, over the pivot', true, null),
      unknown('Mark A, over the pivot', true, null),
      unknown('Frame rail', true, null),
    ];
    const move = (label: string) => ({ key: label, label, part: 0.7 });
    const notFixed = [
      { why: 'rank', moves: [move('Pivot height'), move('Swingarm angle')] },
      { why: 'wide', moves: [move('Sprung mass')] },
    ];
    expect(fixedWords(found({ unknowns, notFixed }))).toEqual([
      'Solved: rake.',
      'No row fixes pivot height and swingarm angle: they move together, and fixing one fixes the others.',
      'Known only roughly: sprung mass.',
    ]);
    expect(assumedNames(found({ unknowns }))).toEqual(['seat mark']);
    expect(assumedWords([])).toBeNull();
    expect(assumedWords(['a', 'b', 'c', 'd', 'e', 'f', 'g'])).toBe(
      'Assumed, as on the starting bike: a, b, c, d, e and 2 more.',
    );
  });

  it('names the row that tells two bikes apart', () => {
    const decide = { kind: 'height', parts: ['pivot'], state: 'onWheels', otherState: null, u: 1 };
    const second = { mirrored: 'Arm up', decide: { ...decide, here: 400, there: 210 } };
    expect(plain(secondWords(second as unknown as Parameters<typeof secondWords>[0], style))).toBe(
      'Another bike fits as well, with the arm up on the other side. Height over the floor, swingarm pivot tells them apart: 400.0 mm on this one, 210.0 mm on the other.',
    );
  });

  it('advises only what can be seen in the ±', () => {
    const next = (u: number | null): NextMeasurement => ({
      kind: 'height',
      parts: ['seat'],
      state: 'onWheels',
      otherState: null,
      u,
    });
    const trail = { label: 'Trail', quantity: 'length' } as const;
    const advice = nextAdvice([next(0.6), next(2.49), next(null)], trail, 2.5, style);
    expect(advice.map(({ text }) => plain(text))).toEqual([
      'Height over the floor, seat mark (on its wheels): trail ± 1.2 mm, now ± 5 mm.',
    ]);
    expect(nextAdvice([next(0.6)], trail, null, style)[0].text).toContain('now not fixed.');
  });
});

describe('why a row does not count', () => {
  const REASONS: Readonly<Record<NoMeasureReason, true>> = {
    figureUnreadable: true,
    figureImpossible: true,
    partsWrong: true,
    partMissing: true,
    statesWrong: true,
    notWeighedSo: true,
    sdWrong: true,
    otherReferenceWrong: true,
    triangleImpossible: true,
    countedTwice: true,
    tooManyRows: true,
    photoImpossible: true,
    startCannotStand: true,
    noBike: true,
  };

  it.each(Object.keys(REASONS) as NoMeasureReason[])('%s has a reason and a next step', (reason) => {
    const sentence = noMeasureSentence(noMeasure(reason, null), CHAIN, style);
    expect(sentence).toMatch(/^[A-Z].*\. [A-Z].*\.$/);
  });

  it('a triangle that cannot be names its other sides', () => {
    const no = noMeasure('triangleImpossible', 0, { withRows: [2, 4] });
    expect(noMeasureSentence(no, CHAIN, style)).toContain('With rows 3 and 5 it makes no triangle');
  });
});
