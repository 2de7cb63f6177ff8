/** Tests of reading what people type into number fields. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../../tests/support/cases.ts';
import { writeNumber } from './number-style.ts';
import { parseQuantity } from './parse-quantity.ts';
import { QUANTITIES, type QuantityKey } from './all-quantities.ts';
import type { UnitSystem } from './quantity.ts';

function read(
  text: string,
  quantity: QuantityKey = 'length',
  system: UnitSystem = 'metric',
): number | string {
  const result = parseQuantity(text, quantity, system);
  return result.ok ? result.value : result.reason;
}

describe('a typed number is understood', () => {
  it.each([
    ['25,4', 25.4],
    ['25.4', 25.4],
    ['25.4 mm', 25.4],
    ['25.4mm', 25.4],
    [' 25.4 MM ', 25.4],
    ['25.', 25],
    [',5', 0.5],
    ['2.54 cm', 25.4],
    ['1 in', 25.4],
    ['1 inch', 25.4],
    ['1"', 25.4],
    ['1″', 25.4],
    ['1 1/2"', 38.1],
    ['1/2"', 12.7],
    ['3/4 in', 19.05],
    ['+3', 3],
    ['-3', -3],
    ['\u22123,5', -3.5],
    ['\u20133', -3],
    ['- 3', -3],
    ['-1 1/2"', -38.1],
    ['25.4\u00a0mm', 25.4],
  ])('%j as %d mm', (text, mm) => expect(read(text)).toBeCloseTo(mm, 12));

  it.each([
    ['12.7°', 12.7],
    ['12,7', 12.7],
    ['12.7 deg', 12.7],
    ['-0.5 degrees', -0.5],
  ])('%j as %d degrees', (text, deg) => expect(read(text, 'angle')).toBe(deg));

  it('a bare number in the system of the reader, and a unit word over it', () => {
    expect(read('1', 'length', 'inch')).toBe(25.4);
    expect(read('25.4 mm', 'length', 'inch')).toBe(25.4);
    expect(read('1 1/2', 'length', 'inch')).toBe(38.1);
    expect(read('1', 'mass', 'inch')).toBe(0.45359237);
    expect(read('1 kg', 'mass', 'inch')).toBe(1);
    expect(read('180 lb', 'mass')).toBeCloseTo(81.6466266, 9);
    expect(read('45', 'teeth', 'inch')).toBe(45);
  });

  it('with the unit words of every other quantity', () => {
    expect(read('45 teeth', 'teeth')).toBe(45);
    expect(read('45t', 'teeth')).toBe(45);
    expect(read('110 %', 'percent')).toBe(110);
    expect(read('0.9 g', 'acceleration')).toBe(0.9);
    expect(read('500 g', 'mass')).toBe(0.5);
    expect(read('2.5', 'ratio')).toBe(2.5);
  });
});

describe('what is typed is refused', () => {
  it('when there is nothing', () => {
    expect(read('')).toBe('empty');
    expect(read('   ')).toBe('empty');
  });

  it.each([
    'abc',
    '1,234.5',
    '1.2.3',
    '--3',
    '1e3',
    '1/0',
    '0/0',
    '3 4',
    '1 1/2/3',
    '½"',
    'NaN',
    'Infinity',
    '.',
    '0x10',
  ])('when it is no number: %j', (text) => expect(read(text)).toBe('notANumber'));

  it('when its unit is one of speed', () => expect(read('5 m/s')).toBe('wrongUnit'));

  it('when the unit is another quantity’s, or none', () => {
    expect(read('25 kg')).toBe('wrongUnit');
    expect(read('25°')).toBe('wrongUnit');
    expect(read('25 mm', 'angle')).toBe('wrongUnit');
    expect(read('25 furlongs')).toBe('wrongUnit');
    expect(read('3 constructor')).toBe('wrongUnit');
    expect(read('25 mm', 'ratio')).toBe('wrongUnit');
  });

  it('when it is larger than any part', () => {
    expect(read('1000001')).toBe('tooLarge');
    expect(read('-2000 m')).toBe('tooLarge');
    expect(read('9'.repeat(400))).toBe('notANumber');
  });
});

describe('a number written and read again', () => {
  it.each(['metric', 'inch'] as const)('in the %s system comes back as far as it was written', (system) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(QUANTITIES) as QuantityKey[])),
        fc.double({ min: -3000, max: 3000, noNaN: true }),
        fc.constantFrom<'.' | ','>('.', ','),
        (quantity, metric, decimal) => {
          const { text } = writeNumber(metric, quantity, { system, decimal }, { extraDigits: 6 });
          expect(read(text, quantity, system)).toBeCloseTo(metric, 5);
        },
      ),
      { numRuns: cases(500) },
    );
  });

  it('typed in mm is kept exactly, whichever system shows it in between', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200_000, max: 200_000 }), (hundredths) => {
        const mm = hundredths / 100;
        expect(read(`${mm} mm`, 'length', 'inch')).toBe(mm);
        expect(read(`${mm} mm`, 'length', 'metric')).toBe(mm);
      }),
    );
  });
});
