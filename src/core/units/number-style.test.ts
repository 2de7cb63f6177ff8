/** Tests of writing numbers for people. */
import { describe, expect, it } from 'vitest';
import { roundsToNothing, writeNumber, type NumberStyle } from './number-style.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };
const inch: NumberStyle = { system: 'inch', decimal: '.' };
const comma: NumberStyle = { system: 'metric', decimal: ',' };
const GAP = '\u00a0';

describe('a number written for people', () => {
  it('has the digits and the unit of its quantity', () => {
    expect(writeNumber(97.34, 'length', metric).text).toBe(`97.3${GAP}mm`);
    expect(writeNumber(25.4, 'length', inch).text).toBe(`1.00${GAP}in`);
    expect(writeNumber(12.7, 'angle', metric).text).toBe('12.70°');
    expect(writeNumber(0.45359237, 'mass', inch).text).toBe(`1.0${GAP}lb`);
    expect(writeNumber(3, 'ratio', metric).text).toBe('3.000');
    expect(writeNumber(104.76, 'percent', metric).text).toBe(`104.8${GAP}%`);
    expect(writeNumber(45, 'teeth', metric).text).toBe(`45${GAP}teeth`);
    expect(writeNumber(0.93, 'acceleration', metric).text).toBe(`0.93${GAP}g`);
  });

  it('has the decimal sign its reader is used to', () => {
    expect(writeNumber(97.34, 'length', comma).digits).toBe('97,3');
  });

  it('has a true minus, and a plus only where differences are written', () => {
    expect(writeNumber(-2.5, 'length', metric).digits).toBe('\u22122.5');
    expect(writeNumber(-2.5, 'length', metric, { signed: true }).digits).toBe('\u22122.5');
    expect(writeNumber(2.5, 'length', metric).digits).toBe('2.5');
    expect(writeNumber(2.5, 'length', metric, { signed: true }).digits).toBe('+2.5');
  });

  it('has no sign when it rounds to nothing', () => {
    for (const small of [0.04, -0.04, 0, -0])
      expect(writeNumber(small, 'length', metric, { signed: true }).digits).toBe('0.0');
  });

  it('has more digits when asked', () => {
    expect(writeNumber(97.3456, 'length', metric, { extraDigits: 2 }).digits).toBe('97.346');
  });

  it('rounds to nothing by the digits that are shown', () => {
    expect(roundsToNothing(0.04, 'length', metric)).toBe(true);
    expect(roundsToNothing(-0.06, 'length', metric)).toBe(false);
    expect(roundsToNothing(0.1, 'length', inch)).toBe(true);
  });
});
